// Package population makes up any number of lines out of the shipped ones, always the same for one seed: the plants that
// speed is measured on. No line is a real one.
package population

import (
	"context"
	"fmt"
	"math/rand/v2"
	"path/filepath"
	"regexp"
	"slices"
	"strings"

	"lineworthy/check"
	"lineworthy/check/facts"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

// Kinds of plants.
const (
	Healthy = "healthy" // papers at hand, dates kept, nothing too weak; a few values still to confirm
	Mixed   = "mixed"   // seven in ten healthy, two with one fault or gap, one sick
	Sick    = "sick"    // values from memory, dates missed, parts too weak, wrong joints, unsuitable materials, facts missing
)

// Maker makes lines one after another.
type Maker struct {
	kind   string
	tags   bool
	chance *rand.Rand
	bases  []*facts.Facts
	ids    []*regexp.Regexp // the names of the parts of each base
	n      int
}

// asOf is the day of all lines: 2026-11-25.
const asOf = 20782

// New reads the shipped lines below a folder. With tags, every part of the plant has a name of its own; without, every
// line calls its first hose H1.
func New(lines, kind string, tags bool, seed uint64) (*Maker, error) {
	e, err := check.New(context.Background(), check.Options{AsOf: units.Date{Days: asOf}, Version: "bench"})
	if err != nil {
		return nil, err
	}
	paths, err := filepath.Glob(filepath.Join(lines, "*", "line.yaml"))
	if err != nil || len(paths) == 0 {
		return nil, fmt.Errorf("no lines below %s (%v)", lines, err)
	}
	m := &Maker{kind: kind, tags: tags, chance: rand.New(rand.NewPCG(seed, 1))}
	for _, p := range paths {
		line, err := sheet.Read(p)
		if err != nil {
			return nil, err
		}
		f, err := e.Facts(line)
		if err != nil {
			return nil, err
		}
		m.bases, m.ids = append(m.bases, f), append(m.ids, names(f))
	}
	return m, nil
}

// names matches every part of a line as a whole word. Those without a figure may be other words too.
func names(f *facts.Facts) *regexp.Regexp {
	all := []string{"H0"}
	for _, p := range f.Parts {
		if strings.ContainsAny(p.ID, "0123456789") {
			all = append(all, regexp.QuoteMeta(p.ID))
		}
	}
	slices.SortFunc(all, func(a, b string) int { return len(b) - len(a) })
	return regexp.MustCompile(`\b(` + strings.Join(all, "|") + `)\b`)
}

// Next is the JSON of the next line.
func (m *Maker) Next() ([]byte, error) {
	at := m.chance.IntN(len(m.bases))
	f, err := copied(m.bases[at])
	if err != nil {
		return nil, err
	}
	m.n++
	f.Line.ID = fmt.Sprintf("LN-%06d", m.n)
	m.vary(f)
	text, err := f.JSON()
	if err != nil || !m.tags {
		return text, err
	}
	tag := fmt.Appendf(nil, "${1}-%06d", m.n)
	return m.ids[at].ReplaceAll(text, tag), nil
}

// copied is a deep copy, by way of its text.
func copied(f *facts.Facts) (*facts.Facts, error) {
	text, err := f.JSON()
	if err != nil {
		return nil, err
	}
	return facts.Read(text)
}
