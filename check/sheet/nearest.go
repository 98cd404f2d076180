package sheet

import (
	"strings"
	"unicode/utf8"
)

// hintedFaults is far past what is shown; beyond it a hopeless file is only counted, to answer quickly.
const hintedFaults = 1000

func (r *reader) nearest(typed string, known []string) string {
	if len(r.faults) > hintedFaults {
		return ""
	}
	return nearest(typed, known)
}

// didYouMean offers the nearest known name, or what else to do when none is near enough.
func didYouMean(typed string, known []string, otherwise string) string {
	if name := nearest(typed, known); name != "" {
		return "did you mean " + name + "?"
	}
	return otherwise
}

// nearest is the known name that is fewest slips away: at most one in a name of up to four letters,
// two in a longer one. Of two as near, the one that starts alike is meant, else the first.
func nearest(typed string, known []string) string {
	typed = plain(typed)
	letters := utf8.RuneCountInString(typed)
	best, lowest := "", 6
	if letters <= 4 {
		lowest = 4
	}
	for _, name := range known {
		if score := unlikeness(typed, plain(name)); score < lowest && score < 2*letters {
			best, lowest = name, score
		}
	}
	return best
}

// unlikeness counts a slip as two and another first letter as one.
func unlikeness(typed, name string) int {
	score := 2 * distance(typed, name)
	if name == "" || typed == "" || typed[0] != name[0] {
		score++
	}
	return score
}

// plain is the form in which names are compared: case, spaces, dashes and underscores are no difference.
func plain(s string) string { return strings.ToLower(apart.Replace(s)) }

var apart = strings.NewReplacer(" ", "", "-", "", "_", "")

// distance counts letters put in, left out, changed or swapped with a neighbour.
func distance(a, b string) int {
	x, y := []rune(a), []rune(b)
	if len(x) > len(y)+2 || len(y) > len(x)+2 {
		return len(x) + len(y)
	}
	rows := make([][]int, len(x)+1)
	for i := range rows {
		rows[i] = make([]int, len(y)+1)
		for j := range rows[i] {
			rows[i][j] = slips(rows, x, y, i, j)
		}
	}
	return rows[len(x)][len(y)]
}

func slips(rows [][]int, x, y []rune, i, j int) int {
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
