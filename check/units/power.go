package units

// Power is in W, zero or more.
type Power float64

var powers = table{
	quantity: "a power", example: "2 kW", lowest: 0, highest: 1e12,
	scales: []scale{
		{"W", 1, 0, []string{"watt", "watts"}},
		{"mW", 1e-3, 0, nil},
		{"kW", 1e3, 0, nil},
		{"MW", 1e6, 0, nil},
	},
	hints: map[string]string{
		"hp": "has several definitions: write kW",
	},
}

// ParsePower reads "2 kW" or "500 W"; capitals part milli from mega.
// Other units, values below zero and values beyond 1e12 W are errors.
func ParsePower(s string) (Power, error) {
	si, _, err := powers.read(s)
	return keep[Power](si, err)
}

// In is the number in the unit.
func (v Power) In(unit Unit) (float64, error) { return powers.in(float64(v), unit) }

// Format prints in the unit; an unknown unit prints as W.
func (v Power) Format(unit Unit) string { return powers.print(float64(v), unit) }

// String prints in W.
func (v Power) String() string { return v.Format("W") }
