package facts

import (
	"slices"

	"lineworthy/check/measure"
	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

// pulling is how far below the air something can be pulled and by what, or why that is not known. The zero value is none.
type pulling struct {
	by              units.PressureDifference
	cause, why, ask string
}

func (p pulling) likely() bool { return p.by > 0 || p.why != "" }

// or is the worse of two pulls. They are events of their own and never added; one that is not known counts as the worse.
func (p pulling) or(q pulling) pulling {
	switch {
	case p.why != "" || q.why == "" && p.by >= q.by:
		return p
	}
	return q
}

// cooledHose is what is left in a hose that was shut with something warm in it, when it has cooled to the coldest of the
// place. It counts as drained to gas and vapour: one that is full of liquid follows as the liquid shrinks.
func (b *builder) cooledHose(p *resolve.Part) (worst pulling) {
	for _, f := range p.Run.Fluids {
		if b.shutWarm(f) && canClose(p) {
			worst = worst.or(b.cooled(f, b.shutAt(p, f)))
		}
	}
	return worst
}

// shutAt is the pressure under which a hose is shut: a gas as it is used, a liquid that was drained at that of the air.
func (b *builder) shutAt(p *resolve.Part, f *resolve.Fluid) units.AbsolutePressure {
	if isGas(f) {
		if at, ok := steady(b.at(p.Run, p.Index)); ok {
			return max(at.Absolute(b.l.Ambient), b.l.Ambient)
		}
	}
	return b.l.Ambient
}

// shutWarm says whether the fluid is hotter than the place ever is, so that it cools for certain once it stands; or boils
// at its hottest, so that nothing but its vapour is shut in. A swing of the weather alone is left out (practice).
func (b *builder) shutWarm(f *resolve.Fluid) bool {
	if f.Hottest == nil || f.Cat.Form == "cryogenic-liquid" {
		return false
	}
	if top := b.l.Sheet.Site.Highest; !top.Set || *f.Hottest > top.V {
		return true
	}
	if boils := f.Props.Constants.BoilingPointK; isGas(f) || boils == nil || units.Temperature(boils.Value) > *f.Hottest {
		return false
	}
	return true
}

// cooled is the pull of a closed room that was shut at pressure p with the fluid at its hottest.
func (b *builder) cooled(f *resolve.Fluid, p units.AbsolutePressure) pulling {
	cold := b.l.Sheet.Site.Lowest
	if !cold.Set {
		return pulling{why: "how cold what was shut in warm can get is not stated", ask: "site.lowest"}
	}
	if cold.V >= *f.Hottest {
		return pulling{}
	}
	hot, ok := b.saturated(f, *f.Hottest)
	if !ok {
		return pulling{why: "the vapour pressure of " + f.Cat.Name + " is not known, hot and cold", ask: "vapour_pressure of " + f.Key + ", from its safety data sheet"}
	}
	low, _ := b.saturated(f, cold.V)
	left := measure.Cooled(p, hot, low, *f.Hottest, cold.V)
	return pulling{by: b.under(left), cause: f.Cat.Name + ", shut in warm, that cools"}
}

// under is how far a pressure lies below the air.
func (b *builder) under(p units.AbsolutePressure) units.PressureDifference {
	return min(max(units.PressureDifference(b.l.Ambient-p), 0), b.most())
}

// saturated is the vapour pressure of the fluid at t, none for a gas, none below its curve, and none for a liquid well
// below its boiling point.
func (b *builder) saturated(f *resolve.Fluid, t units.Temperature) (units.AbsolutePressure, bool) {
	e := f.Props.VapourP
	switch {
	case isGas(f):
		return 0, true
	case e != nil && t < units.Temperature(e.FromK):
		return 0, true
	case e != nil:
		p, err := measure.VapourPressure(equation(e), t)
		return p, err == nil
	case f.Sheet != nil && f.Sheet.Vapour.Set:
		if t < *f.Hottest {
			return 0, true
		}
		return f.Sheet.Vapour.V.Absolute(b.l.Ambient), true
	}
	boils := f.Props.Constants.BoilingPointK
	return 0, boils != nil && t.Plus(coolerBy) < units.Temperature(boils.Value)
}

// canClose says whether the hose can be shut at both ends: by a device in the run, by what shuts a cylinder or a supply, or
// by a vessel that is not open to the air.
func canClose(p *resolve.Part) bool {
	shuts := func(q *resolve.Part) bool { return slices.Contains(trapping, q.Sheet.Kind.V) }
	r := p.Run
	before := r.Source == nil || r.Source.Sheet.Vent.V != "open" || slices.ContainsFunc(r.Parts[:p.Index], shuts)
	after := r.Target == nil || r.Target.Sheet.Vent.V != "open" || slices.ContainsFunc(r.Parts[p.Index+1:], shuts)
	return before && after
}
