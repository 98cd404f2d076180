package register

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func hose(path, line, day, tag string, products []string, known ...string) *Entry {
	return &Entry{Path: path, Line: line, AsOf: day, Word: "fit", Hoses: []Hose{{tag, "H1", products, append(known, products...)}}}
}

func TestHosesAcrossLines(t *testing.T) {
	acid, water := []string{"acid"}, []string{"water"}
	for name, test := range map[string]struct {
		entries []*Entry
		want    []string
	}{
		"one line, one hose":     {[]*Entry{hose("a", "L1", "2026-01-01", "T", acid)}, nil},
		"two lines at once":      {[]*Entry{hose("a", "L1", "2026-01-01", "T", acid), hose("b", "L2", "2026-01-01", "t", acid)}, []string{"two lines T"}},
		"different hoses":        {[]*Entry{hose("a", "L1", "2026-01-01", "T", acid), hose("b", "L2", "2026-01-01", "U", acid)}, nil},
		"same line, later sheet": {[]*Entry{hose("a", "L1", "2026-01-01", "T", acid), hose("b", "L1", "2026-02-01", "T", acid)}, nil},
		"moved, and the first line says so": {[]*Entry{hose("a", "L1", "2026-01-01", "T", acid), hose("b", "L1", "2026-02-01", "U", acid),
			hose("c", "L2", "2026-02-01", "T", acid)}, nil},
		"moved, and the first line still names it": {[]*Entry{hose("a", "L1", "2026-01-01", "T", acid), hose("c", "L2", "2026-02-01", "T", acid)}, []string{"two lines T"}},
		"other product before": {[]*Entry{hose("a", "L1", "2026-01-01", "T", acid), hose("b", "L1", "2026-02-01", "T", water)},
			[]string{"previous contents T"}},
		"other product before, named": {[]*Entry{hose("a", "L1", "2026-01-01", "T", acid), hose("b", "L1", "2026-02-01", "T", water, "acid")}, nil},
		"there and back": {[]*Entry{hose("a", "L1", "2026-01-01", "T", acid), hose("b", "L1", "2026-02-01", "T", water), hose("c", "L1", "2026-03-01", "T", acid)},
			[]string{"previous contents T", "previous contents T"}},
		"two sheets of one line and day": {[]*Entry{hose("a", "L1", "2026-01-01", "T", acid), hose("b", "L1", "2026-01-01", "T", acid)}, []string{"line twice "}},
		"bad sheets say nothing":         {[]*Entry{hose("a", "L1", "2026-01-01", "T", acid), {Path: "b", Line: "L2", Faults: []string{"x"}, Hoses: []Hose{{"T", "H1", acid, acid}}}}, nil},
	} {
		f := newFleet()
		for _, e := range test.entries {
			f.add(e)
		}
		var got []string
		for _, m := range f.meetings() {
			got = append(got, m.Kind+" "+m.Tag)
		}
		assert.Equal(t, test.want, got, name)
	}
}

func TestTwoHosesOfOneName(t *testing.T) {
	e := hose("a", "L1", "2026-01-01", "T", nil)
	e.Hoses = append(e.Hoses, Hose{Tag: "T", Part: "H2"})
	f := newFleet()
	f.add(e)
	m := f.meetings()
	assert.Len(t, m, 1)
	assert.Equal(t, "two places", m[0].Kind)
	assert.Equal(t, []string{"L1 H1", "L1 H2"}, m[0].Lines)
}
