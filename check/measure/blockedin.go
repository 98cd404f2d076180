package measure

import (
	"lineworthy/check/units"
)

// RisePerKelvin is dp/dT = (a_l - a_c)/(kappa + beta_c) of a liquid-full closed section, in Pa/K. expansion is cubic in
// 1/K, compressibility in 1/Pa.
func RisePerKelvin(expansion, compressibility float64, c Container) float64 {
	return (expansion - c.Expansion) / (compressibility + c.Compliance)
}

// Leak is what gets out of a closed section while it warms. No one may count on it; the equation has it.
type Leak struct {
	Rate   units.VolumeFlow
	For    units.Time
	Volume units.Volume // of the section
}

// BlockedInAPI is the pressure of API 521 (ISO 23251) 5.14.4 equation (3) (published, 5th ed. 2007) for constant
// properties; a Leak of zero volume is none.
func BlockedInAPI(p1 units.GaugePressure, rise units.TemperatureDifference, expansion, compressibility float64, c Container, l Leak) units.GaugePressure {
	grown := float64(rise) * (expansion - c.Expansion)
	if l.Volume > 0 {
		grown -= float64(l.Rate) * float64(l.For) / float64(l.Volume)
	}
	return p1 + units.GaugePressure(grown/(compressibility+c.Compliance))
}

// BlockedIn is the pressure of a section shut liquid-full at p0 and t0 when it is at t1, with the expansion and
// compressibility of the liquid as it was shut. That is within 4 % of exact for all but water, whose expansion rises
// steeply from 4 °C (computed): water is worked out by its own equation. Cooling leaves p0. Temperatures outside the
// property equations are an OutsideError.
func BlockedIn(l Liquid, c Container, p0 units.AbsolutePressure, t0, t1 units.Temperature) (units.AbsolutePressure, error) {
	if l.Density.Name == "kell" {
		return BlockedInWater(c, p0, t0, t1)
	}
	a, err := l.Expansion(t0)
	if err != nil {
		return 0, err
	}
	if _, err := LiquidDensity(l.Density, l.MolarMass, t1); err != nil {
		return 0, err
	}
	kappa, err := Compressibility(l.Compressibility, t0)
	if err != nil {
		return 0, err
	}
	rise := RisePerKelvin(a, kappa, c) * float64(t1-t0)
	return p0 + units.AbsolutePressure(max(rise, 0)), nil
}

// BlockedInWater is BlockedIn for water by IAPWS-IF97: the pressure at which its volume at t1 fits the section, at least
// p0. One beyond 100 MPa is an OutsideError.
func BlockedInWater(c Container, p0 units.AbsolutePressure, t0, t1 units.Temperature) (units.AbsolutePressure, error) {
	if err := waterRange(max(p0, waterLeastPa), t0); err != nil {
		return 0, err
	}
	if err := waterRange(max(p0, waterLeastPa), t1); err != nil {
		return 0, err
	}
	v0 := waterVolume(float64(p0), float64(t0))
	tight := func(pa float64) float64 {
		room := 1 + c.Expansion*float64(t1-t0) + c.Compliance*(pa-float64(p0))
		return waterVolume(pa, float64(t1))/v0 - room
	}
	if tight(float64(p0)) <= 0 {
		return p0, nil
	}
	if tight(waterToMPa*1e6) > 0 {
		return 0, &OutsideError{"liquid water", "MPa", waterToMPa, waterLeastPa / 1e6, waterToMPa}
	}
	return units.AbsolutePressure(bisect(float64(p0), waterToMPa*1e6, tight)), nil
}
