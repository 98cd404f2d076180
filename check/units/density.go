package units

// Density is in kg/m3, zero or more.
type Density float64

var densities = table{
	quantity: "a density", example: "805 kg/m3", lowest: 0, highest: 1e5,
	scales: []scale{
		{"kg/m3", 1, 0, []string{"g/L"}},
		{"g/cm3", 1e3, 0, []string{"kg/L", "g/mL", "kg/dm3", "t/m3"}},
		{"lb/ft3", poundKg / (1728 * inchM * inchM * inchM), 0, []string{"lbs/ft3"}},
	},
}

// ParseDensity reads "805 kg/m3" or "0.805 kg/L".
// Other units, values below zero and values beyond 1e5 kg/m3 are errors.
func ParseDensity(s string) (Density, error) {
	si, _, err := densities.read(s)
	return keep[Density](si, err)
}

// In is the number in the unit.
func (v Density) In(unit Unit) (float64, error) { return densities.in(float64(v), unit) }

// Format prints in the unit; an unknown unit prints as kg/m3.
func (v Density) Format(unit Unit) string { return densities.print(float64(v), unit) }

// String prints in kg/m3.
func (v Density) String() string { return v.Format("kg/m3") }
