package record

import (
	"crypto/sha256"
	"encoding/json"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

var noon = time.Date(2026, 11, 25, 12, 0, 0, 0, time.UTC)

func item(n int) Item {
	return Item{noon.Add(time.Duration(n) * time.Second), "note", map[string]any{"n": n, "text": "a <hose> & a \u2028 seal"}}
}

// filled makes a record of n lines and gives its path and text.
func filled(t testing.TB, n int) (string, []byte) {
	t.Helper()
	path := filepath.Join(t.TempDir(), "record.jsonl")
	for i := 1; i <= n; i++ {
		_, err := At(path).Append(item(i))
		require.NoError(t, err)
	}
	text, err := os.ReadFile(path)
	require.NoError(t, err)
	return path, text
}

func proof(t testing.TB, path string, heads ...string) Proof {
	t.Helper()
	p, err := Verify(path, heads...)
	require.NoError(t, err)
	return p
}

// TestFormat holds the file to what doc.go says, with nothing of the package's own but the file it wrote.
func TestFormat(t *testing.T) {
	_, text := filled(t, 3)
	prev := strings.Repeat("0", 64)
	for i, line := range strings.SplitAfter(strings.TrimSuffix(string(text), "\n"), "\n") {
		line = strings.TrimSuffix(line, "\n") + "\n"
		var e struct {
			Seq             int
			Prev, Time, Sum string
			Payload         struct{ N int }
		}
		require.NoError(t, json.Unmarshal([]byte(line), &e))
		assert.Equal(t, i+1, e.Seq)
		assert.Equal(t, i+1, e.Payload.N)
		assert.Equal(t, fmt.Sprintf("2026-11-25T12:00:0%dZ", i+1), e.Time)
		assert.Equal(t, prev, e.Prev)
		before, _, ok := strings.Cut(line, `,"sum":`)
		assert.True(t, ok)
		assert.Equal(t, fmt.Sprintf("%x", sha256.Sum256([]byte(before))), e.Sum)
		prev = fmt.Sprintf("%x", sha256.Sum256([]byte(line)))
	}
}

func TestAppendGoesOn(t *testing.T) {
	path, _ := filled(t, 2)
	r, err := At(path).Append(item(3), item(4))
	require.NoError(t, err)
	assert.Equal(t, Receipt{First: 3, Last: 4, Head: r.Head}, r)
	p := proof(t, path, r.Head)
	assert.Equal(t, Proof{Lines: 4, Head: r.Head, Missing: []string{}}, p)
	assert.True(t, p.Clean())
	var seen []int64
	for e, err := range Entries(path) {
		require.NoError(t, err)
		seen = append(seen, e.Seq)
	}
	assert.Equal(t, []int64{1, 2, 3, 4}, seen)
}

func TestAppendRefuses(t *testing.T) {
	path, before := filled(t, 1)
	for name, items := range map[string][]Item{
		"nothing":       nil,
		"no time":       {{Kind: "note"}},
		"no kind":       {{Time: noon}},
		"capital kind":  {{Time: noon, Kind: "Note"}},
		"no JSON":       {{noon, "note", func() {}}},
		"too long":      {{noon, "note", strings.Repeat("x", maxLine)}},
		"second faulty": {item(2), {Time: noon}},
	} {
		_, err := At(path).Append(items...)
		assert.Error(t, err, name)
		after, err := os.ReadFile(path)
		require.NoError(t, err)
		assert.Equal(t, before, after, name)
	}
	_, err := At(t.TempDir()).Append(item(1))
	assert.ErrorIs(t, err, syscall.EISDIR)
}

// A long line is as good as a short one on both sides of each size that lastLine reads.
func TestLongLines(t *testing.T) {
	path := filepath.Join(t.TempDir(), "record.jsonl")
	n := int64(0)
	for _, around := range []int{1 << 12, 1 << 14, 1 << 16} {
		for size := around - 450; size < around+10; size += 23 {
			r, err := At(path).Append(Item{noon, "note", strings.Repeat("x", size)})
			require.NoError(t, err)
			n++
			require.Equal(t, n, r.Last)
		}
	}
	_, err := At(path).Append(Item{noon, "note", strings.Repeat("x", maxLine-1000)}, item(1))
	require.NoError(t, err)
	assert.Equal(t, n+2, proof(t, path).Lines)
}

// A clock that goes back is recorded as it was and told, once for each step back.
func TestClockBackward(t *testing.T) {
	path, _ := filled(t, 3)
	r, err := At(path).Append(Item{noon.Add(-time.Hour), "note", 4}, Item{noon, "note", 5}, Item{noon, "note", 6}, Item{noon.Add(-1), "note", 7})
	require.NoError(t, err)
	assert.Equal(t, []int64{4, 7}, r.Backward)
	p := proof(t, path)
	assert.True(t, p.Clean())
	assert.Equal(t, []int64{4, 7}, p.Backward)
}

func TestVerifyFaults(t *testing.T) {
	_, err := Verify(filepath.Join(t.TempDir(), "absent"))
	assert.ErrorIs(t, err, fs.ErrNotExist)
	_, err = Verify(t.TempDir())
	assert.ErrorContains(t, err, "no plain file")
	empty := filepath.Join(t.TempDir(), "empty")
	require.NoError(t, os.WriteFile(empty, nil, 0o644))
	assert.Equal(t, Proof{Head: origin}, proof(t, empty))
	assert.Equal(t, []string{"feed"}, proof(t, empty, "feed").Missing)
}

func unmarshal(e Entry, into any) error { return json.Unmarshal(e.Payload, into) }
