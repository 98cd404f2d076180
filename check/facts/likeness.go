package facts

import (
	"strings"
	"unicode"
)

// likeness says how two labels are alike to a hurried eye; empty for not. Case, blanks and punctuation count for nothing.
// Short labels differ enough in one character: of those only equal looks and swapped characters count.
func likeness(a, b string) string {
	x, y := bare(a), bare(b)
	switch {
	case len(x) == 0 || len(y) == 0:
		return ""
	case string(x) == string(y):
		return "same"
	case folded(x) == folded(y):
		return "look-alike-character"
	case transposed(x, y):
		return "transposed"
	case min(len(x), len(y)) < longLabel:
		return ""
	case lastDigit(x, y):
		return "last-digit"
	case oneCharacter(x, y):
		return "one-character"
	}
	return ""
}

// longLabel is the length from which one character is easily missed (practice, no source).
const longLabel = 4

func bare(s string) (out []rune) {
	for _, r := range strings.ToUpper(s) {
		if unicode.IsLetter(r) || unicode.IsDigit(r) {
			out = append(out, r)
		}
	}
	return out
}

// Characters that are taken for each other in stencil, stamp and handwriting (practice, no source).
var looks = strings.NewReplacer("O", "0", "Q", "0", "I", "1", "L", "1", "B", "8", "S", "5", "Z", "2", "G", "6")

func folded(r []rune) string { return looks.Replace(string(r)) }

// transposed says whether two neighbouring characters have changed places.
func transposed(x, y []rune) bool {
	i := differ(x, y)
	return len(x) == len(y) && i+1 < len(x) && x[i] == y[i+1] && x[i+1] == y[i] && string(x[i+2:]) == string(y[i+2:])
}

// differ is the first place where the two differ.
func differ(x, y []rune) int {
	i := 0
	for i < len(x) && i < len(y) && x[i] == y[i] {
		i++
	}
	return i
}

// lastDigit says whether only the last character differs, and is a digit in both.
func lastDigit(x, y []rune) bool {
	n := len(x) - 1
	return len(x) == len(y) && differ(x, y) == n && unicode.IsDigit(x[n]) && unicode.IsDigit(y[n])
}

// oneCharacter says whether one character more, less or other makes the two equal.
func oneCharacter(x, y []rune) bool {
	if len(x) > len(y) {
		x, y = y, x
	}
	i := differ(x, y)
	switch len(y) - len(x) {
	case 0:
		return string(x[i+1:]) == string(y[i+1:])
	case 1:
		return string(x[i:]) == string(y[i+1:])
	}
	return false
}
