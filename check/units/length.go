package units

// Length is in m, zero or more when read by ParseLength.
type Length float64

var lengths = table{
	quantity: "a length", example: "150 mm", lowest: 0, highest: 1e6,
	scales: []scale{
		{"mm", 1e-3, 0, []string{"millimetre", "millimetres", "millimeter", "millimeters"}},
		{"m", 1, 0, []string{"metre", "metres", "meter", "meters"}},
		{"cm", 1e-2, 0, nil},
		{"km", 1e3, 0, nil},
		{"in", inchM, 0, []string{`"`, "inch", "inches"}},
		{"ft", 12 * inchM, 0, []string{"'", "foot", "feet"}},
	},
}

var elevations = table{
	quantity: "an elevation", example: "120 m", lowest: -highestAltitudeM, highest: highestAltitudeM,
	scales: append([]scale{lengths.scales[1], lengths.scales[0]}, lengths.scales[2:]...),
}

// ParseLength reads "150 mm", "3 m", "1 1/2 in" or 3/4". Negative lengths and lengths
// beyond 1000 km are errors.
func ParseLength(s string) (Length, error) {
	si, _, err := readLength(s, &lengths)
	return keep[Length](si, err)
}

// ParseElevation reads a height that may lie below its datum, such as "-200 m",
// within 11 km: an altitude or a static head.
func ParseElevation(s string) (Length, error) {
	si, _, err := readLength(s, &elevations)
	return keep[Length](si, err)
}

// readLength also takes the fractions of inches and feet.
func readLength(s string, t *table) (float64, scale, error) {
	value, rest, found, err := leadingFraction(s)
	if err != nil {
		return 0, scale{}, err
	}
	if found && inchOrFoot(rest) {
		return t.convert(s, value, rest)
	}
	return t.read(s)
}

// In is the number in the unit.
func (l Length) In(unit Unit) (float64, error) { return lengths.in(float64(l), unit) }

// Format prints in the unit; an unknown unit prints as mm.
func (l Length) Format(unit Unit) string { return lengths.print(float64(l), unit) }

// String prints in mm.
func (l Length) String() string { return l.Format("mm") }
