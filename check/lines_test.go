package check_test

import (
	"context"
	"path/filepath"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"

	"lineworthy/check"
	"lineworthy/check/report"
	"lineworthy/check/sheet"
)

// engine is shared: an Engine is safe for concurrent use, and compiling the rules takes a while.
func engine(t testing.TB) *check.Engine {
	t.Helper()
	e, err := shared()
	require.NoError(t, err)
	return e
}

func judge(t testing.TB, path string) *report.Verdict {
	t.Helper()
	line, err := sheet.Read(path)
	require.NoError(t, err)
	v, err := engine(t).Check(context.Background(), line)
	require.NoError(t, err)
	return v
}

func linePath(name string) string { return filepath.Join("..", "testdata", "lines", name, "line.yaml") }

// found are the rules that fired with their count, conditions to confirm left out.
func found(v *report.Verdict, severity ...string) map[string]int {
	out := map[string]int{}
	for _, f := range v.Findings {
		if len(severity) == 0 || slices.Contains(severity, f.Severity) {
			out[f.Rule]++
		}
	}
	return out
}

// TestCases holds the three investigated accidents to what their reports establish: these findings, and no others.
//
// C1: NTSB HAZ-12-01-SUM and letters H-12-2 to -6. C2: CSB case study, January 2018. C3: CSB case study 2008-02-I-IA.
func TestCases(t *testing.T) {
	for name, want := range map[string]struct {
		word  report.Word
		rules map[string]int
	}{
		"ammonia-lpg-hose": {report.Unfit, map[string]int{
			"material/reinforcement_attacked_through_liner":   1,
			"service/hose_not_for_ammonia":                    1,
			"identity/hose_not_the_assigned_one":              1,
			"service/passive_shutoff_acts_on_separation_only": 1,
		}},
		"ammonia-lpg-hose-corrected": {report.Conditional, map[string]int{
			"service/passive_shutoff_acts_on_separation_only": 1,
		}},
		"acid-into-hypochlorite": {report.Unfit, map[string]int{
			"isolation/same_coupling_in_reach":      1,
			"identity/point_holds_another_fluid":    1,
			"marking/point_unmarked_among_others":   2,
			"isolation/no_remote_or_automatic_stop": 1,
		}},
		"acid-into-hypochlorite-corrected": {report.Conditional, map[string]int{}},
		"ethyl-acetate-tote": {report.Unfit, map[string]int{
			"static/isolated_conductor_at_open_point": 3,
			"static/splash_filling":                   1,
			"service/outside_hose_class":              1,
		}},
		"ethyl-acetate-tote-corrected": {report.Conditional, map[string]int{}},
	} {
		t.Run(name, func(t *testing.T) {
			v := judge(t, linePath(name))
			require.Equal(t, want.rules, found(v))
			require.Equal(t, want.word, v.Word, v.Unjudged)
		})
	}
}
