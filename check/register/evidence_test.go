package register

import (
	"fmt"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"
)

func needs(path string, stops int, values ...int) *Entry {
	e := &Entry{Path: path, Line: path, Stops: stops}
	for _, v := range values {
		e.Confirm = append(e.Confirm, Confirm{What: fmt.Sprint("v", v), Standing: "recalled"})
	}
	return e
}

func TestEvidenceOrder(t *testing.T) {
	p := newPapers()
	for _, e := range []*Entry{
		needs("a", 0, 1), needs("b", 0, 1), // one value frees two lines
		needs("c", 0, 1, 2),                                                  // then one more frees the third
		needs("d", 0, 3, 4), needs("e", 0, 3, 4, 1), needs("e2", 0, 3, 4, 1), // then two values free three
		needs("f", 1, 5), needs("g", 1, 5), needs("h", 1, 5), // nothing helps these
	} {
		p.add(e)
	}
	var got []string
	for _, e := range p.ranked() {
		got = append(got, fmt.Sprint(e.What, " alone ", e.Alone, " so far ", e.Freed, " of ", e.Lines))
	}
	assert.Equal(t, []string{
		"v1 alone 2 so far 2 of 5", "v3 alone 0 so far 2 of 3", "v4 alone 0 so far 5 of 3", "v2 alone 0 so far 6 of 1", "v5 alone 0 so far 6 of 3",
	}, got)
}

// TestEvidenceCounts recounts every step of random registers by looking at each line again.
func TestEvidenceCounts(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, all := newPapers(), []*Entry{}
		for i := range rapid.IntRange(0, 30).Draw(t, "lines") {
			e := needs(fmt.Sprint(i), rapid.IntRange(0, 1).Draw(t, "stops"), rapid.SliceOfN(rapid.IntRange(0, 8), 0, 5).Draw(t, "values")...)
			all = append(all, e)
			p.add(e)
		}
		confirmed, seen := map[Confirm]bool{}, map[Confirm]bool{}
		for _, x := range p.ranked() {
			confirmed[x.Confirm] = true
			free, rest, alone := 0, 0, 0
			for _, e := range all {
				open := func(c Confirm) bool { return !confirmed[c] }
				if slices.Contains(e.Confirm, x.Confirm) {
					rest++
				}
				if e.Stops == 0 && len(e.Confirm) > 0 && !slices.ContainsFunc(e.Confirm, open) {
					free++
				}
				other := func(c Confirm) bool { return c != x.Confirm }
				if e.Stops == 0 && len(e.Confirm) > 0 && !slices.ContainsFunc(e.Confirm, other) {
					alone++
				}
			}
			if x.Freed != free || x.Lines != rest || x.Alone != alone {
				t.Fatalf("%v: counted %d free, %d resting, %d alone", x, free, rest, alone)
			}
		}
		for _, e := range all {
			for _, c := range e.Confirm {
				seen[c] = true
			}
		}
		if len(seen) != len(confirmed) {
			t.Fatalf("%d values, %d ranked", len(seen), len(confirmed))
		}
	})
}
