package units

// Conductivity is in S/m, zero or more.
type Conductivity float64

var conductivities = table{
	quantity: "a conductivity", example: "50 pS/m", lowest: 0, highest: 1e8,
	scales: []scale{
		{"pS/m", 1e-12, 0, nil},
		{"nS/m", 1e-9, 0, nil},
		{"µS/m", 1e-6, 0, nil},
		{"mS/m", 1e-3, 0, nil},
		{"S/m", 1, 0, nil},
		{"µS/cm", 1e-4, 0, nil},
		{"mS/cm", 0.1, 0, nil},
		{"S/cm", 100, 0, nil},
	},
}

// ParseConductivity reads "50 pS/m" or "2 µS/cm".
// Other units, values below zero and values beyond 1e8 S/m are errors.
func ParseConductivity(s string) (Conductivity, error) {
	si, _, err := conductivities.read(s)
	return keep[Conductivity](si, err)
}

// In is the number in the unit.
func (v Conductivity) In(unit Unit) (float64, error) { return conductivities.in(float64(v), unit) }

// Format prints in the unit; an unknown unit prints as pS/m.
func (v Conductivity) Format(unit Unit) string { return conductivities.print(float64(v), unit) }

// String prints in pS/m.
func (v Conductivity) String() string { return v.Format("pS/m") }
