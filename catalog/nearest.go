package catalog

import (
	"cmp"
	"maps"
	"slices"
	"strings"
)

// nearestShown is how many near ids an error offers: enough to choose from, few enough to read.
const nearestShown = 3

// longest is the length in bytes above which a text is no name and is not compared letter by letter.
const longest = 300

// nearest returns the ids whose id or other name is closest to the typed name. A number has no near ones:
// one digit further is another substance altogether.
func (c *Catalog) nearest(kind, typed string) []string {
	near := map[string]int{}
	key := normal(typed)
	if bareNumber.MatchString(key) || len(key) > longest {
		return nil
	}
	for _, n := range c.namesOfKind(kind) {
		if bareNumber.MatchString(n.name) {
			continue
		}
		steps := apart(key, n.name)
		if old, ok := near[n.id]; steps <= max(2, len(key)/3) && (!ok || steps < old) {
			near[n.id] = steps
		}
	}
	ids := slices.SortedFunc(maps.Keys(near), func(a, b string) int {
		return cmp.Or(near[a]-near[b], strings.Compare(a, b))
	})
	return ids[:min(len(ids), nearestShown)]
}

// apart counts edits, but takes a name that contains the typed one as near: people type the start of a name.
func apart(typed, name string) int {
	steps := distance(typed, name)
	if len(typed) > 3 && strings.Contains(name, typed) {
		return min(steps, 2)
	}
	return steps
}

// distance is the number of single-letter insertions, deletions and substitutions between two names
// (Levenshtein 1966), kept in one row.
func distance(a, b string) int {
	x, y := []rune(a), []rune(b)
	row := make([]int, len(y)+1)
	for j := range row {
		row[j] = j
	}
	for i := range x {
		diagonal := row[0]
		row[0] = i + 1
		for j := range y {
			change := diagonal
			if x[i] != y[j] {
				change++
			}
			diagonal = row[j+1]
			row[j+1] = min(change, row[j]+1, row[j+1]+1)
		}
	}
	return row[len(y)]
}
