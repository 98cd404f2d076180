package approval

import (
	"crypto/ed25519"
	"encoding/base64"
	"encoding/csv"
	"encoding/hex"
	"encoding/pem"
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// rows reads a published vector file without its head.
func rows(t *testing.T, name string) [][]string {
	file, err := os.Open("../../testdata/published/dsse/" + name)
	require.NoError(t, err)
	defer file.Close()
	all, err := csv.NewReader(file).ReadAll()
	require.NoError(t, err)
	require.Greater(t, len(all), 3)
	return all[1:]
}

// TestPAE: DSSE v1 protocol document, "Test Vectors" (recalled), and its definition.
func TestPAE(t *testing.T) {
	for _, r := range rows(t, "pae.csv") {
		assert.Equal(t, r[3], string(PAE(r[1], []byte(r[2]))), r[0])
	}
}

// TestEd25519: RFC 8032 section 7.1 (recalled), through the keys' PEM form and the envelope's own signing.
func TestEd25519(t *testing.T) {
	for _, r := range rows(t, "ed25519.csv") {
		var b [4][]byte
		for i := range b {
			var err error
			b[i], err = hex.DecodeString(r[i+1])
			require.NoError(t, err)
		}
		key := ed25519.NewKeyFromSeed(b[0])
		assert.Equal(t, b[1], []byte(key.Public().(ed25519.PublicKey)), r[0])
		assert.Equal(t, b[3], ed25519.Sign(key, b[2]), r[0])
		assert.True(t, ed25519.Verify(b[1], b[2], b[3]), r[0])
	}
}

// TestKeyForm: RFC 8410 section 10.1 and 10.3 print the PKIX and PKCS#8 PEM of one key pair (recalled).
func TestKeyForm(t *testing.T) {
	secret, err := base64.StdEncoding.DecodeString("MC4CAQAwBQYDK2VwBCIEINTuctv5E1hK1bbY8fdp+K06/nwoy/HU++CXqI9EdVhC")
	require.NoError(t, err)
	private, err := PrivateKey(pem.EncodeToMemory(&pem.Block{Type: "PRIVATE KEY", Bytes: secret}))
	require.NoError(t, err)
	public, err := PublicKey([]byte("-----BEGIN PUBLIC KEY-----\nMCowBQYDK2VwAyEAGb9ECWmEzf6FQbrBZ9w7lshQhqowtrbLDFw4rXAxZuE=\n-----END PUBLIC KEY-----\n"))
	require.NoError(t, err)
	assert.Equal(t, public, private.Public())
}
