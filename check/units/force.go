package units

// Force is in N, zero or more.
type Force float64

var forces = table{
	quantity: "a force", example: "120 N", lowest: 0, highest: 1e9,
	scales: []scale{
		{"N", 1, 0, []string{"newton", "newtons"}},
		{"kN", 1e3, 0, nil},
		{"lbf", poundKg * gravityMs2, 0, nil},
		{"kgf", gravityMs2, 0, []string{"kp"}},
	},
	hints: map[string]string{
		"kg": "is a mass: write kgf or N", "lb": "is a mass: write lbf or N",
	},
}

// ParseForce reads "120 N" or "27 lbf".
// Other units, values below zero and values beyond 1e9 N are errors.
func ParseForce(s string) (Force, error) {
	si, _, err := forces.read(s)
	return keep[Force](si, err)
}

// In is the number in the unit.
func (v Force) In(unit Unit) (float64, error) { return forces.in(float64(v), unit) }

// Format prints in the unit; an unknown unit prints as N.
func (v Force) Format(unit Unit) string { return forces.print(float64(v), unit) }

// String prints in N.
func (v Force) String() string { return v.Format("N") }
