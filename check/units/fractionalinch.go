package units

import (
	"fmt"
	"math"
	"regexp"
	"strconv"
	"strings"
)

var fractionLead = regexp.MustCompile(`^(-?)(?:([0-9]{1,6})(?: +| ?- ?))?([0-9]{1,6})/([0-9]{1,6})`)

// leadingFraction reads "1 1/2", "1-1/2" or "3/4" off the front of s.
func leadingFraction(s string) (value float64, rest string, found bool, err error) {
	text := tidy(s)
	m := fractionLead.FindStringSubmatch(text)
	if m == nil {
		return 0, "", false, nil
	}
	whole, _ := strconv.ParseFloat("0"+m[2], 64)
	top, _ := strconv.ParseFloat(m[3], 64)
	bottom, _ := strconv.ParseFloat(m[4], 64)
	if bottom == 0 {
		return 0, "", false, fmt.Errorf("%s divides by zero", quote(s))
	}
	value = whole + top/bottom
	if m[1] == "-" {
		value = -value
	}
	return value, strings.TrimSpace(text[len(m[0]):]), true, nil
}

// inchOrFoot says whether fractions are customary in the unit, or no unit was typed.
func inchOrFoot(spelling string) bool {
	s, err := lengths.find(spelling)
	return spelling == "" || err == nil && (s.name == "in" || s.name == "ft")
}

// fractionText prints a number of inches as the trade writes it, "1 1/2", when it is a
// whole number of 64ths, and as a decimal when it is not.
func fractionText(inches float64) string {
	const part = 64
	parts := math.Round(inches * part)
	if math.Abs(parts-inches*part) > 1e-6 || parts > 1e9 {
		return digits(inches, 6, 1)
	}
	whole, top, bottom := int(parts)/part, int(parts)%part, part
	for top > 0 && top%2 == 0 {
		top, bottom = top/2, bottom/2
	}
	switch {
	case top == 0:
		return strconv.Itoa(whole)
	case whole == 0:
		return fmt.Sprintf("%d/%d", top, bottom)
	}
	return fmt.Sprintf("%d %d/%d", whole, top, bottom)
}
