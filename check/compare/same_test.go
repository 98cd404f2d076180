package compare_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// TestNoDifference: units, names of the same entry, comments and the order of a list say nothing new.
func TestNoDifference(t *testing.T) {
	for name, edits := range map[string][]string{
		"nothing":    {},
		"comment":    {"  pad:\n    fluid", "  # a word\n  pad:\n    fluid"},
		"unit":       {"rated: 65 bar(g)", "rated: 6500 kPa(g)"},
		"scale":      {"lowest: 5 °C", "lowest: 41 °F"},
		"other name": {"fluid: toluene\n    role", "fluid: methylbenzene\n    role"},
		"size":       {"size: DN 50\n        length", "size: NPS 2\n        length"},
		"order":      {"marks: [ISO 10380, DN 10", "marks: [DN 10, ISO 10380"},
		"key order":  {"stages: 2\n        set: 3 bar(g)", "set: 3 bar(g)\n        stages: 2"},
		"yes":        {"readable: yes", "readable: true"},
	} {
		t.Run(name, func(t *testing.T) {
			r := review(t, text(t, "toluene-yard"), text(t, "toluene-yard", edits...))
			assert.Empty(t, r.Changes)
			assert.Equal(t, "no change of the design", r.Kind.Answer)
			assert.Empty(t, r.Worse)
			assert.Empty(t, r.Record)
		})
	}
}

// TestRenamed: another name for a fluid or a vessel is no other fluid or vessel, and no finding moves by it.
func TestRenamed(t *testing.T) {
	r := review(t, text(t, "toluene-yard"), text(t, "toluene-yard", "  mixing-tank:\n", "  kettle:\n", "to: {vessel: mixing-tank", "to: {vessel: kettle",
		"  product:\n", "  solvent:\n", "carries: [product, pad]", "carries: [pad, solvent]"))
	design, records := told(r)
	assert.Empty(t, design)
	assert.ElementsMatch(t, []string{"renamed fluid product", "renamed vessel mixing-tank"}, records)
	for way := range went(r) {
		assert.Contains(t, []string{"stays", "differs"}, way)
	}
}

// TestReplacedByPlace: a hose with another id between the same neighbours is the one that took its place.
func TestReplacedByPlace(t *testing.T) {
	r := review(t, text(t, "toluene-yard"), text(t, "toluene-yard", "id: H2", "id: H7", "tag: H-0523", "tag: H-0601", "assigned: H-0523", "assigned: H-0601"))
	design, records := told(r)
	assert.Empty(t, design)
	assert.Equal(t, []string{"replaced hose H2", "hose H7 tag: H-0523 > H-0601", "hose H7 assigned: H-0523 > H-0601"}, records)
	assert.Equal(t, "in kind", r.Kind.Answer)
	assert.Empty(t, went(r)["appears"])
	assert.Empty(t, r.Worse)
}

// TestMoved: the same parts in another order are another line.
func TestMoved(t *testing.T) {
	one, two := "      - {id: A1, kind: weight}\n", "      - {id: A2, kind: weight}\n"
	before := text(t, "toluene-yard", "      - id: V1\n", one+two+"      - id: V1\n")
	after := text(t, "toluene-yard", "      - id: V1\n", two+one+"      - id: V1\n")
	design, _ := told(review(t, before, after))
	assert.Equal(t, []string{"moved run liquid parts"}, design)
}
