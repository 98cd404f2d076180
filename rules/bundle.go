package rules

import (
	"crypto/ecdsa"
	"crypto/elliptic"
	"crypto/x509"
	"encoding/pem"
	"errors"
	"fmt"
	"io"

	"github.com/open-policy-agent/opa/v1/bundle"
)

// BundleKey is what a bundle is signed with: an EC key on P-256 in PEM, and the name under which whoever loads the bundle
// knows its public half. A name is a must: without one, loaders have taken bundles that nobody had signed.
type BundleKey struct {
	PEM []byte
	ID  string
}

// Bundle writes the rules in the form that a stock rules engine loads; it then finds the same on the same facts under
// data.verdict.findings, and what rules of a site find under data.site. Equal rules give equal bytes, except for the
// signature, which holds a number of chance. A nil key signs nothing.
func (s Set) Bundle(w io.Writer, key *BundleKey) error {
	regoV1 := 1
	roots := []string{"rules", "verdict"}
	b := bundle.Bundle{Data: map[string]any{}}
	modules := s.modules
	if s.site != nil {
		roots = append(roots, "site")
		b.Data = s.site.Data()
		modules = append(modules[:len(modules):len(modules)], s.site.modules...)
	}
	for _, m := range modules {
		parsed, err := parse(m, false)
		if err != nil {
			return fmt.Errorf("rules: %w", err)
		}
		path := "/" + m.Path
		b.Modules = append(b.Modules, bundle.ModuleFile{URL: path, Path: path, RelativePath: path, Raw: []byte(m.Text), Parsed: parsed})
	}
	b.Manifest = bundle.Manifest{Revision: s.digest, Roots: &roots, RegoVersion: &regoV1}
	if key != nil {
		if err := key.check(); err != nil {
			return err
		}
		if err := b.GenerateSignature(bundle.NewSigningConfig(string(key.PEM), "ES256", ""), key.ID, false); err != nil {
			return fmt.Errorf("rules: signing the bundle: %w", err)
		}
	}
	if err := bundle.NewWriter(w).DisableFormat(true).Write(b); err != nil {
		return fmt.Errorf("rules: writing the bundle: %w", err)
	}
	return nil
}

// check says what is wrong with a key before the signature goes wrong.
func (k *BundleKey) check() error {
	if k.ID == "" {
		return errors.New("the key needs an id, the name under which whoever loads the bundle knows it")
	}
	block, _ := pem.Decode(k.PEM)
	if block == nil {
		return errors.New("the key is no PEM text")
	}
	private, err := x509.ParseECPrivateKey(block.Bytes)
	if err != nil {
		any, pkcs8 := x509.ParsePKCS8PrivateKey(block.Bytes)
		if pkcs8 != nil {
			return errors.New("the key is no private EC key")
		}
		ec, ok := any.(*ecdsa.PrivateKey)
		if !ok {
			return errors.New("the key is no EC key: ES256 wants one on P-256")
		}
		private = ec
	}
	if private.Curve != elliptic.P256() {
		return fmt.Errorf("the key is on %s: ES256 wants P-256", private.Curve.Params().Name)
	}
	return nil
}
