package catalog_test

import (
	"regexp"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/catalog"
)

var firstNumber = regexp.MustCompile(`\d+(\.\d+)?`)

// A hose of one class gets weaker, or stays as strong, as its bore grows: wall stress at a given pressure grows with the
// bore (SAE J517 and EN 853 to 857 tables; restated and recalled).
func TestRatingsNeverRiseWithSize(t *testing.T) {
	judged := 0
	for _, id := range shipped.IDs(catalog.Hoses) {
		h, err := shipped.Hose(id)
		require.NoError(t, err)
		if h.Rating == nil {
			continue
		}
		for i := 1; i < len(h.Rating.Sizes); i++ {
			a, b := h.Rating.Sizes[i-1], h.Rating.Sizes[i]
			if notation(a.Size) != notation(b.Size) {
				continue // the same sizes again, as another document writes them
			}
			judged++
			assert.Less(t, bore(t, a.Size), bore(t, b.Size), "%s: sizes out of order", id)
			assert.GreaterOrEqual(t, a.Bar, b.Bar, "%s: %s holds more than %s", id, b.Size, a.Size)
		}
	}
	assert.Greater(t, judged, 100)
}

// notation is how a size is written, e.g. DN, mm or a dash.
func notation(size string) string { return firstNumber.ReplaceAllString(size, "") }

func bore(t *testing.T, size string) float64 {
	t.Helper()
	v, err := strconv.ParseFloat(firstNumber.FindString(size), 64)
	require.NoError(t, err, size)
	return v
}

// A material without limits could never be judged: it has its own, or those of what it is judged as. Reinforcements
// meet only what has come through the liner.
func TestMaterialsHaveLimits(t *testing.T) {
	for _, id := range shipped.IDs(catalog.Materials) {
		m, err := shipped.Material(id)
		require.NoError(t, err)
		if m.Family == "reinforcement" || m.JudgedAs != "" {
			continue
		}
		assert.NotNil(t, m.LowestC, id)
		assert.NotNil(t, m.HighestC, id)
	}
}
