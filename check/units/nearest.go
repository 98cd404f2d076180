package units

import "strings"

// didYouMean offers the nearest known name, or nothing when none is near enough.
func didYouMean(typed string, known []string) string {
	best, bestSteps := "", 3
	for _, name := range known {
		if steps := distance(plain(typed), plain(name)); steps < bestSteps {
			best, bestSteps = name, steps
		}
	}
	if best == "" || bestSteps >= len([]rune(plain(typed))) {
		return ""
	}
	return "; did you mean " + best + "?"
}

// plain is the form in which spellings are compared when case does not matter.
func plain(s string) string { return strings.ToLower(compact(s)) }

// compact drops what never changes the meaning of a unit: spaces, dots, raised figures.
func compact(s string) string { return marks.Replace(s) }

var marks = strings.NewReplacer(" ", "", ".", "", "·", "", "⋅", "", "*", "", "^", "",
	"²", "2", "³", "3", "\u00b5", "u", "\u03bc", "u", "\u2126", "ohm", "\u03a9", "ohm", "[", "(", "]", ")")

// distance counts insertions, deletions, substitutions and swaps of neighbours
// (optimal string alignment).
func distance(a, b string) int {
	x, y := []rune(a), []rune(b)
	if len(x) > len(y)+3 || len(y) > len(x)+3 {
		return len(x) + len(y)
	}
	rows := make([][]int, len(x)+1)
	for i := range rows {
		rows[i] = make([]int, len(y)+1)
		for j := range rows[i] {
			rows[i][j] = step(rows, x, y, i, j)
		}
	}
	return rows[len(x)][len(y)]
}

func step(rows [][]int, x, y []rune, i, j int) int {
	if i == 0 || j == 0 {
		return i + j
	}
	change := 1
	if x[i-1] == y[j-1] {
		change = 0
	}
	best := min(rows[i-1][j]+1, rows[i][j-1]+1, rows[i-1][j-1]+change)
	if i > 1 && j > 1 && x[i-1] == y[j-2] && x[i-2] == y[j-1] {
		best = min(best, rows[i-2][j-2]+1)
	}
	return best
}
