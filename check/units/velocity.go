package units

// Velocity is in m/s, zero or more.
type Velocity float64

var velocities = table{
	quantity: "a velocity", example: "2 m/s", lowest: 0, highest: 3e4,
	scales: []scale{
		{"m/s", 1, 0, nil},
		{"ft/s", 12 * inchM, 0, []string{"fps"}},
		{"km/h", 1.0 / 3.6, 0, []string{"kph"}},
		{"mm/s", 1e-3, 0, nil},
	},
}

// ParseVelocity reads "2 m/s" or "7 ft/s".
// Other units, values below zero and values beyond 3e4 m/s are errors.
func ParseVelocity(s string) (Velocity, error) {
	si, _, err := velocities.read(s)
	return keep[Velocity](si, err)
}

// In is the number in the unit.
func (v Velocity) In(unit Unit) (float64, error) { return velocities.in(float64(v), unit) }

// Format prints in the unit; an unknown unit prints as m/s.
func (v Velocity) Format(unit Unit) string { return velocities.print(float64(v), unit) }

// String prints in m/s.
func (v Velocity) String() string { return v.Format("m/s") }
