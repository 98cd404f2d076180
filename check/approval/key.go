package approval

import (
	"crypto/ed25519"
	"crypto/sha256"
	"crypto/x509"
	"encoding/hex"
	"encoding/pem"
	"errors"
	"fmt"
	"strings"
)

const (
	privateBlock = "PRIVATE KEY" // PKCS#8, RFC 7468 section 10
	publicBlock  = "PUBLIC KEY"  // PKIX, RFC 7468 section 13
)

// NewKey makes a key pair in PEM from the system's random source.
func NewKey() (private, public []byte, err error) {
	pub, priv, err := ed25519.GenerateKey(nil)
	if err != nil {
		return nil, nil, err
	}
	secret, err := x509.MarshalPKCS8PrivateKey(priv)
	if err != nil {
		return nil, nil, err
	}
	open, err := x509.MarshalPKIXPublicKey(pub)
	if err != nil {
		return nil, nil, err
	}
	return pem.EncodeToMemory(&pem.Block{Type: privateBlock, Bytes: secret}), pem.EncodeToMemory(&pem.Block{Type: publicBlock, Bytes: open}), nil
}

// PrivateKey reads an Ed25519 key in PKCS#8 PEM.
func PrivateKey(text []byte) (ed25519.PrivateKey, error) {
	der, err := block(text, privateBlock)
	if err != nil {
		return nil, err
	}
	key, err := x509.ParsePKCS8PrivateKey(der)
	if err != nil {
		return nil, err
	}
	own, ok := key.(ed25519.PrivateKey)
	if !ok {
		return nil, fmt.Errorf("it is a key of another kind (%s): want Ed25519, as `lineworthy new key` writes", sort(key))
	}
	return own, nil
}

// PublicKey reads an Ed25519 key in PKIX PEM.
func PublicKey(text []byte) (ed25519.PublicKey, error) {
	der, err := block(text, publicBlock)
	if err != nil {
		return nil, err
	}
	key, err := x509.ParsePKIXPublicKey(der)
	if err != nil {
		return nil, err
	}
	own, ok := key.(ed25519.PublicKey)
	if !ok {
		return nil, fmt.Errorf("it is a key of another kind (%s): want Ed25519, as `lineworthy new key` writes it to the file that ends in .pub", sort(key))
	}
	return own, nil
}

// sort names the kind of a key, such as RSA, from the package it comes of.
func sort(key any) string {
	name, _, _ := strings.Cut(strings.TrimPrefix(fmt.Sprintf("%T", key), "*"), ".")
	return strings.ToUpper(name)
}

func block(text []byte, want string) ([]byte, error) {
	b, _ := pem.Decode(text)
	switch {
	case b == nil:
		return nil, fmt.Errorf("it holds no PEM block: want one that begins with -----BEGIN %s-----", want)
	case b.Type == privateBlock:
		if want == publicBlock {
			return nil, errors.New("it is a private key: give the public one, which ends in .pub, and keep this one to yourself")
		}
	case b.Type != want:
		return nil, fmt.Errorf("it holds a %q: want a %q without a password", b.Type, want)
	}
	return b.Bytes, nil
}

// KeyID names a key: SHA-256, in hex, of the public key in DER.
func KeyID(key ed25519.PublicKey) (string, error) {
	der, err := x509.MarshalPKIXPublicKey(key)
	sum := sha256.Sum256(der)
	return hex.EncodeToString(sum[:]), err
}
