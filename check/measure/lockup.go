package measure

import "lineworthy/check/units"

// DefaultLockUp is the rise above set of a cylinder regulator at no flow where its data sheet says nothing:
// ISO 2503, coefficient of pressure increase upon closure R <= 0.3 (recalled).
const DefaultLockUp units.Fraction = 0.3

// LockUp is the highest outlet pressure of a sound regulator with the flow stopped.
func LockUp(set units.GaugePressure, rise units.Fraction) units.GaugePressure {
	return set + units.GaugePressure(float64(set)*float64(rise))
}
