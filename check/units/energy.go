package units

// Energy is in J, zero or more.
type Energy float64

var energies = table{
	quantity: "an energy", example: "5 kJ", lowest: 0, highest: 1e15,
	scales: []scale{
		{"J", 1, 0, []string{"joule", "joules"}},
		{"mJ", 1e-3, 0, nil},
		{"kJ", 1e3, 0, nil},
		{"MJ", 1e6, 0, nil},
		{"kWh", 3.6e6, 0, nil},
		{"ft lbf", 12 * inchM * poundKg * gravityMs2, 0, nil},
	},
	hints: map[string]string{
		"btu": "has several definitions: write kJ",
	},
}

// ParseEnergy reads "5 kJ" or "0.2 mJ"; capitals part milli from mega.
// Other units, values below zero and values beyond 1e15 J are errors.
func ParseEnergy(s string) (Energy, error) {
	si, _, err := energies.read(s)
	return keep[Energy](si, err)
}

// In is the number in the unit.
func (v Energy) In(unit Unit) (float64, error) { return energies.in(float64(v), unit) }

// Format prints in the unit; an unknown unit prints as J.
func (v Energy) Format(unit Unit) string { return energies.print(float64(v), unit) }

// String prints in J.
func (v Energy) String() string { return v.Format("J") }
