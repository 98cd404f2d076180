package facts_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"lineworthy/check/facts"
)

// TestTails: inch names of hose are those of ISO 1307 (restated; its inch column recalled): 2 in is 51 mm and not 50.
func TestTails(t *testing.T) {
	for name, tc := range map[string]struct {
		size, tail string
		want       [2]int64
	}{
		"the same DN":   {"DN 50", "DN 50", [2]int64{50000, 50000}},
		"50 against 51": {"2 in", "50 mm", [2]int64{50000, 51000}},
		"51 against 50": {"DN 50", "2 in", [2]int64{51000, 50000}},
		"dash":          {"-32", "DN 50", [2]int64{50000, 51000}},
		"NPS":           {"NPS 2", "DN 50", [2]int64{50000, 51000}},
		"NPS 1 1/2":     {"NPS 1 1/2", "DN 40", [2]int64{40000, 38000}},
		"3/4 in":        {"3/4 in", "DN 20", [2]int64{20000, 19000}},
		"76 and 80":     {"3 in", "DN 80", [2]int64{80000, 76000}},
		"1 in is 25":    {"1 in", "DN 25", [2]int64{25000, 25000}},
		"4 in is 100":   {"4 in", "DN 100", [2]int64{100000, 100000}},
		"31.5":          {"1 1/4 in", "DN 32", [2]int64{31500, 31500}},
		"12.5":          {"1/2 in", "DN 13", [2]int64{12500, 12500}},
		"not listed":    {"7 in", "DN 175", [2]int64{175000, 177800}},
	} {
		t.Run(name, func(t *testing.T) {
			f := build(t, "        size: DN 50\n", "        size: "+tc.size+"\n        tail: "+tc.tail+"\n")
			assert.Equal(t, []facts.Tail{{ID: "H1", TailUM: facts.Know(tc.want[0]), HoseUM: facts.Know(tc.want[1])}}, f.Tails)
		})
	}
}

// TestTailsAsked: a tail is asked for where ends were made up on site and hold back what no band may.
func TestTailsAsked(t *testing.T) {
	more := func(text string, edits ...string) []facts.Tail {
		return build(t, append(edits, "        size: DN 50\n", "        size: DN 50\n"+text)...).Tails
	}
	assert.Empty(t, more(""))
	assert.Empty(t, more("        retention: crimped\n"))
	assert.Equal(t, []facts.Tail{{ID: "H1", HoseUM: facts.Know(50000)}}, more("        retention: clamp-shells\n"))
	assert.Empty(t, more("        retention: clamp-shells\n", "fluid: butanone, concentration: 100 %", "fluid: water", "carries: [product, pad]", "carries: [product]"), "cold water")
	clamps := "        outside: 65.5 mm\n        clamp_least: 64 mm\n        clamp_most: 67 mm\n"
	assert.Equal(t, []facts.Tail{{
		ID: "H1", TailUM: facts.Know(50000), HoseUM: facts.Know(50000), Clamped: true,
		OutsideUM: facts.Know(65500), ClampLeast: facts.Know(64000), ClampMost: facts.Know(67000),
	}}, more(clamps))
}
