package facts

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// TestLikeness: which labels a hurried eye takes for one another is common practice, no source. Short ids that differ in
// one character, as H1 and H2, are ordinary and not alike.
func TestLikeness(t *testing.T) {
	for _, tc := range []struct{ a, b, want string }{
		{"ethanol", "methanol", "one-character"},
		{"butanol", "butanal", "one-character"},
		{"Acid fill", "ACID-FILL", "same"},
		{"TK 1O1", "TK 101", "look-alike-character"},
		{"B12", "812", "look-alike-character"},
		{"L-1", "I-1", "look-alike-character"},
		{"A21", "A12", "transposed"},
		{"tank 4512", "tank 4521", "transposed"},
		{"tank 4512", "tank 4513", "last-digit"},
		{"tank 4512", "tank 4612", "one-character"},
		{"tank 4512", "tank 4623", ""},
		{"H1", "H2", ""},
		{"A12", "A13", ""},
		{"A123", "A124", "last-digit"},
		{"nitrogen", "butanone", ""},
		{"acetone", "acetone spare", ""},
		{"none", "nine", "one-character"},
		{"-", "-", ""},
		{"", "a", ""},
	} {
		assert.Equal(t, tc.want, likeness(tc.a, tc.b), "%s and %s", tc.a, tc.b)
		assert.Equal(t, tc.want, likeness(tc.b, tc.a), "%s and %s", tc.b, tc.a)
	}
}
