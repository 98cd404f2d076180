package units

// Resistance is in ohm, zero or more.
type Resistance float64

var resistances = table{
	quantity: "a resistance", example: "10 ohm", lowest: 0, highest: 1e18,
	scales: []scale{
		{"ohm", 1, 0, []string{"ohms"}},
		{"mohm", 1e-3, 0, []string{"milliohm"}},
		{"kohm", 1e3, 0, []string{"kilohm"}},
		{"Mohm", 1e6, 0, []string{"megohm", "megaohm"}},
		{"Gohm", 1e9, 0, []string{"gigaohm"}},
	},
}

// ParseResistance reads "10 ohm" or "1 Mohm"; capitals part milli from mega.
// Other units, values below zero and values beyond 1e18 ohm are errors.
func ParseResistance(s string) (Resistance, error) {
	si, _, err := resistances.read(s)
	return keep[Resistance](si, err)
}

// In is the number in the unit.
func (v Resistance) In(unit Unit) (float64, error) { return resistances.in(float64(v), unit) }

// Format prints in the unit; an unknown unit prints as ohm.
func (v Resistance) Format(unit Unit) string { return resistances.print(float64(v), unit) }

// String prints in ohm.
func (v Resistance) String() string { return v.Format("ohm") }
