package measure

import "lineworthy/check/units"

// gravity is standard gravity, m/s2: 3rd CGPM 1901, SI Brochure (recalled; exact by definition).
const gravity = 9.80665

// StaticHead is the pressure of a column of liquid, rho g h.
func StaticHead(rho units.Density, height units.Length) units.PressureDifference {
	return units.PressureDifference(float64(rho) * gravity * float64(height))
}
