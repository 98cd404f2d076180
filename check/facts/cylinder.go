package facts

import (
	"lineworthy/check/measure"
	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

// fillTemperature is what a cylinder's stated pressure is settled at: 15 °C, the reference of ISO 10286 (recalled).
const fillTemperature = units.Temperature(288.15)

// cylinder is the cylinder's pressure on the hottest day.
func (b *builder) cylinder(r *resolve.Run) push {
	top := b.hottest(r)
	if top == nil {
		return missing("duty", "how hot the cylinder can get is not stated", "site.highest")
	}
	for _, f := range r.Fluids {
		if f.Cat.Form == "liquefied-gas" {
			return b.vapour(f)
		}
	}
	p := r.Sheet.Source.Cylinder.V.Absolute(b.l.Ambient)
	at, how, known := fullCylinder(r, p, max(*top, fillTemperature))
	if !known {
		return missing("duty", "the pressure of a full cylinder of this gas at the hottest is not known", "the supplier's figure, as source.supply of the run")
	}
	return push{name: "duty", p: at.Gauge(b.l.Ambient), known: true, cause: how}
}

// Gases that condense more easily than nitrogen rise faster than it does when a full cylinder warms. Up to methane's
// critical temperature, 190.6 K, twice the ideal rise covers them: methane of 200 bar and 15 °C gains about 1.8 times
// the ideal rise by 50 °C (computed from its density along the isochore, checked by hand).
const (
	airCriticalK  = 132.6 // air and what condenses less easily goes by nitrogen
	permanentK    = 200.0
	riseOverIdeal = 2
)

// fullCylinder is the pressure of the cylinder at hot: nitrogen by its equation, which bounds gases that condense less
// easily, others by twice the ideal rise. It is not known for a gas with a critical temperature near or above ambient.
func fullCylinder(r *resolve.Run, p units.AbsolutePressure, hot units.Temperature) (units.AbsolutePressure, string, bool) {
	critical := 0.0
	for _, f := range r.Fluids {
		k := f.Props.Constants.CriticalTemperatureK
		if k == nil {
			return 0, "", false
		}
		critical = max(critical, k.Value)
	}
	if critical <= airCriticalK {
		at, err := measure.HotNitrogen(p, fillTemperature, hot)
		return at, "a full cylinder at the hottest", err == nil
	}
	rise := measure.HotIdealGas(p, fillTemperature, hot) - p
	return p + riseOverIdeal*rise, "a full cylinder at the hottest, at twice the rise of an ideal gas", critical < permanentK
}

// onlyNitrogen says whether the nitrogen equation serves as it is: nitrogen, and air which is mostly that.
func onlyNitrogen(r *resolve.Run) bool {
	for _, f := range r.Fluids {
		if f.Props.ID != "nitrogen" && f.Props.ID != "air" {
			return false
		}
	}
	return true
}
