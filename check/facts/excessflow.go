package facts

import (
	"slices"

	"lineworthy/check/measure"
	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

// excessFlows are the valves that close on too much flow; one that the sheet says acts on separation alone is none.
func (b *builder) excessFlows() {
	b.f.ExcessFlow = []Excess{}
	for _, r := range b.l.Runs {
		for i, p := range r.Parts {
			if s := p.Sheet; s.Kind.V == "excess-flow" && (!s.ActsOn.Set || s.ActsOn.V == "flow") {
				b.f.ExcessFlow = append(b.f.ExcessFlow, b.excess(r, i))
			}
		}
	}
}

func (b *builder) excess(r *resolve.Run, i int) Excess {
	s := r.Parts[i].Sheet
	x := Excess{ID: s.ID.V, Run: r.Key, BypassSaid: s.Bypass.Set}
	x.Credited = slices.ContainsFunc(r.Fluids, func(f *resolve.Fluid) bool { return hazardous(f) || opensBadly(f) })
	if s.ClosesAt.Set {
		x.CloseMLPS = b.keep(units.RoundUp(float64(s.ClosesAt.V) * 1e6))
	}
	if r.Sheet.Flow.Set {
		x.DutyMLPS = b.keep(units.RoundUp(float64(r.Sheet.Flow.V) * 1e6))
	}
	if s.Bypass.Set {
		x.BypassUM = b.keep(units.RoundUp(float64(s.Bypass.V) * 1e6))
	}
	x.BrokenMLPS = b.broken(r, i)
	return x
}

// broken is the flow when the last hose behind the valve parts at its far end: as stated, else worked out for a liquid that
// stays one at the pressure of the air. A liquid that boils passes less than the sum says, and a gas is not counted.
func (b *builder) broken(r *resolve.Run, i int) Int {
	s := r.Parts[i].Sheet
	if s.Broken.Set {
		b.rests(s.ID.V+" broken flow", "flow of the broken line at "+s.ID.V+", "+s.Broken.Text, stated(s.Evidence.V), s.ID.V)
		return b.keep(units.RoundDown(float64(s.Broken.V) * 1e6))
	}
	q, why := b.brokenFlow(r, i)
	if why != "" {
		b.unknown(s.ID.V, "excess_flows.broken_flow_mlps", why, "broken_flow of "+s.ID.V+", by calculation or test, with evidence")
		return Int{}
	}
	return b.keep(units.RoundDown(float64(q) * 1e6))
}

func (b *builder) brokenFlow(r *resolve.Run, i int) (units.VolumeFlow, string) {
	parts := r.Parts[:lastHose(r, i)+1]
	x := product(r)
	switch {
	case x == nil || len(liquids(r)) != len(r.Fluids):
		return 0, "the flow of a broken line is worked out only where nothing but liquid runs"
	case x.Props.Viscosity == nil || x.Props.VapourP == nil || x.Lowest == nil || x.Hottest == nil:
		return 0, "viscosity, vapour pressure or temperature of the liquid is not known"
	case slices.ContainsFunc(parts, func(p *resolve.Part) bool { return p.Sheet.Kind.V == "pump" }):
		return 0, "what the pump delivers into a broken line is not known"
	}
	if pv, err := measure.VapourPressure(equation(x.Props.VapourP), *x.Hottest); err != nil || pv >= b.l.Ambient {
		return 0, "the liquid boils at the pressure of the air"
	}
	mu, err := measure.LiquidViscosity(equation(x.Props.Viscosity), *x.Lowest)
	rho, why := b.density(x)
	drive, known := named(b.passage(r).first(), "duty")
	if err != nil || why != "" || !known || drive <= 0 {
		return 0, "density, viscosity or the pressure at duty is not known"
	}
	return solve(parts, measure.Flowing{Density: rho, Viscosity: mu}, units.PressureDifference(drive))
}

// lastHose is the place of the last hose behind part i, or of i itself.
func lastHose(r *resolve.Run, i int) int {
	last := i
	for j, p := range r.Parts {
		if j > i && p.Sheet.Kind.V == "hose" {
			last = j
		}
	}
	return last
}

// solve finds the flow that spends the whole pressure over the parts, by a fixed count of halvings. The lower end is given.
func solve(parts []*resolve.Part, f measure.Flowing, drive units.PressureDifference) (units.VolumeFlow, string) {
	low, high := units.VolumeFlow(0), units.VolumeFlow(1)
	for range 60 {
		mid := (low + high) / 2
		drop := units.PressureDifference(0)
		for _, p := range parts {
			d, ok := bore(p)
			if !ok {
				return 0, "the size of " + p.ID + " is not stated"
			}
			drop += measure.PipeDrop(pipe(p, d), f, measure.BoreVelocity(d, mid))
		}
		if drop > drive {
			high = mid
		} else {
			low = mid
		}
	}
	return low, ""
}
