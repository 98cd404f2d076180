package units

import (
	"fmt"
	"math"
	"strings"
)

// PressureDifference is in Pa between two points; it has no basis.
type PressureDifference float64

// ParsePressureDifference reads a difference such as "0.3 bar" or "5 psid". A unit
// marked gauge or absolute is refused, for a difference is neither.
func ParsePressureDifference(s string) (PressureDifference, Unit, error) {
	number, spelling, err := splitNumber(s, "0.3 bar")
	if err != nil {
		return 0, "", err
	}
	u, basis, err := findPressureUnit(withoutDifferenceMark(spelling))
	if err != nil {
		return 0, "", fmt.Errorf("%s: %w", quote(s), err)
	}
	bare := u.name(0)
	if basis != 0 {
		return 0, "", fmt.Errorf("%s is %s where a pressure difference is wanted: write %s %s", quote(s), basis, digits(number, 15, 1), bare)
	}
	pa := number * u.factor
	if math.Abs(pa) > highestPressurePa {
		return 0, "", fmt.Errorf("%s is beyond any plausible pressure (1e10 Pa)", quote(s))
	}
	return PressureDifference(pa), bare, nil
}

// withoutDifferenceMark drops the d of psid or bar(d).
func withoutDifferenceMark(spelling string) string {
	for _, mark := range []string{"(d)", "d"} {
		stem, cut := strings.CutSuffix(plain(spelling), mark)
		if _, known := bareUnit(stem); cut && known {
			return stem
		}
	}
	return spelling
}

// In is the number in the unit; any basis of the unit is left aside.
func (d PressureDifference) In(unit Unit) (float64, error) {
	u, _, err := findPressureUnit(string(unit))
	if err != nil {
		return 0, err
	}
	return float64(d) / u.factor, nil
}

// Format prints in the unit's size without a basis; an unknown unit prints as bar.
func (d PressureDifference) Format(unit Unit) string { return printPressure(float64(d), 0, unit) }

// String prints in bar.
func (d PressureDifference) String() string { return d.Format("bar") }
