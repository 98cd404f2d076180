package facts

import (
	"slices"

	"lineworthy/check/resolve"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

func (b *builder) reliefs() {
	b.f.Reliefs = []Relief{}
	for _, r := range b.l.Runs {
		for i, p := range r.Parts {
			if p.Sheet.Kind.V == "relief" {
				b.f.Reliefs = append(b.f.Reliefs, b.lineRelief(r, i))
			}
		}
		if r.Sheet.Source.ReliefFitted.V {
			b.f.Reliefs = append(b.f.Reliefs, b.cylinderRelief(r))
		}
	}
	for _, v := range b.l.Vessels {
		if v.Sheet.Relief != nil {
			b.f.Reliefs = append(b.f.Reliefs, b.vesselRelief(v))
		}
	}
}

// lineRelief is a relief device in a run. It protects the section it stands in, and what a failed regulator before it
// could reach.
func (b *builder) lineRelief(r *resolve.Run, i int) Relief {
	p := r.Parts[i]
	out := Relief{ID: p.ID, Run: r.Key, SetKPa: b.demand(p), IsolableStated: p.Sheet.Isolatable.Set, Isolable: boolOf(p.Sheet.Isolatable)}
	out.TestedDays, out.IntervalDays = b.since(p.Sheet.Tested), b.due(p.Sheet)
	for _, f := range liquids(r) {
		out.LPGLiquid = out.LPGLiquid || slices.Contains(f.Services, "lpg")
	}
	low, ok := b.weakest(b.protected(r, i))
	if ok {
		out.WeakestKPa, out.Weakest, out.WeakestIsHose = b.kpaDown(low.have), low.id, low.hose
	}
	return out
}

// protected are the parts that the relief device at index i is there for.
func (b *builder) protected(r *resolve.Run, i int) []*resolve.Part {
	var out []*resolve.Part
	for j, p := range r.Parts {
		regulated := slices.ContainsFunc(r.Parts[:min(j, i)], func(q *resolve.Part) bool { return q.Sheet.Kind.V == "regulator" })
		if open(r, i, j) && !upstream(r, i, j) || j > i && regulated {
			out = append(out, p)
		}
	}
	return out
}

// upstream says whether part j lies before the last regulator or pump in front of i, where the pressure is another.
func upstream(r *resolve.Run, i, j int) bool {
	for k := j; k < i; k++ {
		if kind := r.Parts[k].Sheet.Kind.V; kind == "regulator" || kind == "pump" {
			return true
		}
	}
	return false
}

func (b *builder) vesselRelief(v *resolve.Vessel) Relief {
	s := v.Sheet
	out := Relief{ID: "relief of " + v.Key, OnVessel: true, Weakest: v.Key}
	if s.Relief.Set.Set {
		out.SetKPa = b.kpaUp(s.Relief.Set.V.Gauge(b.l.Ambient))
	}
	out.WeakestKPa = b.gauge(s.Rated)
	return out
}

// cylinderRelief is the device of a cylinder. Only its being there matters here.
func (b *builder) cylinderRelief(r *resolve.Run) Relief {
	out := Relief{ID: "relief of the cylinder of " + r.Key, Run: r.Key, OnVessel: true, SetKPa: Know(0), WeakestKPa: Know(0)}
	for _, f := range r.Fluids {
		out.ZoneA = out.ZoneA || f.Sheet != nil && f.Sheet.Zone.V == "A"
	}
	return out
}

func (b *builder) since(o sheet.Of[units.Date]) Int {
	if !o.Set {
		return Int{}
	}
	return Know(int64(b.l.AsOf.DaysSince(o.V)))
}

// due is the stated test interval in days, counted from the last test.
func (b *builder) due(s *sheet.Part) Int {
	if !s.TestEvery.Set || !s.Tested.Set {
		return Int{}
	}
	return Know(int64(s.Tested.V.AddMonths(s.TestEvery.V).DaysSince(s.Tested.V)))
}
