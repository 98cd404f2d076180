package facts

import (
	"fmt"
	"slices"

	"lineworthy/check/measure"
	"lineworthy/check/resolve"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

// device is a relief device with what sizes it; no part and no vessel for none.
type device struct {
	part   *resolve.Part
	vessel *resolve.Vessel
}

func (d device) none() bool { return d == device{} }

func (d device) id() string {
	if d.part != nil {
		return d.part.ID
	}
	return "the relief device of " + d.vessel.Key
}

// sizes are set pressure, area, coefficient, and the document that states the three.
func (d device) sizes() (set sheet.Of[units.Pressure], area sheet.Of[units.Area], kdr sheet.Of[float64], paper string) {
	if d.part != nil {
		s := d.part.Sheet
		return s.Set, s.Area, s.Kdr, s.Evidence.V
	}
	s := d.vessel.Sheet
	return s.Relief.Set, s.Relief.Area, s.Relief.Kdr, s.Evidence.V
}

// closable are the kinds of part that can part the line in two. What lies behind one is not relieved through it.
var closable = []string{"valve", "check-valve", "excess-flow", "breakaway", "coupling", "regulator", "pump", "nozzle"}

// open says whether nothing between parts i and j of a run (both left out) can close.
func open(r *resolve.Run, i, j int) bool {
	if i > j {
		i, j = j, i
	}
	for k := i + 1; k < j; k++ {
		if slices.Contains(closable, r.Parts[k].Sheet.Kind.V) {
			return false
		}
	}
	return true
}

// device is the relief device that limits the failure of the regulator at index reg for the part at index i. It must be
// in open contact with the regulator, and with any part that lies before it; what lies behind it gets no more than it
// leaves. The destination counts as index len(parts).
func (b *builder) device(r *resolve.Run, reg, i int) device {
	for j := reg + 1; j < len(r.Parts); j++ {
		p := r.Parts[j]
		if p.Sheet.Kind.V == "relief" && open(r, reg, j) && (i >= j || open(r, i, j)) {
			return device{part: p}
		}
	}
	n := len(r.Parts)
	if v := r.Target; v != nil && v.Sheet.Relief != nil && open(r, reg, n) && open(r, i, n) {
		return device{vessel: v}
	}
	return device{}
}

// relieved replaces the failed-open pushes at part i by what a relief device leaves of them.
func (b *builder) relieved(r *resolve.Run, i int, pushes []push) []push {
	return b.capped(r, pushes, func(reg int) device { return b.device(r, reg, i) })
}

// vesselRelieved is the same inside the destination, where its own relief device always counts.
func (b *builder) vesselRelieved(v *resolve.Vessel, pass *passage) []push {
	return b.capped(pass.run, pass.end, func(reg int) device {
		if v.Sheet.Relief != nil {
			return device{vessel: v}
		}
		return b.device(pass.run, reg, len(pass.run.Parts))
	})
}

func (b *builder) capped(r *resolve.Run, pushes []push, of func(reg int) device) []push {
	out := append(b.pushRoom(len(pushes)), pushes...)
	for k := range out {
		if out[k].name != "regulator-failed-open" || !out[k].known {
			continue
		}
		reg := slices.IndexFunc(r.Parts, func(p *resolve.Part) bool { return p.ID == out[k].from })
		if reg < 0 {
			continue
		}
		if d := of(reg); !d.none() {
			out[k] = b.balanced(r.Parts[reg], out[k], d)
		}
	}
	return out
}

// Set pressure plus 10 % is where a relief device passes its rated flow (ASME BPVC Section VIII-1 UG-125(c); published in
// the 1992 edition). Choked flow through the regulator at xT 0.75 and the real-gas factor err to the high side.
const (
	overpressure = 1.10
	sourceXT     = 0.75
)

// balance is what a relief device leaves of one failure.
type balance struct {
	reg      *resolve.Part
	from, to push
	d        device
}

// balanced keeps the balance of a device with a regulator: every part between the two asks for it.
func (b *builder) balanced(reg *resolve.Part, p push, d device) push {
	for i := range b.balances {
		if x := &b.balances[i]; x.reg == reg && x.d == d && x.from == p {
			return x.to
		}
	}
	to := b.balance(reg, p, d)
	b.balances = append(b.balances, balance{reg, p, to, d})
	return to
}

// balance is the pressure at which the relief device passes what the open regulator lets through.
func (b *builder) balance(reg *resolve.Part, p push, d device) push {
	id := d.id()
	set, area, kdr, paper := d.sizes()
	if !reg.Sheet.Flow.Set || !set.Set || !area.Set || !kdr.Set || !gasOnly(reg.Run) {
		p.known = false
		p.why = fmt.Sprintf("whether %s passes what %s lets through stuck open is not known", id, reg.ID)
		p.ask = fmt.Sprintf("flow_coefficient of %s, set, area and kdr of %s", reg.ID, id)
		if !gasOnly(reg.Run) {
			p.ask = "a calculation for liquid: set, area and coefficient are counted for gas only"
		}
		return p
	}
	gas := b.gas(reg)
	up := p.p.Absolute(b.l.Ambient)
	w := measure.RealGasSource * measure.ValveGasFlow(reg.Sheet.Flow.V, up, b.l.Ambient, sourceXT, gas)
	full := units.GaugePressure(float64(set.V.Gauge(b.l.Ambient)) * overpressure)
	at := max(full, measure.ReliefEquilibrium(area.V, kdr.V, w, gas).Gauge(b.l.Ambient))
	if choked := b.l.Ambient / units.AbsolutePressure(measure.CriticalPressureRatio(gas.K)); at.Absolute(b.l.Ambient) < choked {
		at = b.subcritical(area.V, kdr.V, w, full, choked, gas)
	}
	if at < p.p {
		p.p = at
		b.rests(id+" capacity", "set, area and kdr of "+id, stated(paper), id)
		b.rests(reg.ID+" flow", "flow coefficient of "+reg.ID+", "+reg.Sheet.Flow.Text, stated(reg.Sheet.Evidence.V), reg.ID)
	}
	p.cause = fmt.Sprintf("%s; %s lets off %.0f kg/h", p.cause, id, w)
	return p
}

// subcritical is the balance where the device blows off too weakly for the critical-flow equation, which promises too much
// there: between the ambient and the lowest critical pressure, by the subcritical form of API 520-1 (restated).
func (b *builder) subcritical(area units.Area, kdr, w float64, full units.GaugePressure, choked units.AbsolutePressure, g measure.Gas) units.GaugePressure {
	f := measure.ReliefFactors{Kd: kdr, Kb: 1, Kw: 1, Kc: 1, Kv: 1}
	low, high := b.l.Ambient, choked
	for range 50 {
		mid := (low + high) / 2
		if measure.ReliefAreaSubcritical(w, f, mid, b.l.Ambient, g) <= area {
			high = mid
		} else {
			low = mid
		}
	}
	return max(full, high.Gauge(b.l.Ambient))
}

// gas are the flow properties of the run's gas: ratio of specific heats 1.4, the value of the two-atom gases and high for
// the rest (it weighs on both sides of the balance alike), at the fill temperature.
func (b *builder) gas(p *resolve.Part) measure.Gas {
	g := measure.Gas{MolarMass: 28.0134, K: 1.4, Z: 1, T: fillTemperature}
	for _, f := range p.Run.Fluids {
		if m := f.Props.Constants.MolarMassGMol; m != nil {
			g.MolarMass = m.Value
		}
	}
	return g
}
