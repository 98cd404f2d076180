package facts

import (
	"fmt"

	"lineworthy/check/measure"
	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

// heated is the pressure of a closed vessel that is shut with its pad and warms up; none for one that is open to the air,
// holds no liquid of a run, or does not get warmer. A relief device on it lets it rise no further than 10 % over set.
func (b *builder) heated(v *resolve.Vessel, pads []push) (push, bool) {
	r := b.runFrom(v)
	if r == nil || v.Sheet.Vent.V == "open" {
		return push{}, false
	}
	p := push{name: "heated-vessel", ask: "vessels." + v.Key + ".filled, and the temperatures of the liquid"}
	f := product(r)
	if f == nil || f.Props.VapourP == nil || f.Props.Density == nil || f.Props.Density.Equation == "point" {
		return p, false // the vapour pressure has said what is known
	}
	top := b.warmest(r, v.Sheet.Insulated.V)
	if f.Lowest == nil || top == nil || f.Hottest == nil || !v.Sheet.Filled.Set && (len(pads) > 0 || f.Cat.Form != "liquefied-gas") {
		p.why = "how full " + v.Key + " is, or how cold and hot it can get, is not stated"
		return p, true
	}
	if *top <= *f.Lowest || f.Cat.Form == "liquefied-gas" && len(pads) == 0 && *top <= *f.Hottest {
		return p, false // the vapour pressure at the hottest says it all
	}
	p.cause = fmt.Sprintf("%s shut in with its pad and warmed from %.0f to %.0f °C", v.Key, f.Lowest.Celsius(), top.Celsius())
	return b.warmed(v, f, p, pads, *top), true
}

func (b *builder) warmed(v *resolve.Vessel, f *resolve.Fluid, p push, pads []push, top units.Temperature) push {
	pad, ok := steady(pads)
	if len(pads) > 0 && !ok {
		p.why, p.ask = "the pressure of the pad is not known", "the set pressure of its regulator"
		return p
	}
	fill := v.Sheet.Filled.V
	if !v.Sheet.Filled.Set {
		fill = halfFull // of a liquefied gas without a pad the fill does not matter
	}
	got, err := measure.HeatedVessel(measure.PaddedVessel{
		Vapour: equation(f.Props.VapourP), Density: equation(f.Props.Density), MolarMass: molar(f.Props),
		Fill: fill, Pad: pad.Absolute(b.l.Ambient), Shut: *f.Lowest, ShellExpansion: shellExpansion,
	}, top)
	p.p, p.known = got.Pressure.Gauge(b.l.Ambient), err == nil
	if err != nil {
		p.why = "warmed to " + fmt.Sprintf("%.0f °C, ", top.Celsius()) + v.Key + " is nearly full: " + err.Error()
		p.ask = "a lower fill, or a relief device on the vessel"
	}
	if s := v.Sheet.Relief; s != nil && s.Set.Set {
		full := units.GaugePressure(float64(s.Set.V.Gauge(b.l.Ambient)) * overpressure)
		if !p.known || p.p > full {
			p.p, p.known, p.cause = full, true, p.cause+"; its relief device opens"
		}
	}
	return p
}

const halfFull = units.Fraction(0.5)

// shellExpansion is the cubic expansion of an austenitic shell, 3 x 1.6e-5 1/K (computed); a stiffer shell gives less room,
// which weighs little against a liquid's 1e-3.
const shellExpansion = 4.8e-5

// runFrom is the liquid run that starts at the vessel.
func (b *builder) runFrom(v *resolve.Vessel) *resolve.Run {
	for _, r := range b.l.Runs {
		if r.Source == v && !gasOnly(r) {
			return r
		}
	}
	return nil
}

// product is the liquid a run is for.
func product(r *resolve.Run) *resolve.Fluid {
	for _, f := range liquids(r) {
		if f.Role == "product" {
			return f
		}
	}
	return nil
}
