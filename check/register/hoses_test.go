package register

import (
	"bytes"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/check/sheet"
)

// anywhere takes every name for one that was met twice.
func anywhere(named, string) bool { return true }

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
		"moved from either of two lines of a day": {[]*Entry{hose("a", "L1", "2026-01-01", "T", acid), hose("b", "L2", "2026-01-01", "T", water), hose("c", "L1", "2026-02-01", "U", acid),
			hose("d", "L2", "2026-02-01", "U", acid), hose("e", "L3", "2026-03-01", "T", []string{"oil"}, "acid")}, []string{"two lines U", "previous contents T"}},
		"moved to two lines of a day": {[]*Entry{hose("a", "L1", "2026-01-01", "T", acid), hose("b", "L2", "2026-02-01", "T", water, "acid"), hose("c", "L3", "2026-02-01", "T", water)},
			[]string{"two lines T", "previous contents T"}},
		"one name written in several ways":            {[]*Entry{hose("a", "L1", "2026-01-01", "T  1", acid), hose("b", "L2", "2026-01-01", "t 1 ", acid)}, []string{"two lines T 1"}},
		"one line written in several ways":            {[]*Entry{hose("a", "L 1", "2026-01-01", "T", acid), hose("b", "l  1", "2026-02-01", "T", acid)}, nil},
		"one line of one day written in several ways": {[]*Entry{hose("a", "L1", "2026-01-01", "T", acid), hose("b", "l1", "2026-01-01", "T", acid)}, []string{"line twice "}},
		"two sheets of one line and day":              {[]*Entry{hose("a", "L1", "2026-01-01", "T", acid), hose("b", "L1", "2026-01-01", "T", acid)}, []string{"line twice "}},
		"bad sheets say nothing":                      {[]*Entry{hose("a", "L1", "2026-01-01", "T", acid), {Path: "b", Line: "L2", Faults: []string{"x"}, Hoses: []Hose{{"T", "H1", acid, acid}}}}, nil},
	} {
		f := newFleet(anywhere)
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
	f := newFleet(anywhere)
	f.add(e)
	m := f.meetings()
	assert.Len(t, m, 1)
	assert.Equal(t, "two places", m[0].Kind)
	assert.Equal(t, []string{"L1 H1", "L1 H2"}, m[0].Lines)
}

// TestUndated: a sheet without a date counts as of the day of the register, and the text says so.
func TestUndated(t *testing.T) {
	last := hose("b", "L1", "2026-02-01", "T", []string{"water"})
	last.Undated = true
	f := newFleet(anywhere)
	f.add(hose("a", "L1", "2026-01-01", "T", []string{"acid"}))
	f.add(last)
	all := f.meetings()
	require.Len(t, all, 1)
	assert.Contains(t, all[0].Text, "(it bears no date, and counts as of 2026-02-01)")
}

// TestIdentity: a word for no tag is none, and then the identity of the approval counts.
func TestIdentity(t *testing.T) {
	for _, c := range []struct{ tag, assigned, want string }{
		{"H-1", "H-2", "H-1"}, {" h  1 ", "", "h 1"}, {"", "H-2", "H-2"}, {"none", "H-2", "H-2"}, {"n/a", "-", ""}, {"", "", ""}, {"NONE-1", "", "NONE-1"},
	} {
		p := &sheet.Part{}
		p.Tag.V, p.Assigned.V = c.tag, c.assigned
		assert.Equal(t, c.want, identity(p), c)
	}
}

// TestPrinted: a file name neither breaks a row nor speaks to the terminal, and a meeting without a hose has no empty name.
func TestPrinted(t *testing.T) {
	var out bytes.Buffer
	l := &limited{w: &out, most: 9}
	require.NoError(t, l.line("%s", "a\x1b[31m\nb\u0085.yaml 1 °C"))
	require.NoError(t, textRow(&out, Row{Path: "c\x1b\td.yaml", First: "x\ry"}, 12))
	assert.Equal(t, "a?[31m?b?.yaml 1 °C\nc??d.yaml     NO VERDICT       -           -        -           -  x?y\n", out.String())
}
