package rules

import (
	"bytes"
	"crypto/ecdsa"
	"crypto/ed25519"
	"crypto/elliptic"
	"crypto/rand"
	"crypto/x509"
	"encoding/pem"
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/bundle"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func bundleOf(t *testing.T, s Set, key *BundleKey) []byte {
	t.Helper()
	var b bytes.Buffer
	require.NoError(t, s.Bundle(&b, key))
	return b.Bytes()
}

func loaded(t *testing.T) Set {
	t.Helper()
	s, err := Load()
	require.NoError(t, err)
	return s
}

func TestBundleIsReproducible(t *testing.T) {
	s := loaded(t)
	first := bundleOf(t, s, nil)
	assert.Equal(t, first, bundleOf(t, s, nil))
	b, err := bundle.NewReader(bytes.NewReader(first)).Read()
	require.NoError(t, err)
	assert.Equal(t, s.Digest(), b.Manifest.Revision)
	assert.Equal(t, []string{"rules", "verdict"}, *b.Manifest.Roots)
	require.Len(t, b.Modules, len(s.Modules()))
	for i, m := range s.Modules() {
		assert.Equal(t, "/"+m.Path, b.Modules[i].Path)
		assert.Equal(t, m.Text, string(b.Modules[i].Raw), "the text is that which was checked, with what the rule says of itself")
	}
}

func TestBundleOfASite(t *testing.T) {
	s, err := loaded(t).WithSite(folder(t, map[string]string{"limits.yaml": "hose_age_days: 2000"}))
	require.NoError(t, err)
	b, err := bundle.NewReader(bytes.NewReader(bundleOf(t, s, nil))).Read()
	require.NoError(t, err)
	assert.Equal(t, []string{"rules", "verdict", "site"}, *b.Manifest.Roots)
	assert.Len(t, b.Modules, len(s.Modules())+1)
	limits, err := ast.InterfaceToValue(b.Data)
	require.NoError(t, err)
	assert.Equal(t, `{"site": {"limits": {"hose_age_days": 2000}}}`, limits.String())
}

// ecKey is a new key in PEM, private and public.
func ecKey(t *testing.T, curve elliptic.Curve) (private, public []byte) {
	t.Helper()
	key, err := ecdsa.GenerateKey(curve, rand.Reader)
	require.NoError(t, err)
	der, err := x509.MarshalECPrivateKey(key)
	require.NoError(t, err)
	open, err := x509.MarshalPKIXPublicKey(&key.PublicKey)
	require.NoError(t, err)
	return pem.EncodeToMemory(&pem.Block{Type: "EC PRIVATE KEY", Bytes: der}), pem.EncodeToMemory(&pem.Block{Type: "PUBLIC KEY", Bytes: open})
}

func TestSignedBundle(t *testing.T) {
	private, public := ecKey(t, elliptic.P256())
	s := loaded(t)
	text := bundleOf(t, s, &BundleKey{private, "plant"})
	read := func(text, public []byte, id string) error {
		keys := map[string]*bundle.KeyConfig{id: {Key: string(public), Algorithm: "ES256"}}
		_, err := bundle.NewReader(bytes.NewReader(text)).WithBundleVerificationConfig(bundle.NewVerificationConfig(keys, id, "", nil)).Read()
		return err
	}
	require.NoError(t, read(text, public, "plant"))
	_, other := ecKey(t, elliptic.P256())
	require.Error(t, read(text, other, "plant"), "the key of somebody else")
	require.ErrorContains(t, read(bundleOf(t, s, nil), public, "plant"), "missing .signatures.json", "a bundle that nobody signed")
}

func TestKeyOfABundle(t *testing.T) {
	good, public := ecKey(t, elliptic.P256())
	p384, _ := ecKey(t, elliptic.P384())
	_, ed, err := ed25519.GenerateKey(rand.Reader)
	require.NoError(t, err)
	der, err := x509.MarshalPKCS8PrivateKey(ed)
	require.NoError(t, err)
	for name, tc := range map[string]struct {
		key  BundleKey
		want string
	}{
		"no id":          {BundleKey{good, ""}, "needs an id"},
		"no PEM":         {BundleKey{[]byte("secret"), "plant"}, "no PEM"},
		"public half":    {BundleKey{public, "plant"}, "no private EC key"},
		"other curve":    {BundleKey{p384, "plant"}, "on P-384"},
		"other kind":     {BundleKey{pem.EncodeToMemory(&pem.Block{Type: "PRIVATE KEY", Bytes: der}), "plant"}, "no EC key"},
		"nothing at all": {BundleKey{}, "needs an id"},
	} {
		t.Run(name, func(t *testing.T) {
			var b bytes.Buffer
			require.ErrorContains(t, loaded(t).Bundle(&b, &tc.key), tc.want)
			assert.Empty(t, b.Bytes())
		})
	}
}
