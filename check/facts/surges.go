package facts

import (
	"fmt"

	"lineworthy/check/measure"
	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

// closing are the kinds of part that can stop a flow quickly.
var closing = map[string]bool{"valve": true, "check-valve": true, "excess-flow": true, "breakaway": true, "coupling": true, "nozzle": true}

// fastestWave is above the speed of sound of any common liquid (glycerol 1920 m/s at 20 °C, handbook value, recalled). It
// stands in where the catalog holds no compressibility.
const fastestWave units.Velocity = 2000

// stroke is the share of a valve's closing time in which it does most of its work (practice).
const stroke = 0.25

func (b *builder) surges() {
	b.f.Surges = []Surge{}
	for _, r := range b.l.Runs {
		if gasOnly(r) {
			continue
		}
		for i, p := range r.Parts {
			if closing[p.Sheet.Kind.V] {
				b.f.Surges = append(b.f.Surges, b.surge(r, i))
			}
		}
	}
}

func (b *builder) surge(r *resolve.Run, i int) Surge {
	p := r.Parts[i]
	s := Surge{ID: p.ID, Run: r.Key, ClosingStated: p.Sheet.Closing.Set}
	if low, ok := b.weakest(r.Parts[:i+1]); ok {
		s.WeakestKPa, s.Weakest = b.kpaDown(low.have), low.id
	}
	start, ok := steady(b.at(r, i))
	if !ok {
		return s
	}
	s.SteadyKPa = b.kpaUp(start)
	rise, why, ask := b.rise(r, i)
	if why != "" {
		b.unknown(p.ID, "surges.peak_kpa", why, ask)
		return s
	}
	s.PeakKPa = b.kpaUp(start.Plus(rise))
	return s
}

// rise is the surge of the worst liquid when device i closes, with the whole column before it stopped.
func (b *builder) rise(r *resolve.Run, i int) (top units.PressureDifference, why, ask string) {
	if !r.Sheet.Flow.Set {
		return 0, "the flow of the run is not stated", "runs." + r.Key + ".flow"
	}
	small, length := units.Length(0), units.Length(0)
	for _, p := range r.Parts[:i+1] {
		if p.Branch {
			continue
		}
		d, ok := bore(p)
		if !ok {
			return 0, "the size of " + p.ID + " is not stated", "size of " + p.ID
		}
		if small == 0 || d < small {
			small = d
		}
		if k := p.Sheet.Kind.V; k == "hose" || k == "pipe" {
			if !p.Sheet.Length.Set {
				return 0, "the length of " + p.ID + " is not stated", "length of " + p.ID
			}
			length += p.Sheet.Length.V
		}
	}
	v := measure.BoreVelocity(small, r.Sheet.Flow.V)
	for _, f := range liquids(r) {
		rho, fault := b.density(f)
		if fault != "" {
			return 0, fault, "a published density of " + f.Cat.Name
		}
		dp := measure.Surge(rho, b.wave(f, rho), v, length, units.Time(float64(r.Parts[i].Sheet.Closing.V)*stroke))
		top = max(top, dp)
	}
	return top, "", ""
}

// wave is the speed of a pressure wave in the liquid at its coldest, where it is fastest, in a hose that does not give.
func (b *builder) wave(f *resolve.Fluid, rho units.Density) units.Velocity {
	if f.Props.Compress == nil || f.Lowest == nil {
		return fastestWave
	}
	kappa, err := measure.Compressibility(equation(f.Props.Compress), *f.Lowest)
	if err != nil {
		return fastestWave
	}
	return measure.WaveSpeed(rho, kappa, measure.Container{})
}

func (b *builder) gauges() {
	b.f.Gauges = []Gauge{}
	for _, r := range b.l.Runs {
		for i, p := range r.Parts {
			if p.Sheet.Kind.V != "gauge" {
				continue
			}
			g := Gauge{ID: p.ID, FullKPa: b.gauge(p.Sheet.Range)}
			if duty, ok := named(b.at(r, i), "duty"); ok {
				g.DutyKPa = b.kpaUp(duty)
				if g.FullKPa.Known && g.FullKPa.V > 0 {
					g.SharePermille = Know(g.DutyKPa.V * 1000 / g.FullKPa.V)
				}
			} else {
				b.unknown(p.ID, "gauges.duty_kpa", fmt.Sprintf("the pressure at %s is not known", p.ID), "the source of the run")
			}
			b.f.Gauges = append(b.f.Gauges, g)
		}
	}
}

// named is the highest known push of that name.
func named(pushes []push, name string) (units.GaugePressure, bool) {
	var top units.GaugePressure
	found := false
	for _, p := range pushes {
		if p.name == name && p.known {
			top, found = max(top, p.p), true
		}
	}
	return top, found
}
