package approval

import (
	"bytes"
	"crypto/ed25519"
	"encoding/json"
	"errors"
	"fmt"
	"slices"
)

// PayloadType is that of an in-toto Statement (in-toto attestation framework, "Envelope").
const PayloadType = "application/vnd.in-toto+json"

// Envelope is a DSSE v1 envelope. Its payload is base64 in JSON.
type Envelope struct {
	Payload     []byte      `json:"payload"`
	PayloadType string      `json:"payloadType"`
	Signatures  []Signature `json:"signatures"`
}

// Signature is one signer's. KeyID is SHA-256, in hex, of the public key in DER.
type Signature struct {
	KeyID string `json:"keyid"`
	Sig   []byte `json:"sig"`
}

// PAE is the pre-authentication encoding, the bytes that are signed (DSSE v1 protocol, "Signature Definition"): lengths
// are counted in bytes.
func PAE(payloadType string, payload []byte) []byte {
	return fmt.Appendf(nil, "DSSEv1 %d %s %d %s", len(payloadType), payloadType, len(payload), payload)
}

// Wrap makes an envelope that nobody has signed yet.
func Wrap(s *Statement) (*Envelope, error) {
	payload, err := s.bytes()
	if err != nil {
		return nil, err
	}
	return &Envelope{Payload: payload, PayloadType: PayloadType}, nil
}

// Sign adds the signature of the key, or leaves the envelope as it is and says false when that key has signed it.
func (e *Envelope) Sign(key ed25519.PrivateKey) (added bool, err error) {
	id, err := KeyID(key.Public().(ed25519.PublicKey))
	if err != nil {
		return false, err
	}
	if slices.ContainsFunc(e.Signatures, func(s Signature) bool { return s.KeyID == id }) {
		return false, nil
	}
	e.Signatures = append(e.Signatures, Signature{id, ed25519.Sign(key, PAE(e.PayloadType, e.Payload))})
	return true, nil
}

// Encode writes the envelope in the one form that Read takes.
func (e *Envelope) Encode() ([]byte, error) {
	var b bytes.Buffer
	enc := json.NewEncoder(&b)
	enc.SetEscapeHTML(false)
	enc.SetIndent("", "  ")
	err := enc.Encode(e)
	return b.Bytes(), err
}

// Tampered says what does not fit in an envelope.
type Tampered struct{ Why string }

func (t *Tampered) Error() string { return t.Why }

// Read decodes an envelope without looking at signatures. Every byte has to be as Encode writes it, so that also bytes
// no signature covers, such as a space or the name of a key, cannot be changed unseen. The error is *Tampered when it
// is an envelope in another form, and any other when it is none at all.
func Read(data []byte) (*Envelope, error) {
	var e Envelope
	if err := json.Unmarshal(data, &e); err != nil {
		return nil, fmt.Errorf("it is no signed approval: %w", err)
	}
	if e.PayloadType == "" && len(e.Payload) == 0 {
		return nil, errors.New("it is no signed approval: there is no payload in it")
	}
	again, err := e.Encode()
	if err != nil {
		return nil, err
	}
	if !bytes.Equal(again, data) {
		return nil, &Tampered{"it is not written as this program writes it: bytes outside the signed content were changed"}
	}
	return &e, nil
}

// Statement is what the envelope holds. Believe it only when Verify gave it.
func (e *Envelope) Statement() (*Statement, error) {
	if e.PayloadType != PayloadType {
		return nil, fmt.Errorf("its payload type is %q, not %s", e.PayloadType, PayloadType)
	}
	return parse(e.Payload)
}
