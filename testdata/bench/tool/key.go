package main

import (
	"crypto/ecdsa"
	"crypto/elliptic"
	"crypto/rand"
	"crypto/x509"
	"encoding/pem"
	"fmt"
	"os"
)

// key makes a key to sign a bundle with, good for one test.
func key(args []string) error {
	if len(args) != 2 {
		return fmt.Errorf("want PRIVATE PUBLIC")
	}
	k, err := ecdsa.GenerateKey(elliptic.P256(), rand.Reader)
	if err != nil {
		return err
	}
	private, err := x509.MarshalECPrivateKey(k)
	if err != nil {
		return err
	}
	public, err := x509.MarshalPKIXPublicKey(&k.PublicKey)
	if err != nil {
		return err
	}
	if err := os.WriteFile(args[0], pem.EncodeToMemory(&pem.Block{Type: "EC PRIVATE KEY", Bytes: private}), 0o600); err != nil {
		return err
	}
	return os.WriteFile(args[1], pem.EncodeToMemory(&pem.Block{Type: "PUBLIC KEY", Bytes: public}), 0o644)
}
