package units

import (
	"fmt"
	"math"
	"regexp"
	"strconv"
	"strings"
	"unicode"
)

var (
	numberForm    = regexp.MustCompile(`^[+-]?(?:[0-9]+\.?[0-9]*|\.[0-9]+)(?:[eE][+-]?[0-9]+)?`)
	thousandsForm = regexp.MustCompile(`^[ _]+[0-9]`)
	fractionForm  = regexp.MustCompile(`^(?:[ -]+[0-9]+)?/[0-9]`)
	wholeForm     = regexp.MustCompile(`[0-9]+`)
	commaForm     = regexp.MustCompile(`^,([0-9]+)`)
)

// Typists and word processors swap these signs in; they mean one thing only.
var signs = strings.NewReplacer(
	"\u2212", "-", "\u2013", "-", "\u2011", "-",
	"\u2033", `"`, "\u201d", `"`, "\u201c", `"`, "''", `"`, "\u2032", "'", "\u2019", "'",
	"\u00ba", "°", "\u02da", "°", "\u2103", "°C", "\u2109", "°F",
	"½", " 1/2", "¼", " 1/4", "¾", " 3/4", "⅛", " 1/8", "⅜", " 3/8", "⅝", " 5/8", "⅞", " 7/8",
)

// tidy folds look-alike signs and every kind of space, and trims the ends.
func tidy(s string) string {
	s = strings.Map(func(r rune) rune {
		if unicode.IsSpace(r) {
			return ' '
		}
		return r
	}, s)
	return strings.TrimSpace(signs.Replace(s))
}

// quote shows what was typed, cut short so an error stays one readable line.
func quote(s string) string {
	const longest = 60
	if r := []rune(s); len(r) > longest {
		s = string(r[:longest]) + "..."
	}
	return `"` + strings.ToValidUTF8(s, "?") + `"`
}

// splitNumber cuts "6 bar(g)" into 6 and "bar(g)"; example completes the errors.
func splitNumber(s, example string) (value float64, unit string, err error) {
	text := tidy(s)
	if text == "" {
		return 0, "", fmt.Errorf("empty: write a number and a unit, like %s", example)
	}
	digits := numberForm.FindString(text)
	if digits == "" {
		return 0, "", fmt.Errorf("%s does not start with a number: write it like %s", quote(s), example)
	}
	rest := text[len(digits):]
	if err := refuseNumber(s, digits, rest); err != nil {
		return 0, "", err
	}
	value, err = strconv.ParseFloat(digits, 64)
	if err != nil || math.IsInf(value, 0) {
		return 0, "", fmt.Errorf("%s is too large a number", quote(s))
	}
	return value, strings.TrimSpace(rest), nil
}

// refuseNumber turns away number styles that can be read two ways.
func refuseNumber(s, digits, rest string) error {
	if m := commaForm.FindStringSubmatch(rest); m != nil {
		return refuseComma(s, digits, m[1])
	}
	switch {
	case fractionForm.MatchString(rest):
		return fmt.Errorf("%s has a fraction, which is read for inches and feet only: write a decimal such as 1.5", quote(s))
	case thousandsForm.MatchString(rest):
		joined := digits + wholeForm.FindString(rest)
		return fmt.Errorf("%s splits the number with a space or underscore: write %s", quote(s), joined)
	case digits == "0" && (strings.HasPrefix(rest, "x") || strings.HasPrefix(rest, "X")):
		return fmt.Errorf("%s is a hexadecimal number: write it in decimal", quote(s))
	case strings.HasPrefix(rest, "."):
		return fmt.Errorf("%s has two decimal points: write one, and no thousands mark", quote(s))
	}
	return nil
}

func refuseComma(s, whole, after string) error {
	if len(after) == 3 {
		return fmt.Errorf("%s has a comma that can be read two ways: write %s%s or %s.%s", quote(s), whole, after, whole, after)
	}
	return fmt.Errorf("%s has a decimal comma: write %s.%s", quote(s), whole, after)
}
