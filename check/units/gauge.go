package units

import "fmt"

// GaugePressure is in Pa above ambient. Ratings, set pressures and gauge readings are gauge.
type GaugePressure float64

// ParseGauge reads a pressure that says it is gauge, such as "6 bar(g)" or "145 psig",
// and the unit it was typed in. Absolute and bare pressures are refused.
func ParseGauge(s string) (GaugePressure, Unit, error) {
	p, err := ParsePressure(s)
	if err != nil {
		return 0, "", err
	}
	if p.Basis != GaugeBasis {
		return 0, "", fmt.Errorf("%s is absolute where a gauge pressure is wanted: at sea level write %s",
			quote(s), p.Gauge(StandardAtmosphere).Format(p.Unit))
	}
	return GaugePressure(p.Pascals), p.Unit, nil
}

// Absolute adds the ambient pressure.
func (g GaugePressure) Absolute(ambient AbsolutePressure) AbsolutePressure {
	return AbsolutePressure(float64(g) + float64(ambient))
}

// Plus raises the gauge pressure by a difference in the same ambient.
func (g GaugePressure) Plus(d PressureDifference) GaugePressure { return g + GaugePressure(d) }

// Minus is the difference from another gauge pressure in the same ambient.
func (g GaugePressure) Minus(other GaugePressure) PressureDifference {
	return PressureDifference(g - other)
}

// In is the number in the unit; a unit marked absolute is an error.
func (g GaugePressure) In(unit Unit) (float64, error) {
	return pressureIn(float64(g), GaugeBasis, unit)
}

// Format prints in the unit's size, always marked gauge; an unknown unit prints as bar(g).
func (g GaugePressure) Format(unit Unit) string { return printPressure(float64(g), GaugeBasis, unit) }

// String prints in bar(g).
func (g GaugePressure) String() string { return g.Format("bar(g)") }
