package approval

import (
	"crypto/ecdsa"
	"crypto/ed25519"
	"crypto/elliptic"
	"crypto/rand"
	"crypto/sha256"
	"crypto/x509"
	"encoding/base64"
	"encoding/json"
	"encoding/pem"
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/check/report"
)

var sheetSum = strings.Repeat("ab", 32)

func verdict() *report.Verdict {
	return &report.Verdict{
		Line: "KD-104", Word: report.Conditional, AsOf: "2026-11-25", Tool: report.Tool{Name: "lineworthy", Version: "test"},
		Findings: []report.Finding{
			{Rule: "static/slow_start", Severity: "condition", Subject: "liquid", Message: "start slowly"},
			{Rule: "static/slow_start", Severity: "condition", Subject: "flush", Message: "start slowly"},
			{Rule: "static/slow_start", Severity: "condition", Subject: "flush", Message: "and again"},
			{Rule: "service/passive", Severity: "note", Subject: "XF1", Message: "a note"},
		},
		Confirm: []report.Confirm{{What: "rating = of PN 16", Source: "EN 1092-1", Clause: "annex G"}},
		Digests: report.Digests{Sheet: sheetSum, Facts: "f", Rules: "r", Catalog: map[string]string{"hoses/a": "1", "seals/b": "2"}},
	}
}

func decided(t testing.TB) *Statement {
	accepted, err := Match(Conditions(verdict()), []Accepted{
		{Condition: "static/slow_start", Reason: "by instruction 7", Until: "2027-01-31"},
		{Condition: "rating = of PN 16", Reason: "looked up", Until: "2027-06-30"},
	})
	require.NoError(t, err)
	s, err := New("line.yaml", sheetSum, verdict(), Approval{Who: "A. Example", Role: "engineer", Decision: Approved, Until: "2027-05-25", Conditions: accepted})
	require.NoError(t, err)
	return s
}

func keyPair(t testing.TB, name string) (ed25519.PrivateKey, Key) {
	private, public, err := NewKey()
	require.NoError(t, err)
	key, err := PrivateKey(private)
	require.NoError(t, err)
	pub, err := PublicKey(public)
	require.NoError(t, err)
	id, err := KeyID(pub)
	require.NoError(t, err)
	return key, Key{name, id, pub}
}

// signed is an envelope with the signature of each key.
func signed(t testing.TB, keys ...ed25519.PrivateKey) []byte {
	e, err := Wrap(decided(t))
	require.NoError(t, err)
	for _, k := range keys {
		added, err := e.Sign(k)
		require.NoError(t, err)
		require.True(t, added)
	}
	text, err := e.Encode()
	require.NoError(t, err)
	return text
}

// TestForm reads the envelope as another program would, from the documents of DSSE and in-toto alone.
func TestForm(t *testing.T) {
	key, trusted := keyPair(t, "a")
	var e struct {
		Payload, PayloadType string
		Signatures           []struct{ Keyid, Sig string }
	}
	require.NoError(t, json.Unmarshal(signed(t, key), &e))
	payload, err := base64.StdEncoding.DecodeString(e.Payload)
	require.NoError(t, err)
	sig, err := base64.StdEncoding.DecodeString(e.Signatures[0].Sig)
	require.NoError(t, err)
	assert.Equal(t, "application/vnd.in-toto+json", e.PayloadType)
	assert.True(t, ed25519.Verify(trusted.Key, fmt.Appendf(nil, "DSSEv1 28 application/vnd.in-toto+json %d %s", len(payload), payload), sig))

	der, err := x509.MarshalPKIXPublicKey(trusted.Key)
	require.NoError(t, err)
	assert.Equal(t, fmt.Sprintf("%x", sha256.Sum256(der)), e.Signatures[0].Keyid)
	var s map[string]any
	require.NoError(t, json.Unmarshal(payload, &s))
	assert.Equal(t, "https://in-toto.io/Statement/v1", s["_type"])
	assert.Equal(t, []any{map[string]any{"name": "line.yaml", "digest": map[string]any{"sha256": sheetSum}}}, s["subject"])
	assert.Equal(t, "https://lineworthy.invalid/approval/v1", s["predicateType"])
	p := s["predicate"].(map[string]any)
	assert.Equal(t, "A. Example", p["who"])
	assert.Len(t, p["conditions"], 3)
}

func TestSigners(t *testing.T) {
	a, keyA := keyPair(t, "a")
	b, keyB := keyPair(t, "b")
	_, keyC := keyPair(t, "c")
	text := signed(t, a, b)
	_, s, signers, err := Verify(text, []Key{keyA, keyC, keyB})
	require.NoError(t, err)
	assert.Equal(t, decided(t), s)
	assert.Equal(t, []Signer{{"a", keyA.ID, true}, {"c", keyC.ID, false}, {"b", keyB.ID, true}}, signers)

	_, s, _, err = Verify(text, []Key{keyC})
	assert.ErrorIs(t, err, ErrUnsigned)
	assert.Nil(t, s)

	e, err := Read(text)
	require.NoError(t, err)
	added, err := e.Sign(a)
	require.NoError(t, err)
	assert.False(t, added, "a key signs once")
}

func TestStatementFaults(t *testing.T) {
	for want, change := range map[string]func(*Approval){
		"who: nothing is said":           func(a *Approval) { a.Who = " " },
		"role: nothing is said":          func(a *Approval) { a.Role = "" },
		"cannot be printed":              func(a *Approval) { a.Who = "A\x1b[2J" },
		"longer than":                    func(a *Approval) { a.Role = strings.Repeat("x", longest+1) },
		`decision "maybe"`:               func(a *Approval) { a.Decision = "maybe" },
		"until: \"2027-05\"":             func(a *Approval) { a.Until = "2027-05" },
		"until 2026-11-24 is before":     func(a *Approval) { a.Until = "2026-11-24" },
		"reason for x: nothing is said":  func(a *Approval) { a.Conditions = []Accepted{{Condition: "x", Until: "2027-01-01"}} },
		"x: until: \"\" is not a date":   func(a *Approval) { a.Conditions = []Accepted{{Condition: "x", Reason: "r"}} },
		"note: it holds characters that": func(a *Approval) { a.Note = "a\u202eb" },
	} {
		a := Approval{Who: "A", Role: "b", Decision: Approved, Until: "2026-11-25"}
		_, err := New("line.yaml", sheetSum, verdict(), a)
		require.NoError(t, err)
		change(&a)
		_, err = New("line.yaml", sheetSum, verdict(), a)
		assert.ErrorContains(t, err, want)
	}
}

func TestKeyFaults(t *testing.T) {
	private, public, err := NewKey()
	require.NoError(t, err)
	_, err = PublicKey(private)
	assert.ErrorContains(t, err, "private key: give the public one")
	_, err = PrivateKey(public)
	assert.ErrorContains(t, err, `want a "PRIVATE KEY"`)
	other, err := ecdsa.GenerateKey(elliptic.P256(), rand.Reader)
	require.NoError(t, err)
	der, err := x509.MarshalPKCS8PrivateKey(other)
	require.NoError(t, err)
	_, err = PrivateKey(pem.EncodeToMemory(&pem.Block{Type: privateBlock, Bytes: der}))
	assert.ErrorContains(t, err, "it is a key of another kind (ECDSA): want Ed25519")
	_, err = PrivateKey([]byte("hello"))
	assert.ErrorContains(t, err, "no PEM block")
	_, err = PrivateKey(pem.EncodeToMemory(&pem.Block{Type: privateBlock, Bytes: []byte{1}}))
	assert.Error(t, err)
}

func TestConditions(t *testing.T) {
	cs := Conditions(verdict())
	assert.Equal(t, []Condition{
		{"static/slow_start on liquid", "static/slow_start", "start slowly"},
		{"static/slow_start on flush", "static/slow_start", "start slowly; and again"},
		{"rating = of PN 16", "", "confirm it in: EN 1092-1, annex G"},
	}, cs)
	_, err := Match(cs, []Accepted{{Condition: "static/slow"}, {Condition: "rating"}, {Condition: "static/slow_start"}, {Condition: cs[0].Name}})
	assert.EqualError(t, err, "\"static/slow\" is no condition of this verdict\n\"rating\" is no condition of this verdict\n\"static/slow_start on liquid\" is accepted twice")
	one, err := Match(cs, []Accepted{{Condition: cs[1].Name, Reason: "r", Until: "2027-01-31"}})
	require.NoError(t, err)
	assert.Equal(t, []Condition{cs[0], cs[2]}, Open(cs, one, "2027-01-31"), "the last day counts")
	assert.Equal(t, cs, Open(cs, one, "2027-02-01"))
	_, err = Match(cs, []Accepted{{Condition: cs[1].Name, Says: cs[1].Says, Reason: "r", Until: "2027-01-31"}})
	require.NoError(t, err)
	_, err = Match(cs, []Accepted{{Condition: cs[1].Name, Says: "start at 1 m/s", Reason: "r", Until: "2027-01-31"}})
	assert.ErrorContains(t, err, `it says "start slowly; and again" now`)
}

func TestEnded(t *testing.T) {
	a := decided(t).Predicate
	assert.Empty(t, a.Ended("2027-01-31"))
	assert.Equal(t, []string{`"static/slow_start on liquid" and 1 more were accepted until 2027-01-31`}, a.Ended("2027-02-01"))
	assert.Len(t, a.Ended("2027-05-26"), 2)
	assert.Len(t, a.Ended("2027-07-01"), 3)
	a.Until = ""
	assert.Len(t, a.Ended("2027-07-01"), 2)
}

func TestDifferences(t *testing.T) {
	a := decided(t).Predicate
	assert.Empty(t, a.Differences(verdict()))
	now := verdict()
	now.Digests = report.Digests{Facts: "g", Rules: "s", Site: "t", Catalog: map[string]string{"seals/b": "3", "seals/c": "4"}}
	assert.Equal(t, []Difference{
		{"facts", "f", "g"}, {"rules", "r", "s"}, {"site", "", "t"},
		{"catalog/hoses/a", "1", ""}, {"catalog/seals/b", "2", "3"}, {"catalog/seals/c", "", "4"},
	}, a.Differences(now))
}
