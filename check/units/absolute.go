package units

import "fmt"

// AbsolutePressure is in Pa above vacuum. Vapour pressures and gas laws are absolute.
type AbsolutePressure float64

// ParseAbsolute reads a pressure that says it is absolute, such as "1.2 bar(a)" or
// "29 psia", and the unit it was typed in. Gauge and bare pressures are refused.
func ParseAbsolute(s string) (AbsolutePressure, Unit, error) {
	p, err := ParsePressure(s)
	if err != nil {
		return 0, "", err
	}
	if p.Basis != AbsoluteBasis {
		return 0, "", fmt.Errorf("%s is gauge where an absolute pressure is wanted: at sea level write %s",
			quote(s), p.Absolute(StandardAtmosphere).Format(p.Unit))
	}
	return AbsolutePressure(p.Pascals), p.Unit, nil
}

// Gauge takes the ambient pressure off.
func (a AbsolutePressure) Gauge(ambient AbsolutePressure) GaugePressure {
	return GaugePressure(float64(a) - float64(ambient))
}

// Plus raises the absolute pressure by a difference.
func (a AbsolutePressure) Plus(d PressureDifference) AbsolutePressure {
	return a + AbsolutePressure(d)
}

// Minus is the difference from another absolute pressure.
func (a AbsolutePressure) Minus(other AbsolutePressure) PressureDifference {
	return PressureDifference(a - other)
}

// In is the number in the unit; a unit marked gauge is an error.
func (a AbsolutePressure) In(unit Unit) (float64, error) {
	return pressureIn(float64(a), AbsoluteBasis, unit)
}

// Format prints in the unit's size, always marked absolute; an unknown unit prints as bar(a).
func (a AbsolutePressure) Format(unit Unit) string {
	return printPressure(float64(a), AbsoluteBasis, unit)
}

// String prints in bar(a).
func (a AbsolutePressure) String() string { return a.Format("bar(a)") }
