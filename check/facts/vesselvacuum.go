package facts

import (
	"lineworthy/catalog"
	"lineworthy/check/measure"
	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

// vesselVacuum is what can pull a closed vessel below the pressure of the air, and what it stands.
func (b *builder) vesselVacuum(v *resolve.Vessel, out *Vessel) {
	if !out.Closed {
		return
	}
	need := b.vesselPull(v)
	out.VacuumLikely, out.VacuumCause = need.likely(), need.cause
	if !out.VacuumLikely {
		return
	}
	if s := v.Sheet.Relief; s != nil && s.Vacuum.Set && need.why == "" {
		need.by = min(need.by, max(units.PressureDifference(-s.Vacuum.V.Gauge(b.l.Ambient)), 0))
	}
	out.VacuumNeedKPa = b.below(need, v.Key, "vessels.vacuum_need_kpa")
	if stands := v.Sheet.Vacuum; stands.Set {
		b.rests(v.Key+" vacuum", "vacuum that "+v.Key+" stands, "+stands.Text, stated(v.Sheet.Evidence.V), v.Key)
		out.VacuumHaveKPa = b.keep(units.RoundDown(float64(max(-stands.V.Gauge(b.l.Ambient), 0)) / 1e3))
	} else if wall := b.byWall(v); need.why == "" && wall >= need.by {
		b.rests(v.Key+" wall", "vacuum that the wall of "+v.Key+" stands, by its rating of "+v.Sheet.Rated.Text, catalog.Origin{Standing: catalog.Computed}, v.Key)
		out.VacuumHaveKPa = b.keep(units.RoundDown(float64(wall) / 1e3))
	}
}

// byWall is the vacuum that a metal shell stands by the wall its rating asks for. It counts only where it is enough: what
// a thinner shell stands is for its maker to say.
func (b *builder) byWall(v *resolve.Vessel) units.PressureDifference {
	if v.Material == nil || v.Material.Family != "metal" || !v.Sheet.Rated.Set {
		return 0
	}
	return min(measure.Collapse(v.Sheet.Rated.V.Gauge(b.l.Ambient)), b.most())
}

// vesselPull is the worst pull of any run that meets the vessel. A flush does not come out of the vessel it starts at.
func (b *builder) vesselPull(v *resolve.Vessel) (worst pulling) {
	for _, r := range b.l.Runs {
		if r.Source != v && r.Target != v {
			continue
		}
		for _, f := range r.Fluids {
			switch {
			case isSteam(f):
				return pulling{by: b.most(), cause: "steam that condenses in it"}
			case b.shutWarm(f) && (r.Target == v || f.Role != "flush" && f.Role != "test"):
				worst = worst.or(b.cooledVessel(v, r, f))
			}
		}
	}
	return worst
}

// cooledVessel starts from the pad, or from the air where no gas is pushed in. Liquid that shrinks leaves the gas more
// room: without a pad, and with no word on how full the vessel is, only the vapour counts.
func (b *builder) cooledVessel(v *resolve.Vessel, r *resolve.Run, f *resolve.Fluid) pulling {
	start := b.l.Ambient
	if pad, ok := steady(b.padPushes(v)); ok {
		start = max(start, pad.Absolute(b.l.Ambient))
	}
	out := b.cooled(f, start)
	if out.why != "" || out.cause == "" || isGas(f) {
		return out
	}
	cold := b.l.Sheet.Site.Lowest.V
	if left, ok := b.shrunk(v, r, f, start, cold); ok {
		out.by = b.under(left)
	} else if start == b.l.Ambient {
		low, _ := b.saturated(f, cold)
		out.by = b.under(low)
	}
	return out
}

// shrunk is the pressure left when the liquid has shrunk too, where its density, its vapour and the fill are known.
func (b *builder) shrunk(v *resolve.Vessel, r *resolve.Run, f *resolve.Fluid, start units.AbsolutePressure, cold units.Temperature) (units.AbsolutePressure, bool) {
	e, fill := f.Props.Density, v.Sheet.Filled
	if !fill.Set || f.Props.VapourP == nil || e == nil || e.Equation == "point" {
		return 0, false
	}
	if r.Target == v {
		q, volume := r.Sheet.Quantity, v.Sheet.Volume
		if !q.Set || !volume.Set || volume.V <= 0 {
			return 0, false
		}
		fill.V += units.Fraction(q.V / volume.V)
	}
	least := max(cold, units.Temperature(max(e.FromK, f.Props.VapourP.FromK))) // the curves end where the liquid freezes
	state, err := measure.HeatedVessel(measure.PaddedVessel{
		Vapour: equation(f.Props.VapourP), Density: equation(e), MolarMass: molar(f.Props),
		Fill: fill.V, Pad: start, Shut: *f.Hottest, ShellExpansion: shellExpansion,
	}, least)
	vapour, _ := b.saturated(f, least)
	low, _ := b.saturated(f, cold)
	return measure.Cooled(state.Pressure, vapour, low, least, cold), err == nil
}
