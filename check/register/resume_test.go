package register

import (
	"bytes"
	"os"
	"path/filepath"
	"syscall"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// once judges a folder with a state file, closes it, and gives what was written.
func once(t testing.TB, o Options) (text string, judged int) {
	r := run(t, o)
	text = written(t, r, "jsonl")
	require.NoError(t, r.Close())
	return text, r.Judged()
}

func TestResumes(t *testing.T) {
	dir := generated(t, 60)
	o := options(t, dir)
	want, _ := once(t, o)
	o.State = filepath.Join(t.TempDir(), "state.jsonl")
	tool := 2 // HY-02 stands twice among 60, and a fault of the tool is tried again

	for _, step := range []struct {
		name   string
		change func()
		judged int
		same   bool
	}{
		{"the first run judges all", func() {}, 60, true},
		{"nothing changed", func() {}, tool, true},
		{"another day concerns undated sheets only", func() { o.AsOf.Days++ }, tool, false},
		{"one sheet changed", func() { o.AsOf.Days--; appendTo(t, dir, "unit-0/0000.yaml", "# note\n") }, tool + 1, false},
		{"the rules changed", func() { o.Basis.Rules = "r2" }, 60, false},
		{"a catalog row changed", func() { o.Basis.Rows["fluids/water"] = "x" }, 60, false},
		{"the tool changed", func() { o.Basis.Tool = "newer" }, 60, false},
	} {
		step.change()
		got, judged := once(t, o)
		assert.Equal(t, step.judged, judged, step.name)
		assert.Equal(t, step.same, got == want, step.name)
	}
}

func appendTo(t *testing.T, dir, rel, text string) {
	path := filepath.Join(dir, filepath.FromSlash(rel))
	old, err := os.ReadFile(path)
	require.NoError(t, err)
	put(t, dir, rel, string(old)+text)
}

func TestUndatedSheetsAreOfOneDay(t *testing.T) {
	dir := t.TempDir()
	text := bytes.ReplaceAll([]byte(shipped(t)[0]), []byte("as_of: 2026-11-25\n"), nil)
	put(t, dir, "a.yaml", string(text))
	o := options(t, dir)
	o.State = filepath.Join(t.TempDir(), "s")
	_, first := once(t, o)
	_, again := once(t, o)
	o.AsOf.Days++
	_, next := once(t, o)
	assert.Equal(t, []int{1, 0, 1}, []int{first, again, next})
}

// TestTornAndDamaged cuts the state at every byte of its end, and changes bytes all over it: the register stays the same.
func TestTornAndDamaged(t *testing.T) {
	o := options(t, generated(t, 8))
	o.State = filepath.Join(t.TempDir(), "state.jsonl")
	want, _ := once(t, o)
	whole, err := os.ReadFile(o.State)
	require.NoError(t, err)
	lastTwo := bytes.LastIndexByte(whole[:bytes.LastIndexByte(whole[:len(whole)-1], '\n')], '\n')
	tried := 0
	again := func(text []byte, what string, at int) {
		require.NoError(t, os.WriteFile(o.State, text, 0o644))
		got, _ := once(t, o)
		require.Equal(t, want, got, "%s at %d", what, at)
		tried++
	}
	for n := 0; n < len(whole); n += step(n, lastTwo) {
		again(whole[:n], "cut", n)
	}
	for n := len(checkHead); n < len(whole); n += 61 { // a changed first head makes it no state file
		text := bytes.Clone(whole)
		text[n] ^= 1 << (n % 7)
		again(text, "changed", n)
	}
	assert.Greater(t, tried, 200)
}

func step(n, fine int) int {
	if n < fine {
		return 97
	}
	return 7
}

func TestOtherFilesAreNotTouched(t *testing.T) {
	o := options(t, generated(t, 2))
	for _, text := range []string{"line: X\n", "{}", "{\"check\":1}\n", "\x00"} {
		o.State = filepath.Join(t.TempDir(), "notes")
		require.NoError(t, os.WriteFile(o.State, []byte(text), 0o644))
		_, err := Run(t.Context(), o)
		require.ErrorContains(t, err, "is not a state file")
		left, err := os.ReadFile(o.State)
		require.NoError(t, err)
		assert.Equal(t, text, string(left))
	}
}

// small is a disk with room for some bytes only.
type small struct {
	disk
	room int64
}

func (s small) WriteAt(b []byte, at int64) (int, error) {
	if at+int64(len(b)) <= s.room {
		return s.disk.WriteAt(b, at)
	}
	n, _ := s.disk.WriteAt(b[:max(0, s.room-at)], at)
	return n, syscall.ENOSPC
}

func TestDiskFull(t *testing.T) {
	o := options(t, generated(t, 8))
	full := filepath.Join(t.TempDir(), "full")
	o.State = full
	want, _ := once(t, o)
	text, err := os.ReadFile(full)
	require.NoError(t, err)
	for _, room := range []int{0, 10, len(text) / 3, len(text) / 2, len(text) - 1} {
		o.State = filepath.Join(t.TempDir(), "s")
		s, err := openState(o.State)
		require.NoError(t, err)
		s.file = small{s.file, int64(room)}
		for line := range bytes.Lines(text) {
			kind, body := opened(line)
			if _, err = s.put(kind, rawJSON(body)); err != nil {
				break
			}
		}
		require.ErrorIs(t, err, syscall.ENOSPC)
		require.NoError(t, s.close())
		left, err := os.ReadFile(o.State)
		require.NoError(t, err)
		assert.True(t, len(left) == 0 || left[len(left)-1] == '\n', "half a line is left in %d bytes", room)
		assert.True(t, bytes.HasPrefix(text, left))
		got, _ := once(t, o)
		assert.Equal(t, want, got)
	}
}

type rawJSON []byte

func (r rawJSON) MarshalJSON() ([]byte, error) { return r, nil }
