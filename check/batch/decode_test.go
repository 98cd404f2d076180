package batch

import (
	"bytes"
	"context"
	"encoding/json"
	"math/rand/v2"
	"path/filepath"
	"reflect"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/catalog"
	"lineworthy/check"
	"lineworthy/check/facts"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

// engine judges the shipped lines for one day, so that equal sheets give equal facts.
var engine = sync.OnceValues(func() (*check.Engine, error) {
	return check.New(context.Background(), check.Options{Catalog: catalog.Open(), AsOf: units.Date{Days: 20782}, Version: "test"}) // 2026-11-25
})

// shipped are the facts of every shipped line, by name.
func shipped(t testing.TB) map[string]*facts.Facts {
	t.Helper()
	e, err := engine()
	require.NoError(t, err)
	paths, err := filepath.Glob("../../testdata/lines/*/line.yaml")
	require.NoError(t, err)
	require.NotEmpty(t, paths)
	out := map[string]*facts.Facts{}
	for _, p := range paths {
		line, err := sheet.Read(p)
		require.NoError(t, err)
		out[filepath.Base(filepath.Dir(p))], err = e.Facts(line)
		require.NoError(t, err)
	}
	return out
}

func text(t testing.TB, f *facts.Facts) []byte {
	t.Helper()
	b, err := f.JSON()
	require.NoError(t, err)
	return b
}

// taken says whether the fast reader takes a text, and what it makes of it.
func (r *reader) taken(text []byte) (*facts.Facts, bool) {
	f := &facts.Facts{}
	r.text, r.at = string(text), 0
	return f, r.whole(f)
}

// agree wants the fast reader to take nothing that facts.Read refuses, and to read what it takes as that does.
func agree(t testing.TB, r *reader, text []byte) bool {
	t.Helper()
	got, err := r.read(text)
	want, wrong := facts.Read(text)
	if wrong != nil {
		require.EqualError(t, err, wrong.Error(), "%s", text)
		return false
	}
	require.NoError(t, err, "%s", text)
	require.True(t, reflect.DeepEqual(want, got), "%s", text)
	_, fast := r.taken(text)
	return fast
}

// TestFastReaderTakesOurOwn: what this program writes is never left to the slow reader, however it is spaced.
func TestFastReaderTakesOurOwn(t *testing.T) {
	r, chance := newReader(false), rand.New(rand.NewPCG(1, 2))
	var all [][]byte
	for _, f := range shipped(t) {
		all = append(all, text(t, f))
	}
	for range 200 {
		all = append(all, text(t, facts.Any(chance.IntN, []string{"a", "é\u2028", "\"\\/", "<&>", "\x01", "", "𝄞"})))
	}
	for _, b := range all {
		assert.True(t, agree(t, r, b))
		var spaced bytes.Buffer
		require.NoError(t, json.Indent(&spaced, b, "", "\t"))
		assert.True(t, agree(t, r, spaced.Bytes()))
	}
}

// TestFastReaderRefuses: every single fault is left to the slow reader, which refuses it.
func TestFastReaderRefuses(t *testing.T) {
	base := string(text(t, facts.Any(rand.New(rand.NewPCG(5, 6)).IntN, []string{"a"})))
	r := newReader(false)
	require.True(t, agree(t, r, []byte(base)))
	for name, change := range map[string][2]string{
		"number in quotes": {`"as_of_day":`, `"as_of_day":"1",`}, "null": {`"schema":"lineworthy/facts/1"`, `"schema":null`},
		"unknown key": {`"schema":`, `"scheme":1,"schema":`}, "key twice": {`"schema":`, `"schema":"lineworthy/facts/1","schema":`},
		"missing key": {`"schema":"lineworthy/facts/1",`, ``}, "other schema": {`facts/1"`, `facts/2"`},
		"fraction": {`"as_of_day":`, `"as_of_day":0.5,"x":`}, "exponent": {`"as_of_day":`, `"as_of_day":1e3,"x":`},
		"leading zero": {`"as_of_day":`, `"as_of_day":01,"x":`}, "plus": {`"as_of_day":`, `"as_of_day":+1,"x":`},
		"comma before end": {`"unknowns":[]}`, `"unknowns":[],}`}, "open end": {`"unknowns":[`, `"unknowns":[,`},
		"control character": {`"id":"`, "\"id\":\"\x02"}, "broken escape": {`"id":"`, `"id":"\q`},
		"no object": {`{"schema"`, `["schema"`}, "true in quotes": {`:true`, `:"true"`}, "other case": {`:true`, `:True`},
	} {
		t.Run(name, func(t *testing.T) {
			bad := strings.Replace(base, change[0], change[1], 1)
			if bad == base {
				bad = strings.Replace(base+"}", change[0], change[1], 1)
			}
			assert.False(t, agree(t, r, []byte(bad)))
		})
	}
	assert.False(t, agree(t, r, []byte(base+"{}")), "something behind the end")
	assert.False(t, agree(t, r, append([]byte(base), 0xFF)), "not UTF-8")
	for n := range len(base) {
		assert.False(t, agree(t, r, []byte(base[:n])), "cut off")
		if n > 400 {
			break
		}
	}
}

// FuzzReaders: whatever the text, both readers agree.
func FuzzReaders(f *testing.F) {
	for _, x := range shipped(f) {
		f.Add(text(f, x))
	}
	f.Add(text(f, facts.Any(rand.New(rand.NewPCG(5, 6)).IntN, []string{"a", "\"\\", "é"})))
	for _, s := range []string{``, `{}`, `{"schema":"lineworthy/facts/1"`, ` { "schema" : 1 }`, `[]`} {
		f.Add([]byte(s))
	}
	r := newReader(false)
	f.Fuzz(func(t *testing.T, text []byte) { agree(t, r, text) })
}

// TestFastReaderOnMutations changes single bytes of sound facts, where most faults of a reader show.
func TestFastReaderOnMutations(t *testing.T) {
	r, chance := newReader(false), rand.New(rand.NewPCG(9, 9))
	var all [][]byte
	for range 20 {
		all = append(all, text(t, facts.Any(chance.IntN, []string{"a", "é", "\"\\"})))
	}
	const letters = "{}[]\",:0123456789-+eE.\\ truefalsn\x00\xff\n"
	fast := 0
	for range 4000 {
		b := bytes.Clone(all[chance.IntN(len(all))])
		at := chance.IntN(len(b))
		switch chance.IntN(3) {
		case 0:
			b[at] = letters[chance.IntN(len(letters))]
		case 1:
			b = append(b[:at], b[at+1:]...)
		case 2:
			b = append(b[:at], append([]byte{letters[chance.IntN(len(letters))]}, b[at:]...)...)
		}
		if agree(t, r, b) {
			fast++
		}
	}
	assert.NotZero(t, fast, "some changes do no harm")
}

func BenchmarkRead(b *testing.B) {
	var all [][]byte
	size := 0
	for _, f := range shipped(b) {
		all = append(all, text(b, f))
		size += len(all[len(all)-1])
	}
	r := newReader(false)
	for name, read := range map[string]func([]byte) (*facts.Facts, error){"fast": r.read, "facts.Read": facts.Read} {
		b.Run(name, func(b *testing.B) {
			b.SetBytes(int64(size / len(all)))
			n := 0
			for b.Loop() {
				if _, err := read(all[n%len(all)]); err != nil {
					b.Fatal(err)
				}
				n++
			}
		})
	}
}
