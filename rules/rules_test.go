package rules

import (
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestLoad: the program has every rule there is a folder for, and can compile them.
func TestLoad(t *testing.T) {
	s, err := Load()
	require.NoError(t, err)
	assert.Len(t, s.Index(), len(folders(t))-1, "all folders but the one that gathers")
	for _, r := range s.Index() {
		got, ok := s.Rule(r.ID)
		assert.True(t, ok)
		assert.Equal(t, r, got)
	}
	_, ok := s.Rule("pressure/no_such_fault")
	assert.False(t, ok)
	_, err = s.Compiler()
	require.NoError(t, err)
}

// small is a set of one rule whose index is right.
func small(t *testing.T) fstest.MapFS {
	fsys := fstest.MapFS{
		soundPath:   {Data: []byte(sound)},
		verdictFile: {Data: []byte("package verdict\n\nfindings := {}\n")},
	}
	modules, err := read(fsys)
	require.NoError(t, err)
	fsys[indexFile] = &fstest.MapFile{Data: encode(t, described(modules))}
	return fsys
}

func TestOpen(t *testing.T) {
	s, err := Open(small(t))
	require.NoError(t, err)
	require.Len(t, s.Index(), 1)
	assert.Equal(t, "pressure/too_weak", s.Index()[0].ID)
	assert.Equal(t, []string{"hoses.rated_kpa"}, s.Index()[0].Needs)
	assert.Len(t, s.Modules(), 2)
}

func TestOpenRefuses(t *testing.T) {
	for name, tc := range map[string]struct {
		change func(fstest.MapFS)
		want   string
	}{
		"rule removed": {func(m fstest.MapFS) { delete(m, soundPath) }, "rule pressure/too_weak is in the index but its text is missing"},
		"rule added":   {func(m fstest.MapFS) { m["pressure/more/rule.rego"] = m[soundPath] }, "rule pressure/more is not in the index"},
		"rule changed": {func(m fstest.MapFS) { m[soundPath] = &fstest.MapFile{Data: []byte(sound + "\n")} }, "not the text that was checked"},
		"verdict changed": {func(m fstest.MapFS) {
			m[verdictFile] = &fstest.MapFile{Data: []byte("package verdict\n\nfindings := {1}\n")}
		}, "not the text that was checked"},
		"verdict removed": {func(m fstest.MapFS) { delete(m, verdictFile) }, verdictFile},
		"index removed":   {func(m fstest.MapFS) { delete(m, indexFile) }, indexFile},
		"index broken":    {func(m fstest.MapFS) { m[indexFile] = &fstest.MapFile{Data: []byte("{")} }, indexFile},
	} {
		t.Run(name, func(t *testing.T) {
			m := small(t)
			tc.change(m)
			_, err := Open(m)
			require.ErrorContains(t, err, tc.want)
		})
	}
}

// TestDigest: it stays for the same texts and differs for others, wherever a byte moves between path and text.
func TestDigest(t *testing.T) {
	one := digest([]Module{{"a", "b"}})
	assert.Equal(t, one, digest([]Module{{"a", "b"}}))
	assert.Len(t, one, 64)
	for _, other := range [][]Module{{{"a", "c"}}, {{"b", "b"}}, {{"ab", ""}}, {{"", "ab"}}, {{"a", "b"}, {"", ""}}, nil} {
		assert.NotEqual(t, one, digest(other), "%v", other)
	}
}
