package report

import "strings"

// nearest is the known name with the fewest letters to change, if that is less than half of it; else nothing.
func nearest(typed string, known []string) string {
	best, steps := "", 0
	for _, name := range known {
		d := distance([]rune(strings.ToLower(typed)), []rune(name))
		if 2*d < len([]rune(name)) && (best == "" || d < steps) {
			best, steps = name, d
		}
	}
	return best
}

// distance counts letters put in, left out or changed.
func distance(a, b []rune) int {
	row := make([]int, len(b)+1)
	for j := range row {
		row[j] = j
	}
	for i := range a {
		before := row[0]
		row[0] = i + 1
		for j := range b {
			change := before
			if a[i] != b[j] {
				change++
			}
			before = row[j+1]
			row[j+1] = min(change, before+1, row[j]+1)
		}
	}
	return row[len(b)]
}
