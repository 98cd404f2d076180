package facts

import (
	"slices"

	"lineworthy/catalog"
	"lineworthy/check/resolve"
)

func (b *builder) meetings() {
	b.f.Meetings = []Meeting{}
	for _, r := range b.l.Runs {
		for i, x := range r.Fluids {
			for _, y := range r.Fluids[i+1:] {
				b.meet(x, y, where(x, y))
			}
		}
		b.inTest(r)
		b.overLiquid(r)
		b.inOneVessel(r)
	}
}

// inTest is what the run is tested with against what it carries, unless the line is emptied and dried in between.
func (b *builder) inTest(r *resolve.Run) {
	if r.Test == nil || r.Sheet.Test.Dried.V {
		return
	}
	for _, f := range r.Fluids {
		if f != r.Test {
			b.meet(r.Test, f, "test")
		}
	}
}

// inOneVessel are the liquids of different runs that end in one vessel.
func (b *builder) inOneVessel(r *resolve.Run) {
	for _, other := range b.l.Runs {
		if other == r || r.Target == nil || other.Target != r.Target {
			continue
		}
		for _, x := range liquids(r) {
			for _, y := range liquids(other) {
				if x != y {
					b.meet(x, y, where(x, y))
				}
			}
		}
	}
}

// overLiquid are the gases of a run that ends in a vessel, against the liquids that run out of it.
func (b *builder) overLiquid(pad *resolve.Run) {
	for _, r := range b.l.Runs {
		if r == pad || r.Source == nil || r.Source != pad.Target {
			continue
		}
		for _, g := range pad.Fluids {
			for _, f := range r.Fluids {
				if f != g && f.Role != "flush" {
					b.meet(g, f, "pad")
				}
			}
		}
	}
}

func where(x, y *resolve.Fluid) string {
	for _, role := range []string{"previous", "flush", "test", "pad"} {
		if x.Role == role || y.Role == role {
			return role
		}
	}
	if isGas(x) != isGas(y) {
		return "pad"
	}
	return "flush"
}

func (b *builder) meet(x, y *resolve.Fluid, at string) {
	if at == "pad" && isGas(y) && !isGas(x) {
		x, y = y, x // the gas first, whichever way round the run names them
	}
	twin := y.Key + " and " + x.Key + " (" + at + ")"
	m := Meeting{ID: x.Key + " and " + y.Key + " (" + at + ")", A: x.Cat.Name, B: y.Cat.Name, Where: at}
	if slices.ContainsFunc(b.f.Meetings, func(o Meeting) bool { return o.ID == m.ID || o.ID == twin }) {
		return
	}
	var why string
	m.Hazardous, m.Product, why = b.reaction(x.Cat, y.Cat)
	if why != "" {
		b.unknown(m.ID, "meetings.hazardous", why, "the safety data sheets of both fluids")
	}
	if at == "pad" {
		b.padOver(&m, x, y)
	}
	b.f.Meetings = append(b.f.Meetings, m)
}

func (b *builder) padOver(m *Meeting, gas, liquid *resolve.Fluid) {
	m.AirPad = (gas.Props.ID == "air" || gas.Props.ID == "oxygen") && resolve.Yes(liquid.Cat.Hazards.Flammable)
	for _, bad := range liquid.Cat.ForbidPads {
		if bad.ID == gas.Cat.ID || bad.ID == "moist-gas" && (gas.Sheet == nil || gas.Sheet.Dryness.V != "dry" || !gas.Sheet.OilFree.V) {
			m.Forbidden, m.Why = true, bad.Why
		}
	}
	if m.AirPad {
		m.Forbidden = false // said by its own rule
	}
}

// reaction is what the two fluids do to each other by their reaction groups; or why that is not known.
func (b *builder) reaction(x, y *catalog.Fluid) (Bool, string, string) {
	if x.ID == y.ID {
		return Yes(false), "", ""
	}
	for _, f := range []*catalog.Fluid{x, y} {
		if f.Hazards.Groups == nil {
			return Bool{}, "", "the catalog holds no reaction groups of " + f.Name
		}
	}
	all, err := b.c.Reactions()
	if err != nil {
		b.err = err
		return Bool{}, "", ""
	}
	for _, r := range all {
		if r.Between(x.Hazards.Groups.Values, y.Hazards.Groups.Values) {
			return Yes(true), r.Product, ""
		}
	}
	return Yes(false), "", ""
}

func (b *builder) points() {
	b.f.Points = []Point{}
	for _, r := range b.l.Runs {
		if r.Target == nil || r.TargetEnd == nil || r.TargetEnd.Sheet == nil || gasOnly(r) {
			continue
		}
		target := b.point(r, r.Target, r.TargetEnd, "")
		target.Target = true
		b.f.Points = append(b.f.Points, target)
		for _, n := range b.l.Nearby {
			if n.End == r.TargetEnd {
				continue
			}
			p := b.point(r, n.Vessel, n.End, n.ID)
			if n.Sheet.Distance.Set {
				p.DistanceMM = Know(int64(float64(n.Sheet.Distance.V) * 1000))
			}
			p.Coupling = coupling(r.TargetEnd, n.End)
			b.f.Line.HazardInReach = b.f.Line.HazardInReach || !p.Hazardous.Known || p.Hazardous.V
			b.f.Points = append(b.f.Points, p)
		}
	}
}

func gasOnly(r *resolve.Run) bool {
	return !slices.ContainsFunc(r.Fluids, func(f *resolve.Fluid) bool { return !isGas(f) })
}
