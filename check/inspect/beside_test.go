package inspect_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"lineworthy/check/report"
)

// TestBesideTheSheet: what no rule compares with the sheet is compared here. Each row has a twin that clears.
func TestBesideTheSheet(t *testing.T) {
	for _, x := range []struct {
		at, reading string
		word        report.Word
		said        string
	}{
		{"day-tank/marked", "toluene", report.Unfit, "marked reads toluene, and the sheet says butanone"},
		{"day-tank/marked", "MEK", report.Conditional, ""}, // another name of the same fluid
		{"day-tank/marked", "Butanone", report.Conditional, ""},
		{"RV1/set", "8 bar(g)", report.Unfit, "set reads 8 bar(g), and the sheet says 6 bar(g)"},
		{"RV1/set", "5 bar(g)", report.Unfit, "it is not the device judged"},
		{"RV1/set", "87 psig", report.Conditional, ""}, // 6.0 bar(g)
		{"H1/bonded", "no", report.Unfit, "not there, on a line that carries what can burn"},
		{"day-tank/bonded", "no", report.Unfit, "not there, on a line that carries what can burn"},
		{"H1/bonded", "true", report.Conditional, ""},
		{"V1.outlet to H2.inlet/seal", "o-ring", report.Unfit, "the seal is o-ring, and the sheet says coupling-gasket"},
		{"V1.outlet to H2.inlet/seal", "coupling-gasket of FFKM", report.Conditional, ""},
		{"V1.outlet to H2.inlet/seal", "coupling-gasket of NBR", report.Unfit, ""}, // butanone dissolves it: the rules say so
		{"V1/rated", "40 bar(g)", report.Unproven, "rated reads 40 bar(g), and the sheet says 16 bar(g)"},
		{"V1/rated", "232 psig", report.Conditional, ""}, // 16.0 bar(g)
		{"V1/rated", "16.2 bar(g)", report.Unproven, "look again, or put the sheet right"},
		{"H1/made", "2025-05", report.Unproven, "made reads 2025-05, and the sheet says 2024-05"},
		{"H1/made", "2024-06", report.Unproven, "it is not the part judged"},
		{"H1/made", "2024-04", report.Unproven, "it is not the part judged"},
		{"H1/made", "2024-05-20", report.Conditional, ""},                              // a day of that month
		{"day-tank/rated", "0.3 bar(g)", report.Unproven, "it is not the part judged"}, // no rule holds an open vessel to it
		{"returnable/marked", "none", report.Unproven, "the label nitrogen of the sheet is gone"},
		{"PR1/tested", "2025-11-24", report.Unfit, ""}, // every 12 months: the rules say so
		{"PR1/tested", "2025-11-25", report.Conditional, ""},
		{"PR1/tested", "2026-11-26", report.Unfit, "still to come"},
		{"H1/marks", "ISO 10380, DN 12, 65 bar, maker, 2024", report.Unproven, "marks lack DN 10"},
		{"H1/marks", "DN10, Any Works, iso 10380, 65 BAR, 05-2024, no. 7", report.Conditional, ""},
		{"H1/condition", "Sound", report.Conditional, ""},
		{"V1/damage", "NONE", report.Conditional, ""},
	} {
		r := inspected(t, butanone, map[string]string{x.at: x.reading})
		require.Equal(t, x.word, r.Word, "%+v: %s %+v %+v", x, r.Reason, r.Rejected, r.Open)
		said := strings.Join(r.Open, " ")
		for _, j := range r.Rejected {
			said += j.Says
		}
		require.Contains(t, said, x.said)
		if x.said == "" {
			require.Empty(t, said)
		}
		if x.word == report.Conditional && !strings.Contains(x.reading, " of ") && !strings.HasSuffix(x.at, "/tested") && !strings.HasSuffix(x.at, "/marks") {
			require.Empty(t, r.Differs, "%+v", x)
		}
	}
}

// TestLowerPlateCounts: a plate that reads more than the sheet does not clear what the sheet fails.
func TestLowerPlateCounts(t *testing.T) {
	weak := edited(t, "acetone-pump", "shutoff: 3 bar(g)\n        rated: 10 bar(g)", "shutoff: 3 bar(g)\n        rated: 1 bar(g)")
	r := inspected(t, weak, map[string]string{"P1/rated": "10 bar(g)", "leak liquid/pressure": "1 bar(g)"})
	require.Empty(t, r.Rejected)
	require.Equal(t, report.Unfit, r.Word)
}

// TestWithoutCombustible: a bond that is off is told, and no more, where nothing burns.
func TestWithoutCombustible(t *testing.T) {
	path := edited(t, "cip-dairy", "kind: hose", "kind: hose\n        bonded: yes")
	r := inspected(t, path, map[string]string{"H1/bonded": "no"})
	require.Empty(t, r.Rejected)
	require.Len(t, r.Differs, 1)
}

// TestUnclearDamage: a remark that begins as if all were well is asked again.
func TestUnclearDamage(t *testing.T) {
	for _, word := range []string{"none found", "no damage", "No leak, but the handle is bent", "nothing", "none, I think", "all fine"} {
		l, _ := listOf(t, engine(t), butanone)
		_, err := l.Merge([]byte(fill(l, map[string]string{"V1/damage": word})))
		require.ErrorContains(t, err, "write none, or what is wrong", word)
	}
	require.Len(t, inspected(t, butanone, map[string]string{"V1/damage": "not tight"}).Rejected, 1)
}

// TestOverdueRegulator: the day read off its tag goes to the rule, which says it once.
func TestOverdueRegulator(t *testing.T) {
	r := inspected(t, butanone, map[string]string{"PR1/tested": "2025-11-24"})
	require.Empty(t, r.Rejected)
	require.Len(t, r.FromReadings, 1)
	require.Equal(t, "inspection/part_test_overdue", r.FromReadings[0].Rule)
}
