package facts

import (
	"lineworthy/check/measure"
	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

// vacuum is what can pull a hose below the pressure of the air, and what it stands: steam that condenses in it leaves next
// to nothing behind, the suction side of a pump that lifts has the column hanging on it, and what was shut in warm cools.
func (b *builder) vacuum(p *resolve.Part, h *Hose) {
	need := b.pull(p)
	h.VacuumLikely, h.VacuumCause = need.likely(), need.cause
	if !h.VacuumLikely {
		return
	}
	h.VacuumNeedKPa = b.below(need, p.ID, "hoses.vacuum_need_kpa")
	have, ok := units.PressureDifference(0), false
	if p.Hose != nil && p.Sheet.Size.Set {
		if bar, known := sized(p.Hose.Vacuum, p.Sheet.Size.V); known {
			have, ok = units.PressureDifference(-bar*1e5), true
			b.rests(p.Hose.ID+" vacuum", "vacuum that "+p.Hose.Name+" stands", p.Hose.Vacuum.Origin, p.ID)
		}
	}
	if v := p.Sheet.Vacuum; v.Set {
		stands := units.PressureDifference(-v.V.Gauge(b.l.Ambient))
		if !ok || p.Sheet.Evidence.Set || stands < have {
			have, ok = stands, true
			b.rests(p.ID+" vacuum", "vacuum that "+p.ID+" stands, "+v.Text, stated(p.Sheet.Evidence.V), p.ID)
		}
	}
	if ok {
		h.VacuumHaveKPa = b.keep(units.RoundDown(float64(max(have, 0)) / 1e3))
	}
}

// below is a pull as a number, rounded up, or the reason why there is none.
func (b *builder) below(p pulling, subject, fact string) Int {
	if p.why != "" {
		b.unknown(subject, fact, p.why, p.ask)
		return Int{}
	}
	return b.keep(units.RoundUp(float64(p.by) / 1e3))
}

// fullVacuum is -1 bar(g), how makers and standards write a hose that stands any vacuum (practice).
const fullVacuum units.PressureDifference = 1e5

// most is as far as anything can be pulled below the air of the place.
func (b *builder) most() units.PressureDifference {
	return min(units.PressureDifference(b.l.Ambient), fullVacuum)
}

// pull is what pulls a hose furthest below the air.
func (b *builder) pull(p *resolve.Part) pulling {
	for _, f := range p.Run.Fluids {
		if isSteam(f) {
			return pulling{by: b.most(), cause: "steam that condenses in it"}
		}
	}
	return b.lift(p).or(b.cooledHose(p))
}

// lift is the column that hangs on the suction side of a pump.
func (b *builder) lift(p *resolve.Part) pulling {
	head := p.Run.Sheet.Source.Head
	if !head.Set || head.V >= 0 || !beforePump(p) {
		return pulling{}
	}
	rho := units.Density(0)
	for _, f := range liquids(p.Run) {
		d, _ := b.density(f)
		rho = max(rho, d)
	}
	return pulling{by: min(measure.StaticHead(rho, -head.V), fullVacuum), cause: "a pump that lifts the liquid"}
}

func beforePump(p *resolve.Part) bool {
	for _, q := range p.Run.Parts[p.Index:] {
		if q.Sheet.Kind.V == "pump" {
			return true
		}
	}
	return false
}
