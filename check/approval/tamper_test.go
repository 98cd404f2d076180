package approval

import (
	"bytes"
	"crypto/ed25519"
	"encoding/json"
	"errors"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// TestAnyChangedByte changes each byte of an envelope with two signers in turn, with three patterns.
func TestAnyChangedByte(t *testing.T) {
	a, keyA := keyPair(t, "a")
	b, keyB := keyPair(t, "b")
	text := signed(t, a, b)
	keys := []Key{keyA, keyB}
	_, _, _, err := Verify(text, keys)
	require.NoError(t, err)
	for at := range text {
		for _, mask := range []byte{0x01, 0x20, 0xff} {
			changed := bytes.Clone(text)
			changed[at] ^= mask
			require.False(t, holds(changed, keys), "byte %d ^ %#x: %q", at, mask, text[max(at-20, 0):at+1])
		}
	}
}

// holds says whether an envelope is believed, with every key signing.
func holds(text []byte, keys []Key) bool {
	_, s, signers, err := Verify(text, keys)
	if (err != nil) != (s == nil) {
		panic("a statement beside an error")
	}
	n := 0
	for _, who := range signers {
		if who.Signed {
			n++
		}
	}
	return err == nil && n == len(keys)
}

func TestTampering(t *testing.T) {
	a, keyA := keyPair(t, "a")
	text := signed(t, a)
	rapid.Check(t, func(r *rapid.T) {
		from := rapid.IntRange(0, len(text)).Draw(r, "from")
		to := rapid.IntRange(from, min(len(text), from+40)).Draw(r, "to")
		put := rapid.SliceOfN(rapid.Byte(), 0, 40).Draw(r, "put")
		changed := append(append(bytes.Clone(text[:from]), put...), text[to:]...)
		if bytes.Equal(changed, text) {
			r.Skip("nothing changed")
		}
		require.False(r, holds(changed, []Key{keyA}))
	})
}

// forged wraps any payload under a real signature.
func forged(t *testing.T, key ed25519.PrivateKey, kind, payload string) []byte {
	e := &Envelope{Payload: []byte(payload), PayloadType: kind}
	_, err := e.Sign(key)
	require.NoError(t, err)
	text, err := e.Encode()
	require.NoError(t, err)
	return text
}

// What a trusted key signed is still not an approval when it is something else, or reads two ways.
func TestSignedButNoApproval(t *testing.T) {
	a, keyA := keyPair(t, "a")
	good, err := decided(t).bytes()
	require.NoError(t, err)
	_, _, _, err = Verify(forged(t, a, PayloadType, string(good)), []Key{keyA})
	require.NoError(t, err)
	for name, text := range map[string][]byte{
		"another type":     forged(t, a, "text/plain", string(good)),
		"no JSON":          forged(t, a, PayloadType, "hello"),
		"key twice":        forged(t, a, PayloadType, strings.Replace(string(good), `"decision":"approved"`, `"decision":"refused","decision":"approved"`, 1)),
		"other case":       forged(t, a, PayloadType, strings.Replace(string(good), `"decision"`, `"Decision"`, 1)),
		"key more":         forged(t, a, PayloadType, strings.Replace(string(good), `"who"`, `"x":1,"who"`, 1)),
		"two digests":      forged(t, a, PayloadType, strings.Replace(string(good), `"digests":{"sheet":"ab`, `"digests":{"sheet":"cb`, 1)),
		"other predicate":  forged(t, a, PayloadType, strings.Replace(string(good), `approval/v1"`, `approval/v2"`, 1)),
		"no such verdict":  forged(t, a, PayloadType, strings.Replace(string(good), `"verdict":"conditional"`, `"verdict":"fine"`, 1)),
		"terminal control": forged(t, a, PayloadType, strings.Replace(string(good), `"line":"KD-104"`, `"line":"KD\u001b[2J"`, 1)),
	} {
		_, s, _, err := Verify(text, []Key{keyA})
		assert.Error(t, err, name)
		assert.Nil(t, s, name)
	}
}

func TestMisfiledSignatures(t *testing.T) {
	a, keyA := keyPair(t, "a")
	b, keyB := keyPair(t, "b")
	change := func(f func(*Envelope)) []byte {
		e, err := Read(signed(t, a, b))
		require.NoError(t, err)
		f(e)
		text, err := e.Encode()
		require.NoError(t, err)
		return text
	}
	var tampered *Tampered
	for name, text := range map[string][]byte{
		"exchanged ids": change(func(e *Envelope) {
			e.Signatures[0].KeyID, e.Signatures[1].KeyID = e.Signatures[1].KeyID, e.Signatures[0].KeyID
		}),
		"twice":    change(func(e *Envelope) { e.Signatures[1] = e.Signatures[0] }),
		"no id":    change(func(e *Envelope) { e.Signatures[0].KeyID = "" }),
		"emptied":  change(func(e *Envelope) { e.Signatures[0].Sig = nil }),
		"replayed": change(func(e *Envelope) { e.Payload = bytes.Replace(e.Payload, []byte("KD-104"), []byte("KD-105"), 1) }),
	} {
		_, _, _, err := Verify(text, []Key{keyA, keyB})
		assert.True(t, errors.As(err, &tampered), "%s: %v", name, err)
	}
	var spaced bytes.Buffer
	require.NoError(t, json.Compact(&spaced, signed(t, a)))
	_, _, _, err := Verify(spaced.Bytes(), []Key{keyA})
	assert.ErrorAs(t, err, &tampered)
}

// TestPutAround: an envelope is believed as it was written, with nothing before it or behind it.
func TestPutAround(t *testing.T) {
	a, keyA := keyPair(t, "a")
	text := signed(t, a)
	require.True(t, holds(text, []Key{keyA}))
	for _, more := range []string{"\n", " ", "\x00", "\r\n", "{}", "//", string(text)} {
		require.False(t, holds(append(bytes.Clone(text), more...), []Key{keyA}), "%q behind", more)
		require.False(t, holds(append([]byte(more), text...), []Key{keyA}), "%q before", more)
	}
	require.False(t, holds(append([]byte("\xef\xbb\xbf"), text...), []Key{keyA}), "byte order mark")
	for at := range text {
		require.False(t, holds(text[:at], []Key{keyA}), "cut at %d", at)
		require.False(t, holds(append(bytes.Clone(text[:at]), text[at+1:]...), []Key{keyA}), "without byte %d", at)
	}
}
