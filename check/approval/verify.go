package approval

import (
	"crypto/ed25519"
	"errors"
	"fmt"
	"maps"
	"slices"

	"lineworthy/check/report"
)

// Key is a public key somebody trusts, with the name it was given by.
type Key struct {
	Name string
	ID   string
	Key  ed25519.PublicKey
}

// Signer says for one trusted key whether it signed.
type Signer struct {
	Key    string `json:"key"` // its name
	KeyID  string `json:"keyid"`
	Signed bool   `json:"signed"`
}

// ErrUnsigned says that none of the trusted keys signed: whoever made the envelope, nobody trusted stands for it.
var ErrUnsigned = errors.New("none of the given keys signed it")

// Verify proves the signatures of the trusted keys over the envelope. Signatures of other keys are not looked at.
//
// The error is *Tampered when a signature that names a trusted key does not hold, or one that holds does not name its key;
// ErrUnsigned when there is no signature of a trusted key; or as Read and Statement. The statement is nil with any
// error: nothing in it is to be believed.
func Verify(data []byte, keys []Key) (*Envelope, *Statement, []Signer, error) {
	e, err := Read(data)
	if err != nil {
		return nil, nil, nil, err
	}
	signers, err := e.signers(keys)
	if err != nil {
		return nil, nil, nil, err
	}
	if !slices.ContainsFunc(signers, func(s Signer) bool { return s.Signed }) {
		return nil, nil, signers, ErrUnsigned
	}
	s, err := e.Statement()
	return e, s, signers, err
}

func (e *Envelope) signers(keys []Key) ([]Signer, error) {
	signed := PAE(e.PayloadType, e.Payload)
	var out []Signer
	for _, k := range keys {
		who := Signer{k.Name, k.ID, false}
		for _, s := range e.Signatures {
			holds := ed25519.Verify(k.Key, signed, s.Sig)
			switch {
			case s.KeyID == k.ID && !holds:
				return nil, &Tampered{fmt.Sprintf("the signature of key %s (%s) does not fit the content", k.Name, k.ID[:16])}
			case s.KeyID != k.ID && holds:
				return nil, &Tampered{fmt.Sprintf("the signature of key %s (%s) is filed under another key", k.Name, k.ID[:16])}
			case holds && who.Signed:
				return nil, &Tampered{fmt.Sprintf("key %s (%s) stands there twice", k.Name, k.ID[:16])}
			}
			who.Signed = who.Signed || holds
		}
		out = append(out, who)
	}
	return out, nil
}

// Difference is something the decision rests on that is no longer what it was. An empty digest means there is none.
type Difference struct {
	What   string `json:"what"` // facts, rules, site, catalog/KIND/ID
	Signed string `json:"signed"`
	Now    string `json:"now"`
}

// Differences compares what was signed with a verdict for the same day. The sheet itself is compared by its bytes.
func (a Approval) Differences(v *report.Verdict) []Difference {
	var out []Difference
	compare := func(what, signed, now string) {
		if signed != now {
			out = append(out, Difference{what, signed, now})
		}
	}
	compare("facts", a.Digests.Facts, v.Digests.Facts)
	compare("rules", a.Digests.Rules, v.Digests.Rules)
	compare("site", a.Digests.Site, v.Digests.Site)
	rows := maps.Clone(a.Digests.Catalog)
	if rows == nil {
		rows = map[string]string{}
	}
	maps.Copy(rows, v.Digests.Catalog)
	for _, row := range slices.Sorted(maps.Keys(rows)) {
		compare("catalog/"+row, a.Digests.Catalog[row], v.Digests.Catalog[row])
	}
	return out
}

// Ended names what ran out before the day (2006-01-02): the approval itself, or conditions accepted for a time.
func (a Approval) Ended(day string) []string {
	var out []string
	if a.Until != "" && a.Until < day {
		out = append(out, "the approval ended on "+a.Until)
	}
	ended := map[string][]string{}
	for _, c := range a.Conditions {
		if c.Until < day {
			ended[c.Until] = append(ended[c.Until], c.Condition)
		}
	}
	for _, until := range slices.Sorted(maps.Keys(ended)) {
		if names := ended[until]; len(names) > 1 {
			out = append(out, fmt.Sprintf("%q and %d more were accepted until %s", names[0], len(names)-1, until))
		} else {
			out = append(out, fmt.Sprintf("%q was accepted until %s", names[0], until))
		}
	}
	return out
}
