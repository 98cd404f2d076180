package facts_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// another is a second tank in reach, and the label of the tank that is meant.
func another(meant, other, contains string) []string {
	return []string{
		tankPoint, tankPoint[:len(tankPoint)-1] + ", marked: " + meant + "}",
		"runs:\n", "  other:\n    vent: open\n" + contains + "    points:\n      fill: {standard: flange-asme-b16-5, size: NPS 2, class: \"150\", facing: RF, marked: " + other + "}\nnearby:\n  - {vessel: other, point: fill}\nruns:\n",
	}
}

// TestLabels: only labels at points of two vessels that are not for the same fluid are compared.
func TestLabels(t *testing.T) {
	l := build(t, another("ketone 31", "ketone 37", "    contains: {fluid: ethanol, concentration: 96 %}\n")...).Labels
	if assert.Len(t, l, 1) {
		assert.Equal(t, []string{"tank/fill", "other/fill", "last-digit", "same"}, []string{l[0].A, l[0].B, l[0].Likeness, l[0].Coupling})
		assert.False(t, l[0].Keyed)
	}
	assert.Len(t, build(t, another("ketone 31", "ketone 37", "")...).Labels, 1, "what is not known may be another fluid")
	assert.Empty(t, build(t, another("ketone 31", "ketone 37", "    contains: {fluid: butanone}\n")...).Labels, "the same fluid")
	assert.Empty(t, build(t, another("butanone", "ethanol", "    contains: {fluid: ethanol, concentration: 96 %}\n")...).Labels)
	assert.Empty(t, build(t, another("none", "none", "    contains: {fluid: ethanol, concentration: 96 %}\n")...).Labels, "no label is judged elsewhere")
	keyed := build(t, append(another("ketone 31", "ketone 37", ""), "marked: ketone 37}", "marked: ketone 37, keyed: ethanol}")...).Labels
	assert.True(t, keyed[0].Keyed)
	assert.Empty(t, build(t).Labels, "ids of parts are no labels")
}

// second is a hose in the gas run with its own identity, and ends like those of the hose in the liquid run.
func second(mine, its, end string) []string {
	ends := "inlet: {standard: flange-asme-b16-5, size: " + end + ", class: \"150\", facing: RF}, outlet: {standard: flange-asme-b16-5, size: " + end + ", class: \"150\", facing: RF}}\n"
	return []string{
		"      - {id: F1,", "      - {id: H9, kind: hose, assigned: " + its + ", " + ends + "      - {id: F1,",
		"        class: en-12115-sd\n", "        class: en-12115-sd\n        tag: " + mine + "\n",
		"carries: [product, pad]", "carries: [product]",
	}
}

// TestHoseIdentities: identities are numbered in order, so one digit is no likeness; equal looks and swapped characters are,
// on hoses that go in each other's place.
func TestHoseIdentities(t *testing.T) {
	l := build(t, second("H-O41", "H-041", "NPS 2")...).Labels
	if assert.Len(t, l, 1) {
		assert.Equal(t, "look-alike-character", l[0].Likeness)
	}
	assert.Len(t, build(t, second("H-0514", "H-0541", "NPS 2")...).Labels, 1)
	assert.Empty(t, build(t, second("H-0514", "H-0515", "NPS 2")...).Labels)
	assert.Empty(t, build(t, second("H-0514", "H-0541", "NPS 1")...).Labels, "they do not fit in each other's place")
}
