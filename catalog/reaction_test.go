package catalog

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Acid on hypochlorite gives chlorine: CSB case study on the mixing of sulfuric acid and sodium hypochlorite
// (January 2018; published).
func TestReactionsBetween(t *testing.T) {
	rows, err := Open().Reactions()
	require.NoError(t, err)
	first := func(x, y []string) string {
		i := slices.IndexFunc(rows, func(r Reaction) bool { return r.Between(x, y) })
		if i < 0 {
			return ""
		}
		return rows[i].Product
	}
	assert.Equal(t, "chlorine gas", first([]string{"acid", "strong-acid"}, []string{"hypochlorite"}))
	assert.Equal(t, "chlorine gas", first([]string{"hypochlorite"}, []string{"acid"}), "either way round")
	assert.Empty(t, first([]string{"acid", "hypochlorite"}, []string{"water"}), "both groups in one fluid are no meeting")
	assert.Empty(t, first(nil, []string{"acid"}))
}
