package facts

import (
	"fmt"
	"slices"

	"lineworthy/check/measure"
	"lineworthy/check/resolve"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

// device is a relief device with what sizes it.
type device struct {
	id    string
	set   sheet.Of[units.Pressure]
	area  sheet.Of[units.Area]
	kdr   sheet.Of[float64]
	paper string // document that states the three
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
func (b *builder) device(r *resolve.Run, reg, i int) *device {
	for j := reg + 1; j < len(r.Parts); j++ {
		p := r.Parts[j]
		if p.Sheet.Kind.V == "relief" && open(r, reg, j) && (i >= j || open(r, i, j)) {
			return &device{p.ID, p.Sheet.Set, p.Sheet.Area, p.Sheet.Kdr, p.Sheet.Evidence.V}
		}
	}
	n := len(r.Parts)
	if v := r.Target; v != nil && v.Sheet.Relief != nil && open(r, reg, n) && open(r, i, n) {
		return vesselDevice(v)
	}
	return nil
}

func vesselDevice(v *resolve.Vessel) *device {
	s := v.Sheet.Relief
	return &device{"the relief device of " + v.Key, s.Set, s.Area, s.Kdr, v.Sheet.Evidence.V}
}

// relieved replaces the failed-open pushes at part i by what a relief device leaves of them.
func (b *builder) relieved(r *resolve.Run, i int, pushes []push) []push {
	return b.capped(r, pushes, func(reg int) *device { return b.device(r, reg, i) })
}

// vesselRelieved is the same inside the destination, where its own relief device always counts.
func (b *builder) vesselRelieved(v *resolve.Vessel, pass *passage) []push {
	return b.capped(pass.run, pass.end, func(reg int) *device {
		if v.Sheet.Relief != nil {
			return vesselDevice(v)
		}
		return b.device(pass.run, reg, len(pass.run.Parts))
	})
}

func (b *builder) capped(r *resolve.Run, pushes []push, of func(reg int) *device) []push {
	out := slices.Clone(pushes)
	for k := range out {
		if out[k].name != "regulator-failed-open" || !out[k].known {
			continue
		}
		reg := slices.IndexFunc(r.Parts, func(p *resolve.Part) bool { return p.ID == out[k].from })
		if reg < 0 {
			continue
		}
		if d := of(reg); d != nil {
			out[k] = b.balance(r.Parts[reg], out[k], d)
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

// balance is the pressure at which the relief device passes what the open regulator lets through.
func (b *builder) balance(reg *resolve.Part, p push, d *device) push {
	if !reg.Sheet.Flow.Set || !d.set.Set || !d.area.Set || !d.kdr.Set || !gasOnly(reg.Run) {
		p.known = false
		p.why = fmt.Sprintf("whether %s passes what %s lets through stuck open is not known", d.id, reg.ID)
		p.ask = fmt.Sprintf("flow_coefficient of %s, set, area and kdr of %s", reg.ID, d.id)
		if !gasOnly(reg.Run) {
			p.ask = "a calculation for liquid: set, area and coefficient are counted for gas only"
		}
		return p
	}
	gas := b.gas(reg)
	up := p.p.Absolute(b.l.Ambient)
	w := measure.RealGasSource * measure.ValveGasFlow(reg.Sheet.Flow.V, up, b.l.Ambient, sourceXT, gas)
	full := units.GaugePressure(float64(d.set.V.Gauge(b.l.Ambient)) * overpressure)
	at := max(full, measure.ReliefEquilibrium(d.area.V, d.kdr.V, w, gas).Gauge(b.l.Ambient))
	if choked := b.l.Ambient / units.AbsolutePressure(measure.CriticalPressureRatio(gas.K)); at.Absolute(b.l.Ambient) < choked {
		at = b.subcritical(d, w, full, choked, gas)
	}
	if at < p.p {
		p.p = at
		b.rests(d.id+" capacity", fmt.Sprintf("set, area and kdr of %s", d.id), stated(d.paper), d.id)
		b.rests(reg.ID+" flow", "flow coefficient of "+reg.ID+", "+reg.Sheet.Flow.Text, stated(reg.Sheet.Evidence.V), reg.ID)
	}
	p.cause = fmt.Sprintf("%s; %s lets off %.0f kg/h", p.cause, d.id, w)
	return p
}

// subcritical is the balance where the device blows off too weakly for the critical-flow equation, which promises too much
// there: between the ambient and the lowest critical pressure, by the subcritical form of API 520-1 (restated).
func (b *builder) subcritical(d *device, w float64, full units.GaugePressure, choked units.AbsolutePressure, g measure.Gas) units.GaugePressure {
	f := measure.ReliefFactors{Kd: d.kdr.V, Kb: 1, Kw: 1, Kc: 1, Kv: 1}
	low, high := b.l.Ambient, choked
	for range 50 {
		mid := (low + high) / 2
		if measure.ReliefAreaSubcritical(w, f, mid, b.l.Ambient, g) <= d.area.V {
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
