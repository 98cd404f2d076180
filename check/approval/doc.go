// Package approval signs and proves what somebody decided about a line: a DSSE envelope around an in-toto Statement.
//
// The formats are open ones, so that other tools can read what is signed here: the Dead Simple Signing Envelope v1
// (its protocol and envelope documents) and the in-toto Statement v1, both recalled. Keys are
// Ed25519 (RFC 8032) in PEM: PKCS#8 (RFC 5958) for the private, PKIX (RFC 5280, RFC 8410) for the public one.
//
// It is written with crypto/ed25519 alone: what DSSE asks for is one line of encoding, and the ready library for it
// brings SSH with it.
//
// A signature shows who stood for which bytes. It does not make a line safe.
package approval
