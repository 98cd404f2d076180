package register

import (
	"io"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/check/report"
)

func TestSlipsAreGivenAsTheyCame(t *testing.T) {
	s, err := newSlips()
	require.NoError(t, err)
	want := []Row{
		{Path: "a/b.yaml", Line: "L<1> & \u2028", Word: report.Unfit, Stops: 3, First: strings.Repeat("long ", 20_000)},
		{},
		{Path: "c.yaml", First: "line: [", Sum: "0f"},
	}
	for _, x := range want {
		require.NoError(t, s.add(x))
	}
	for range 2 { // a table may be written twice
		var got []Row
		for x, err := range s.rows() {
			require.NoError(t, err)
			got = append(got, x)
		}
		assert.Equal(t, want, got)
	}
	require.NoError(t, s.file.Truncate(0))
	for _, err = range s.rows() {
	}
	assert.ErrorIs(t, err, io.EOF, "a row that got lost")
	require.NoError(t, s.close())
}

// TestSlipsWithoutRoom wants to be told which folder is full, for the user has not named it.
func TestSlipsWithoutRoom(t *testing.T) {
	s, err := newSlips()
	require.NoError(t, err)
	require.NoError(t, s.file.Close())
	for range 2000 { // past the buffer
		err = s.add(Row{Path: strings.Repeat("p", 100)})
	}
	assert.ErrorContains(t, err, "temporary folder")
	for _, err = range s.rows() {
		assert.ErrorContains(t, err, "temporary folder")
	}
	t.Setenv("TMPDIR", t.TempDir()+"/none")
	if os.TempDir() == os.Getenv("TMPDIR") { // it is called otherwise on some systems
		_, err = newSlips()
		assert.ErrorContains(t, err, "TMPDIR names another folder")
	}
}

func TestPlaceHoldsBothEnds(t *testing.T) {
	for _, at := range []int64{0, 1, 1 << 32, farthest - longest} {
		for _, size := range []int{0, 1, longest} {
			p := placed(at, size)
			assert.Equal(t, []int64{at, int64(size)}, []int64{p.at(), int64(p.size())})
		}
	}
}

// TestStateTakesNoMoreThanItCanFind: an entry that could not be found again is refused, and nothing is written of it.
func TestStateTakesNoMoreThanItCanFind(t *testing.T) {
	s, err := passing()
	require.NoError(t, err)
	defer func() { require.NoError(t, s.close()) }()
	_, err = s.put("sheet", &Entry{First: strings.Repeat("x", longest)})
	require.ErrorContains(t, err, "begin a new one")
	require.Zero(t, s.end)
	s.end = farthest - longest + 1
	_, err = s.put("sheet", &Entry{})
	require.ErrorContains(t, err, "begin a new one")
}

// TestEntryOfAnotherPath: were two paths to share their 64 bits, the entry of the one is not taken for that of the other.
func TestEntryOfAnotherPath(t *testing.T) {
	s, err := passing()
	require.NoError(t, err)
	defer func() { require.NoError(t, s.close()) }()
	p, err := s.put("sheet", &Entry{Path: "a.yaml"})
	require.NoError(t, err)
	s.index.put("a.yaml", p)
	s.index.put("b.yaml", p)
	_, _, ok := s.about("a.yaml")
	assert.True(t, ok)
	_, _, ok = s.about("b.yaml")
	assert.False(t, ok)
}
