package units

// Time is in s, zero or more.
type Time float64

// Duration is the name line sheets use for Time.
type Duration = Time

// ParseDuration is ParseTime.
func ParseDuration(s string) (Duration, error) { return ParseTime(s) }

const noFixedLength = "has no fixed length: write days or hours here"

var times = table{
	quantity: "a time", example: "20 min", lowest: 0, highest: 1e10,
	scales: []scale{
		{"s", 1, 0, []string{"sec", "second", "seconds"}},
		{"ms", 1e-3, 0, []string{"millisecond", "milliseconds"}},
		{"min", 60, 0, []string{"mins", "minute", "minutes"}},
		{"h", 3600, 0, []string{"hr", "hrs", "hour", "hours"}},
		{"d", 86400, 0, []string{"day", "days"}},
		{"week", 7 * 86400, 0, []string{"weeks"}},
	},
	hints: map[string]string{
		"m":     "does not say minutes or months: write min",
		"month": noFixedLength, "months": noFixedLength, "year": noFixedLength, "years": noFixedLength,
	},
}

// ParseTime reads "20 min", "1 h" or "0.5 s".
// Other units, values below zero and values beyond 1e10 s are errors.
func ParseTime(s string) (Time, error) {
	si, _, err := times.read(s)
	return keep[Time](si, err)
}

// In is the number in the unit.
func (v Time) In(unit Unit) (float64, error) { return times.in(float64(v), unit) }

// Format prints in the unit; an unknown unit prints as s.
func (v Time) Format(unit Unit) string { return times.print(float64(v), unit) }

// String prints in s.
func (v Time) String() string { return v.Format("s") }
