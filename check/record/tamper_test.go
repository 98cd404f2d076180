package record

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func written(t testing.TB, text []byte) string {
	path := filepath.Join(t.TempDir(), "changed.jsonl")
	require.NoError(t, os.WriteFile(path, text, 0o644))
	return path
}

// lineOf is the line a byte stands in, from 1.
func lineOf(text []byte, at int) int64 { return int64(bytes.Count(text[:at], []byte("\n"))) + 1 }

// TestAnyChangedByte changes each byte of a record in turn, with three patterns, and wants the line named.
func TestAnyChangedByte(t *testing.T) {
	_, text := filled(t, 3)
	path := written(t, nil)
	for at := range text {
		for _, mask := range []byte{0x01, 0x20, 0xff} {
			changed := bytes.Clone(text)
			changed[at] ^= mask
			require.NoError(t, os.WriteFile(path, changed, 0o644))
			p := proof(t, path)
			require.False(t, p.Clean(), "byte %d ^ %#x", at, mask)
			require.Equal(t, lineOf(text, at)-1, p.Lines, "byte %d ^ %#x", at, mask)
		}
	}
}

// TestTampering changes, puts in and takes out stretches of bytes anywhere. A cut-off end needs the head to show.
func TestTampering(t *testing.T) {
	path, text := filled(t, 4)
	head := proof(t, path).Head
	path = written(t, nil)
	rapid.Check(t, func(r *rapid.T) {
		from := rapid.IntRange(0, len(text)).Draw(r, "from")
		to := rapid.IntRange(from, min(len(text), from+200)).Draw(r, "to")
		put := rapid.SliceOfN(rapid.Byte(), 0, 200).Draw(r, "put")
		changed := append(append(bytes.Clone(text[:from]), put...), text[to:]...)
		if bytes.Equal(changed, text) {
			r.Skip("nothing changed")
		}
		require.NoError(r, os.WriteFile(path, changed, 0o644))
		require.False(r, proof(t, path, head).Clean())
	})
}

func TestMovedLines(t *testing.T) {
	_, text := filled(t, 4)
	l := strings.SplitAfter(string(text), "\n")[:4]
	for name, c := range map[string]struct {
		lines []string
		at    int64
		why   string
	}{
		"exchanged":  {[]string{l[0], l[2], l[1], l[3]}, 2, "says it is line 3"},
		"taken out":  {[]string{l[0], l[1], l[3]}, 3, "says it is line 4"},
		"twice":      {[]string{l[0], l[1], l[1]}, 3, "says it is line 2"},
		"first gone": {l[1:], 1, "says it is line 2"},
		"empty line": {[]string{l[0], "\n", l[1]}, 2, "own sum"},
		"foreign":    {[]string{l[0], "{\"seq\":2}\n", l[1]}, 2, "own sum"},
		"remade":     {[]string{l[0], remade(t, l[1]), l[2]}, 2, "does not follow"},
	} {
		p := proof(t, written(t, []byte(strings.Join(c.lines, ""))))
		if assert.NotNil(t, p.Broken, name) {
			assert.Equal(t, c.at, p.Broken.Line, name)
			assert.Contains(t, p.Broken.Why, c.why, name)
		}
	}
}

// remade is the same line with another prev and a sum that fits, as somebody would write it who knows the format.
func remade(t *testing.T, line string) string {
	changed := strings.Replace(line, `"prev":"`, `"prev":"f`, 1)
	body, _, ok := strings.Cut(changed, sumKey)
	require.True(t, ok)
	return body + sumKey + digest([]byte(body)) + sumEnd
}

// Whole lines cut off the end leave a sound chain: only a head noted earlier shows it.
func TestCutOffEnd(t *testing.T) {
	path, text := filled(t, 3)
	head := proof(t, path).Head
	cut := written(t, []byte(strings.Join(strings.SplitAfter(string(text), "\n")[:2], "")))
	assert.True(t, proof(t, cut).Clean())
	assert.Equal(t, []string{head}, proof(t, cut, head).Missing)
	assert.False(t, proof(t, cut, head).Clean())
}

// Nothing is built upon a changed last line, and nothing of it is lost.
func TestAppendToBroken(t *testing.T) {
	_, text := filled(t, 2)
	text[len(text)-20] ^= 1
	path := written(t, text)
	_, err := At(path).Append(item(3))
	assert.ErrorContains(t, err, "cannot be built upon")
	after, err := os.ReadFile(path)
	require.NoError(t, err)
	assert.Equal(t, text, after)
}

// TestEachCut cuts the record off at each byte. Within a line it shows by itself, between lines against the head alone.
func TestEachCut(t *testing.T) {
	path, text := filled(t, 3)
	head := proof(t, path).Head
	path = written(t, nil)
	for at := range text {
		require.NoError(t, os.WriteFile(path, text[:at], 0o644))
		between := at == 0 || text[at-1] == '\n'
		require.Equal(t, between, proof(t, path).Clean(), "cut at %d", at)
		require.False(t, proof(t, path, head).Clean(), "cut at %d", at)
	}
}

// TestPutAtTheEnd: what no Append wrote shows, even a line that would follow from itself.
func TestPutAtTheEnd(t *testing.T) {
	_, text := filled(t, 3)
	lines := bytes.SplitAfter(text, []byte("\n"))
	for name, more := range map[string]string{
		"line feed": "\n", "space": " ", "NUL": "\x00", "return": "\r\n", "object": "{}\n", "last line again": string(lines[2]), "first line again": string(lines[0]),
	} {
		require.False(t, proof(t, written(t, append(bytes.Clone(text), more...))).Clean(), name)
	}
	require.False(t, proof(t, written(t, append([]byte("\xef\xbb\xbf"), text...))).Clean(), "byte order mark")
	require.False(t, proof(t, written(t, bytes.ReplaceAll(text, []byte("\n"), []byte("\r\n")))).Clean(), "line ends")
}
