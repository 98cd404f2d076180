package facts_test

import (
	"path/filepath"
	"sync"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/catalog"
	"lineworthy/check/facts"
	"lineworthy/check/resolve"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

// shipped are the resolved lines that come with the tool, by their folder.
func shipped(tb testing.TB, cat *catalog.Catalog) map[string]*resolve.Line {
	tb.Helper()
	paths, err := filepath.Glob("../../testdata/lines/*/line.yaml")
	require.NoError(tb, err)
	out := map[string]*resolve.Line{}
	for _, p := range paths {
		s, err := sheet.Read(p)
		require.NoError(tb, err)
		r, err := resolve.Resolve(s, cat, resolve.Options{AsOf: units.Date{Days: 20782}})
		require.NoError(tb, err)
		out[filepath.Base(filepath.Dir(p))] = r
	}
	require.NotEmpty(tb, out)
	return out
}

// Nothing of one line shows up in another, in whatever order and by however many workers they are worked out.
func TestLinesLeaveNothingBehind(t *testing.T) {
	cat := catalog.Open()
	lines, first := shipped(t, cat), map[string]*facts.Facts{}
	for name, l := range lines {
		f, err := facts.Build(l, cat)
		require.NoError(t, err)
		first[name] = f
	}
	var done sync.WaitGroup
	for range 4 {
		done.Go(func() {
			for range 5 {
				for name, l := range lines { // in an order of its own each time
					f, err := facts.Build(l, cat)
					assert.NoError(t, err)
					assert.Equal(t, first[name], f, name)
				}
			}
		})
	}
	done.Wait()
}

// A line of ten parts took 1411 pieces of memory once; what its facts hold are some 580. The bound leaves room for a
// collection in between, which takes the scratch away.
func TestFactsTakeLittleMemory(t *testing.T) {
	cat := catalog.Open()
	l := shipped(t, cat)["butanone-day-tank"]
	n := testing.AllocsPerRun(50, func() { _, _ = facts.Build(l, cat) })
	assert.Less(t, n, 900.0)
}
