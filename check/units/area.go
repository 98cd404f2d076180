package units

// Area is in m2, zero or more.
type Area float64

var areas = table{
	quantity: "an area", example: "50 mm2", lowest: 0, highest: 1e6,
	scales: []scale{
		{"mm2", 1e-6, 0, []string{"sq mm", "mm^2"}},
		{"cm2", 1e-4, 0, []string{"sq cm"}},
		{"m2", 1, 0, []string{"sq m"}},
		{"in2", inchM * inchM, 0, []string{"sq in", "sq inch"}},
		{"ft2", 144 * inchM * inchM, 0, []string{"sq ft"}},
	},
}

// ParseArea reads "50 mm2" or "0.08 in2".
// Other units, values below zero and values beyond 1e6 m2 are errors.
func ParseArea(s string) (Area, error) {
	si, _, err := areas.read(s)
	return keep[Area](si, err)
}

// In is the number in the unit.
func (v Area) In(unit Unit) (float64, error) { return areas.in(float64(v), unit) }

// Format prints in the unit; an unknown unit prints as mm2.
func (v Area) Format(unit Unit) string { return areas.print(float64(v), unit) }

// String prints in mm2.
func (v Area) String() string { return v.Format("mm2") }
