package facts

import (
	"math"

	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

func cylinderRoom(bore, length units.Length) units.Volume {
	return units.Volume(math.Pi / 4 * float64(bore) * float64(bore) * float64(length))
}

// testItems is all that the pressure of the test reaches, at the heat of the test.
func (b *builder) testItems(r *resolve.Run) {
	top := b.warm(r.Test)
	for _, p := range r.Parts {
		if aside(r, p.ID) {
			continue
		}
		for _, it := range b.partItems(p, top) {
			if k := p.Sheet.Kind.V; it.what == "body" && (k == "regulator" || k == "pump") {
				it.what = k
			}
			b.testItem(r, it, p, top)
		}
		if p.Sheet.Kind.V == "relief" {
			b.testItem(r, b.opens(p), p, top)
		}
	}
	for _, j := range r.Joints {
		b.testJoint(r, j, top)
	}
	for _, v := range []*resolve.Vessel{r.Source, r.Target} {
		if v != nil && !aside(r, v.Key) {
			b.testItem(r, b.vesselInTest(r, v), nil, top)
		}
	}
}

// opens is where a relief device opens.
func (b *builder) opens(p *resolve.Part) item {
	it := item{id: p.ID + " set pressure", part: p.ID, what: "relief", why: "the set pressure of " + p.ID + " is not stated", ask: "set of " + p.ID}
	if p.Sheet.Set.Set {
		it.have, it.why = p.Sheet.Set.V.Gauge(b.l.Ambient), ""
	}
	return it
}

// testJoint is what holds a joint tight, where neither side is kept out: a blank brings a gasket of its own.
func (b *builder) testJoint(r *resolve.Run, j *resolve.Joint, top *units.Temperature) {
	for _, e := range []*resolve.End{j.A, j.B} {
		if e.Part != nil && aside(r, e.Part.ID) || e.Vessel != nil && aside(r, e.Vessel.Key) {
			return
		}
	}
	for _, e := range []*resolve.End{j.A, j.B} {
		if it, ok := b.looseEnd(r, e, top); ok && it.what != "outlet class" {
			b.testItem(r, it, nil, top)
		}
	}
	for _, s := range j.Seals {
		if it, ok := b.sealItem(s, top); ok {
			b.testItem(r, it, nil, top)
		}
	}
}

// vesselInTest is what a vessel bears when it is not kept out: liquid up to the test pressure on its plate, gas up to its
// rating, and none while it is open to the air.
func (b *builder) vesselInTest(r *resolve.Run, v *resolve.Vessel) item {
	s := v.Sheet
	it := item{id: v.Key + " vessel", part: v.Key, what: "vessel"}
	switch {
	case s.Vent.V == "open":
		it.why, it.ask = v.Key+" is open to the air and no test can stand in it", "runs."+r.Key+".test.isolated"
	case !stores(r.Test) && s.TestPressure.Set:
		it.have = s.TestPressure.V.Gauge(b.l.Ambient)
	case s.Rated.Set:
		it.have = s.Rated.V.Gauge(b.l.Ambient)
	default:
		it.why, it.ask = "the working pressure of "+v.Key+" is not stated", "vessels."+v.Key+".rated, from its nameplate"
	}
	return it
}

func (b *builder) testItem(r *resolve.Run, it item, p *resolve.Part, top *units.Temperature) {
	test := r.Sheet.Test.Pressure.V.Gauge(b.l.Ambient)
	out := TestItem{ID: it.id + " in the test of " + r.Key, Run: r.Key, Part: it.part, What: it.what, Gas: stores(r.Test), TestKPa: b.kpaUp(test)}
	if top == nil {
		it.why, it.ask = "how hot the test gets is not stated", "site.highest, or the highest temperature of the test fluid"
	}
	if it.why != "" {
		b.unknown(out.ID, "test_items.rated_kpa", it.why, it.ask)
		b.unknown(out.ID, "test_items.test_ratio_permille", it.why, it.ask)
		b.f.TestItems = append(b.f.TestItems, out)
		return
	}
	out.RatedKPa = b.kpaDown(it.have)
	if it.have > 0 {
		out.Ratio = b.keep(units.RoundUp(float64(test/it.have) * 1000))
	}
	if it.what == "hose" && p.Hose != nil && p.Hose.ProofRatio != nil {
		b.rests(p.Hose.ID+" proof ratio", "proof pressure over working pressure of "+p.Hose.Name, p.Hose.ProofRatio.Origin, p.ID)
		out.Proof = b.keep(units.RoundDown(p.Hose.ProofRatio.Value * 1000))
	}
	b.f.TestItems = append(b.f.TestItems, out)
}
