package record

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestTornAtEachByte cuts the last write short at each of its bytes, as a power cut can, with and without pages that were
// never written. The lines before stay, what is left of the torn one is kept and named, and the record goes on.
func TestTornAtEachByte(t *testing.T) {
	_, text := filled(t, 3)
	whole := bytes.LastIndexByte(text[:len(text)-1], '\n') + 1
	for cut := whole + 1; cut < len(text); cut++ {
		tornAt(t, text[:whole], text[whole:cut], 3)
		tornAt(t, text[:whole], make([]byte, cut-whole), 3)
		tornAt(t, text[:whole], append(make([]byte, cut-whole), text[cut:]...), 3)
	}
}

func TestTornFirstLine(t *testing.T) {
	_, text := filled(t, 1)
	for cut := 1; cut < len(text); cut++ {
		tornAt(t, nil, text[:cut], 1)
	}
}

func tornAt(t *testing.T, whole, tail []byte, at int64) {
	path := filepath.Join(t.TempDir(), "record.jsonl")
	require.NoError(t, os.WriteFile(path, append(bytes.Clone(whole), tail...), 0o644))
	p := proof(t, path)
	require.Equal(t, &Torn{at, int64(len(tail))}, p.Torn)
	require.Equal(t, at-1, p.Lines)
	for _, err := range Entries(path) {
		require.NoError(t, err)
	}

	r, err := At(path).Append(item(9))
	require.NoError(t, err)
	require.Equal(t, at+1, r.Last)
	kept, err := os.ReadFile(r.SetAside)
	require.NoError(t, err)
	require.Equal(t, tail, kept)
	p = proof(t, path)
	require.True(t, p.Clean())
	require.Equal(t, []int64{at}, p.SetAside)
	after, err := os.ReadFile(path)
	require.NoError(t, err)
	require.True(t, bytes.HasPrefix(after, whole))
	require.Contains(t, string(after), fmt.Sprintf(`"file":"%s"`, filepath.Base(r.SetAside)))
}

// The move itself may be cut short: after the copy and before the cut, it is done again into the same file.
func TestSetAsideTwice(t *testing.T) {
	path, text := filled(t, 1)
	torn := append(bytes.Clone(text), `{"seq":2,`...)
	require.NoError(t, os.WriteFile(path, torn, 0o644))
	s := At(path)
	plain := s.open
	s.open = func(p string) (disk, error) {
		d, err := plain(p)
		return &failing{disk: d, noTruncate: true}, err
	}
	r, err := s.Append(item(2))
	require.ErrorContains(t, err, "could not be cut off")
	after, err := os.ReadFile(path)
	require.NoError(t, err)
	assert.Equal(t, torn, after)

	again, err := At(path).Append(item(2))
	require.NoError(t, err)
	assert.Equal(t, r.SetAside, again.SetAside)
	files, err := filepath.Glob(path + ".torn-*")
	require.NoError(t, err)
	assert.Len(t, files, 1)
	assert.True(t, strings.HasPrefix(filepath.Base(files[0]), "record.jsonl.torn-2-"))
}

// TestForeignFile: a file of one line without its line feed looks torn, but is somebody's: it is left as it is.
func TestForeignFile(t *testing.T) {
	for _, text := range []string{"hello", `{"seq":2,`, `{"line":"KD-104"}`, "{ "} {
		path := written(t, []byte(text))
		_, err := At(path).Append(item(1))
		require.ErrorContains(t, err, "no record: name another file", text)
		after, err := os.ReadFile(path)
		require.NoError(t, err)
		require.Equal(t, text, string(after))
		files, err := filepath.Glob(path + ".torn-*")
		require.NoError(t, err)
		require.Empty(t, files)
	}
}
