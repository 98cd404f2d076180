package units

// Mass is in kg, zero or more.
type Mass float64

const whichTon = "does not say which ton: write t (1000 kg), kg or lb"

var masses = table{
	quantity: "a mass", example: "12 kg", lowest: 0, highest: 1e9,
	scales: []scale{
		{"kg", 1, 0, []string{"kilogram", "kilograms"}},
		{"g", 1e-3, 0, []string{"gram", "grams"}},
		{"t", 1e3, 0, []string{"tonne", "tonnes"}},
		{"lb", poundKg, 0, []string{"lbs", "lbm", "pound", "pounds"}},
		{"oz", poundKg / 16, 0, nil},
	},
	hints: map[string]string{
		"ton": whichTon, "tons": whichTon,
	},
}

// ParseMass reads "12 kg" or "1000 lb"; a bare ton is refused.
// Other units, values below zero and values beyond 1e9 kg are errors.
func ParseMass(s string) (Mass, error) {
	si, _, err := masses.read(s)
	return keep[Mass](si, err)
}

// In is the number in the unit.
func (v Mass) In(unit Unit) (float64, error) { return masses.in(float64(v), unit) }

// Format prints in the unit; an unknown unit prints as kg.
func (v Mass) Format(unit Unit) string { return masses.print(float64(v), unit) }

// String prints in kg.
func (v Mass) String() string { return v.Format("kg") }
