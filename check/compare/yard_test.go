package compare_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestYard: relief devices are added, and what they relieve is shown with its margin before and after.
func TestYard(t *testing.T) {
	r := review(t, text(t, "toluene-yard"), text(t, "toluene-yard-corrected"))
	design, records := told(r)
	assert.Equal(t, []string{
		"vessel returnable relief.set:  > 6 bar(g)", "vessel returnable relief.area:  > 50 mm2", "vessel returnable relief.kdr:  > 0.7",
		"added fitting T1", "added relief RV1", "added fitting T2", "added relief RV2",
	}, design)
	assert.Equal(t, []string{"the line line: TY-22 > TY-22-C"}, records)
	assert.Empty(t, went(r)["appears"])
	assert.Contains(t, went(r)["clears"], "pressure/rating_below_demand")
	followed := 0
	for _, m := range r.Findings {
		if m.Rule == "pressure/rating_below_demand" && m.Way == "clears" {
			require.NotNil(t, m.Before, m.Place)
			if m.Why == "what it was about is no longer there" {
				continue // the joint between H2 and V2 now has a tee in it
			}
			followed++
			require.NotNil(t, m.After, m.Place)
			assert.Equal(t, byte('-'), m.Before.Margin[0], m.Place)
			assert.Equal(t, byte('+'), m.After.Margin[0], m.Place)
		}
	}
	assert.Greater(t, followed, 10)
	assert.NotEqual(t, r.Old.Governing.Margin, r.New.Governing.Margin)
}

// TestBackwards: the same two sheets the other way round make everything worse.
func TestBackwards(t *testing.T) {
	forth := review(t, text(t, "toluene-yard"), text(t, "toluene-yard-corrected"))
	back := review(t, text(t, "toluene-yard-corrected"), text(t, "toluene-yard"))
	assert.Equal(t, went(forth)["clears"], went(back)["appears"])
	assert.NotEmpty(t, back.Worse)
	assert.Len(t, back.Changes, len(forth.Changes))
}
