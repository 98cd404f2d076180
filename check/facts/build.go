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
	l      *resolve.Line
	c      *catalog.Catalog
	f      *Facts
	why    map[[2]string]Unknown // subject and fact
	values map[string]*Value
	stages map[*resolve.Run]*passage
	made   map[*resolve.Part][]item
	spots  map[spot][]push
	// settled is set when all passages are walked.
	settled bool
	paired  map[string]bool // ids of pairs filed
	rings   rings
	err     error
}

// Room for a line of a dozen parts, so that its maps do not grow step by step.
const usualValues, usualPairs = 96, 128

// Build works out the facts of a resolved line. The error is a fault of the catalog or of the tool, never missing
// knowledge: that is left out and named in Unknowns.
func Build(l *resolve.Line, c *catalog.Catalog) (*Facts, error) {
	b := &builder{
		l: l, c: c, f: &Facts{Schema: Schema, Values: []Value{}, Unknowns: []Unknown{}}, why: map[[2]string]Unknown{},
		values: make(map[string]*Value, usualValues), stages: map[*resolve.Run]*passage{}, made: map[*resolve.Part][]item{}, spots: map[spot][]push{}, paired: make(map[string]bool, usualPairs),
	}
	for _, fill := range []func(){
		b.line, b.fluids, b.allCases, b.hoses, b.parts, b.regulators, b.capacities, b.limits, b.joints, b.pairs, b.meetings, b.points,
		b.sections, b.surges, b.reliefs, b.vesselFacts, b.gauges, b.flows, b.releases,
		b.labels, b.closures, b.tails, b.excessFlows,
	} {
		fill()
	}
	b.close()
	return b.f, b.err
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
	b.f.Values = slices.Grow(b.f.Values, len(b.values))
	for _, v := range b.values {
		slices.Sort(v.Used)
		v.Used = slices.Compact(v.Used)
		b.f.Values = append(b.f.Values, *v)
	}
	slices.SortFunc(b.f.Values, func(x, y Value) int { return cmp.Compare(x.ID, y.ID) })
	for _, u := range b.why {
		b.f.Unknowns = append(b.f.Unknowns, u)
	}
	slices.SortFunc(b.f.Unknowns, func(x, y Unknown) int {
		return cmp.Or(cmp.Compare(x.Subject, y.Subject), cmp.Compare(x.Fact, y.Fact))
	})
}

// rests records a favourable value that a part rests on, with how it is known.
func (b *builder) rests(id, what string, o catalog.Origin, part string) {
	v := b.values[id]
	if v == nil {
		doc := o.Source
		if doc != "" {
			doc = b.l.Sources(o.Source)
		}
		v = &Value{ID: id, What: what, Standing: string(o.Standing), Source: doc, Clause: o.Clause}
		b.values[id] = v
	}
	v.Used = append(v.Used, part)
}

// again notes a further part that rests on a value already recorded, so that its words need not be made once more.
func (b *builder) again(id, part string) bool {
	v := b.values[id]
	if v == nil {
		return false
	}
	v.Used = append(v.Used, part)
	return true
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
