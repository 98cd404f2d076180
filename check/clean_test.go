package check_test

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/check/report"
)

// clean are the shipped lines that a careful engineer would stand by: the tool must find no ground to stop them and
// nothing left open. All are invented; what is asked of each trade is common practice, no source.
var clean = []string{
	"acetone-pump", "acid-into-hypochlorite-corrected", "air-tools", "ammonia-lpg-hose-corrected", "ammonia-nurse",
	"butanone-day-tank", "caustic-ibc", "cip-dairy", "dairy-steamed", "diesel-generator", "ethyl-acetate-tote-corrected", "hydraulic-rig",
	"hydrogen-reactor", "lpg-bobtail", "nitrogen-inerting", "oxygen-furnace", "phosphoric-ibc", "steam-sterilise",
	"sunflower-tanker", "toluene-yard-corrected",
}

// faulty are the shipped lines with faults in them, or with too little said.
var faulty = []string{"acid-into-hypochlorite", "ammonia-lpg-hose", "caustic-drum", "ethyl-acetate-tote", "palm-oil-tanker", "toluene-yard"}

// Every shipped line is on one of the two lists, so that none escapes the count.
func TestEveryLineIsCleanOrFaulty(t *testing.T) {
	paths, err := filepath.Glob(linePath("*"))
	require.NoError(t, err)
	var shipped []string
	for _, p := range paths {
		shipped = append(shipped, filepath.Base(filepath.Dir(p)))
	}
	assert.ElementsMatch(t, slices.Concat(clean, faulty), shipped)
}

// TestClean counts what the tool says against lines that are right. A stop or an open question here is a false alarm, and
// false alarms teach people to look away. Conditions are shown: how many rules, and at how many places.
func TestClean(t *testing.T) {
	var table strings.Builder
	fmt.Fprintf(&table, "\n%-34s %-11s %5s %10s %6s %5s %8s %10s\n", "line", "verdict", "stops", "conditions", "places", "notes", "unjudged", "to confirm")
	stops, open := 0, 0
	for _, name := range clean {
		v := judge(t, linePath(name))
		bad, conditions, notes := found(v, "stop"), found(v, "condition"), found(v, "note")
		fmt.Fprintf(&table, "%-34s %-11s %5d %10d %6d %5d %8d %10d\n", name, v.Word, sum(bad), len(conditions), sum(conditions), len(notes), len(v.Unjudged), len(v.Confirm))
		stops, open = stops+sum(bad), open+len(v.Unjudged)
		assert.Contains(t, []report.Word{report.Fit, report.Conditional}, v.Word, name)
		assert.Empty(t, bad, name)
		assert.Empty(t, v.Unjudged, name)
	}
	t.Logf("%sfalse stops: %d, false questions: %d, of %d clean lines", table.String(), stops, open, len(clean))
}

func sum(counts map[string]int) int {
	n := 0
	for _, c := range counts {
		n += c
	}
	return n
}

func readLine(t testing.TB, name string) string {
	t.Helper()
	text, err := os.ReadFile(linePath(name))
	require.NoError(t, err)
	return string(text)
}
