package compare_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/check/compare"
)

// TestWorsensAndEases: the margin of a finding that stays is followed.
func TestWorsensAndEases(t *testing.T) {
	weak, weaker := []string{"rated: 10 bar(g)\n        burst", "rated: 2 bar(g)\n        burst"}, []string{"rated: 10 bar(g)\n        burst", "rated: 1 bar(g)\n        burst"}
	r := review(t, text(t, "toluene-yard-corrected", weak...), text(t, "toluene-yard-corrected", weaker...))
	assert.Contains(t, went(r)["worsens"], "pressure/rating_below_demand")
	r = review(t, text(t, "toluene-yard-corrected", weaker...), text(t, "toluene-yard-corrected", weak...))
	assert.Contains(t, went(r)["eases"], "pressure/rating_below_demand")
	assert.Empty(t, r.Worse)
}

// TestOpen: a finding does not clear because a fact it needs was taken off the sheet.
func TestOpen(t *testing.T) {
	late := []string{"tested: 2026-02-10\n        test_interval: 12 months\n        test_pressure: 97.5", "tested: 2024-02-10\n        test_interval: 12 months\n        test_pressure: 97.5"}
	gone := []string{"tested: 2026-02-10\n        test_interval: 12 months\n        test_pressure: 97.5", "test_interval: 12 months\n        test_pressure: 97.5"}
	r := review(t, text(t, "toluene-yard-corrected", late...), text(t, "toluene-yard-corrected", gone...))
	require.Equal(t, []string{"inspection/pressure_test_overdue"}, went(r)[compare.Open])
	assert.NotContains(t, went(r)["clears"], "inspection/pressure_test_overdue")
	assert.NotEmpty(t, r.Missing.Appear)
	assert.Equal(t, "unproven", string(r.New.Word))
	assert.Contains(t, strings.Join(r.Worse, "\n"), "cannot be judged any more")
}

// TestStored: two verdicts on one sheet that rest on another rule set or another catalog row.
func TestStored(t *testing.T) {
	old, now := *judged(t, text(t, "toluene-yard")).Verdict, *judged(t, text(t, "toluene-yard")).Verdict
	same := compare.Verdicts(&old, &now)
	assert.Empty(t, same.Rests)
	assert.Contains(t, same.Text(compare.Options{}), "rest on the same sheet, rules and catalog rows")
	now.Digests.Rules = strings.Repeat("a", 64)
	now.Findings = now.Findings[1:]
	r := compare.Verdicts(&old, &now)
	require.Len(t, r.Rests, 1)
	assert.Equal(t, "rules", r.Rests[0].What)
	assert.Contains(t, r.Text(compare.Options{}), "What flips comes from the")
	assert.Len(t, went(r)["clears"], 1)
	now.Digests.Catalog = map[string]string{"fluids/toluene": strings.Repeat("b", 64)}
	for _, x := range compare.Verdicts(&old, &now).Rests {
		if x.What != "rules" && x.What != "catalog fluids/toluene" {
			assert.Empty(t, x.Now, x.What)
		}
	}
}

// TestLayouts: text and Markdown hold the same answer, and a name from a sheet cannot become markup.
func TestLayouts(t *testing.T) {
	r := review(t, text(t, "toluene-yard"), text(t, "toluene-yard", "title: Toluene from a", "title: <b>Toluene from a", "rated: 65 bar(g)", "rated: 50 bar(g)"))
	for _, md := range []bool{false, true} {
		got := r.Text(compare.Options{Markdown: md})
		for _, want := range []string{"rating", "65 bar", "50 bar", "l)(2)(i)", "hose H1"} {
			assert.Contains(t, got, want)
		}
	}
	assert.NotContains(t, r.Text(compare.Options{Markdown: true}), "\n# <b>")
	assert.NotContains(t, r.Text(compare.Options{Markdown: true}), " <b>")
}
