package units

// Viscosity is in Pa s, zero or more.
type Viscosity float64

const kinematic = "is kinematic: multiply by the density and write mPa s"

var viscosities = table{
	quantity: "a viscosity", example: "0.4 mPa s", lowest: 0, highest: 1e9,
	scales: []scale{
		{"mPa s", 1e-3, 0, []string{"cP", "centipoise"}},
		{"Pa s", 1, 0, nil},
		{"P", 0.1, 0, []string{"poise"}},
	},
	hints: map[string]string{
		"cst": kinematic, "mm2/s": kinematic, "m2/s": kinematic, "st": kinematic,
	},
}

// ParseViscosity reads "0.4 mPa s" or "0.4 cP" (dynamic).
// Other units, values below zero and values beyond 1e9 Pa s are errors.
func ParseViscosity(s string) (Viscosity, error) {
	si, _, err := viscosities.read(s)
	return keep[Viscosity](si, err)
}

// In is the number in the unit.
func (v Viscosity) In(unit Unit) (float64, error) { return viscosities.in(float64(v), unit) }

// Format prints in the unit; an unknown unit prints as mPa s.
func (v Viscosity) Format(unit Unit) string { return viscosities.print(float64(v), unit) }

// String prints in mPa s.
func (v Viscosity) String() string { return v.Format("mPa s") }
