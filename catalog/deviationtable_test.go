package catalog_test

import (
	"fmt"
	"maps"
	"math"
	"slices"
	"strings"
	"testing"
)

const deviationHeading = `# How far the property equations lie from other sources

Written by ` + "`go generate ./catalog`" + ` from testdata/published, where the sources are named. In per cent, catalog over source, at the
worst temperature between -20 and 150 degrees C. "Middle" is the median of the other sources at one temperature, "any" the
source that lies farthest away. A dash: no other source in hand, which is not the same as agreement. Minus means that the
catalog understates: of the vapour pressure that is the unsafe side, and the rules allow for it (` + "`understates_pct`" + `).

| fluid | vapour pressure, middle | any | density, middle | any |
|---|---:|---:|---:|---:|
`

// TestDeviationsFresh proves that catalog/DEVIATIONS.md says what the comparison gives.
func TestDeviationsFresh(t *testing.T) {
	psat, _ := comparisons(t, "psat")
	rho, _ := comparisons(t, "rho_l")
	fluids := map[string]bool{}
	for _, row := range published(t, "fluid_verdicts.csv") {
		fluids[row["fluid"]] = true
	}
	var b strings.Builder
	b.WriteString(deviationHeading)
	for _, id := range slices.Sorted(maps.Keys(fluids)) {
		pm, pf := worst(psat[id], "psat")
		rm, rf := worst(rho[id], "rho_l")
		fmt.Fprintf(&b, "| %s | %s | %s | %s | %s |\n", id, ofMiddle(pm), ofFarthest(pf), ofMiddle(rm), ofFarthest(rf))
	}
	fresh(t, "DEVIATIONS.md", b.String())
}

func ofMiddle(p *point) string {
	if p == nil {
		return "–"
	}
	return percent(p.middle, p.celsius)
}

func ofFarthest(p *point) string {
	if p == nil {
		return "–"
	}
	return percent(p.farthest, p.celsius)
}

// percent rounds to a tenth; 0.0 has no sign.
func percent(v, celsius float64) string {
	if v = math.Round(v*10) / 10; v == 0 {
		v = 0
	}
	return fmt.Sprintf("%+.1f (%g °C)", v, celsius)
}
