package facts

import (
	"cmp"
	"slices"

	"lineworthy/catalog"
	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

// builder fills the facts of one line and remembers why something is not known.
type builder struct {
	*scratch
	l *resolve.Line
	c *catalog.Catalog
	f *Facts
	// settled is set when all passages are walked.
	settled bool
	rings   rings
	err     error
}

// Build works out the facts of a resolved line. The error is a fault of the catalog or of the tool, never missing
// knowledge: that is left out and named in Unknowns.
func Build(l *resolve.Line, c *catalog.Catalog) (*Facts, error) {
	b := newBuilder(l, c, scratches.Get().(*scratch))
	for _, fill := range []func(){
		b.line, b.fluids, b.allCases, b.hoses, b.parts, b.regulators, b.capacities, b.limits, b.joints, b.pairs, b.meetings, b.points,
		b.sections, b.surges, b.reliefs, b.vesselFacts, b.gauges, b.flows, b.releases, b.tests, b.steams,
		b.labels, b.closures, b.tails, b.excessFlows,
	} {
		fill()
	}
	b.close()
	b.giveBack()
	return b.f, b.err
}

func newBuilder(l *resolve.Line, c *catalog.Catalog, s *scratch) *builder {
	return &builder{scratch: s, l: l, c: c, f: &Facts{Schema: Schema, Unknowns: []Unknown{}}}
}

// unknown notes why a fact is missing. The first reason stays.
func (b *builder) unknown(subject, fact, why, ask string) {
	key := [2]string{subject, fact}
	if _, ok := b.why[key]; !ok {
		b.why[key] = Unknown{Subject: subject, Fact: fact, Why: why, Ask: ask}
	}
}

// close sorts what was gathered in maps, so that the same line gives the same bytes.
func (b *builder) close() {
	b.closeValues()
	for _, u := range b.why {
		b.f.Unknowns = append(b.f.Unknowns, u)
	}
	slices.SortFunc(b.f.Unknowns, func(x, y Unknown) int {
		return cmp.Or(cmp.Compare(x.Subject, y.Subject), cmp.Compare(x.Fact, y.Fact))
	})
}

// keep stores the first error and gives the number as known when there was none.
func (b *builder) keep(v int64, err error) Int {
	if err != nil {
		if b.err == nil {
			b.err = err
		}
		return Int{}
	}
	return Know(v)
}

func (b *builder) kpaUp(p units.GaugePressure) Int   { return b.keep(units.KPaUp(p)) }
func (b *builder) kpaDown(p units.GaugePressure) Int { return b.keep(units.KPaDown(p)) }

// hot and cold round away from comfort: a hottest temperature up, a coldest down.
func (b *builder) hot(t *units.Temperature) Int {
	if t == nil {
		return Int{}
	}
	return b.keep(units.CentikelvinUp(*t))
}

func (b *builder) cold(t *units.Temperature) Int {
	if t == nil {
		return Int{}
	}
	return b.keep(units.CentikelvinDown(*t))
}

// stated is the origin of a figure written on the sheet: site when a document is named, else stated.
func stated(document string) catalog.Origin {
	if document == "" {
		return catalog.Origin{Standing: "stated", Clause: "the sheet names no document"}
	}
	return catalog.Origin{Standing: catalog.Site, Clause: document}
}
