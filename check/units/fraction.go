package units

import (
	"fmt"
	"strings"
)

// Fraction is a ratio of 0..1, such as a fill level or a concentration.
type Fraction float64

var fractions = table{
	quantity: "a fraction", example: "85 % or 0.85", lowest: 0, highest: 1,
	scales: []scale{
		{"%", 1e-2, 0, []string{"percent", "per cent", "pct"}},
		{"‰", 1e-3, 0, []string{"per mille", "permille"}},
		{"ppm", 1e-6, 0, nil},
	},
	hints: map[string]string{
		"%vol": whichShare, "vol%": whichShare, "%v/v": whichShare,
		"%wt": whichShare, "wt%": whichShare, "%w/w": whichShare,
	},
}

const whichShare = "has no place here: write the percentage alone, and the share's kind in its own field"

// ParseFraction reads "85 %", "0.85" or "50 ppm". A number without a unit is a ratio;
// below 0 and above 1 are errors.
func ParseFraction(s string) (Fraction, error) {
	number, spelling, err := splitNumber(s, fractions.example)
	if err != nil {
		return 0, err
	}
	if spelling != "" {
		si, _, err := fractions.convert(s, number, spelling)
		return keep[Fraction](si, err)
	}
	if strings.ContainsAny(s, "eE") {
		return 0, fmt.Errorf("%s has an exponent and no unit: write %s", quote(s), fractions.example)
	}
	if number > 1 && number <= 100 {
		return 0, fmt.Errorf("%s is more than 1: write %s %% if a percentage is meant", quote(s), digits(number, 15, 1))
	}
	return keep[Fraction](number, fractions.plausible(s, number))
}

// In is the number in %, ‰ or ppm.
func (f Fraction) In(unit Unit) (float64, error) { return fractions.in(float64(f), unit) }

// Format prints in the unit; an unknown unit prints as %.
func (f Fraction) Format(unit Unit) string { return fractions.print(float64(f), unit) }

// String prints in %.
func (f Fraction) String() string { return f.Format("%") }
