package units

import (
	"fmt"
	"math"
	"strconv"
)

// Months is a calendar interval in whole months, 1..1200 when read.
type Months int

const longestMonths = 1200

var intervals = table{
	quantity: "an interval", example: "12 months or 5 years", lowest: 0, highest: longestMonths,
	scales: []scale{
		{"months", 1, 0, []string{"month", "mo", "mth"}},
		{"years", 12, 0, []string{"year", "yr", "yrs", "y"}},
	},
	hints: map[string]string{
		"m": "does not say minutes or months: write months",
		"d": notMonths, "day": notMonths, "days": notMonths, "week": notMonths, "weeks": notMonths,
	},
}

const notMonths = "does not make whole months: write the interval in months or years"

// ParseMonths reads "12 months", "1 year" or "2.5 years". Parts of a month, nothing,
// and more than a century are errors.
func ParseMonths(s string) (Months, error) {
	months, _, err := intervals.read(s)
	if err != nil {
		return 0, err
	}
	whole := math.Round(months)
	if whole < 1 || math.Abs(months-whole) > 1e-9 {
		return 0, fmt.Errorf("%s is not a whole number of months, one or more", quote(s))
	}
	return Months(whole), nil
}

// String prints as "1 month", "18 months" or "5 years".
func (m Months) String() string {
	count, name := int(m), "month"
	if m != 0 && m%12 == 0 {
		count, name = count/12, "year"
	}
	if count != 1 {
		name += "s"
	}
	return strconv.Itoa(count) + " " + name
}
