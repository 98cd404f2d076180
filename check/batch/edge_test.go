package batch

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/check/facts"
	"lineworthy/testdata/bench/oracle"
)

// edge is the first figure that a rule takes offence at, in a line that holds nothing else.
type edge struct {
	rule string
	put  func(*facts.Facts, int64)
	at   int64
}

// edges are limits that chance seldom hits: they are a share of another fact, or lie well above one.
func edges() []edge {
	relief := func(gas bool, test int64) func(*facts.Facts, int64) {
		return func(f *facts.Facts, over int64) {
			f.Tests = []facts.Test{{ID: "R1", Gas: gas, TestKPa: facts.Know(test), ReliefStated: true, ReliefOver: facts.Know(over)}}
		}
	}
	out := []edge{
		{"relief/test_relief_too_high", relief(true, 1000), 101},
		{"relief/test_relief_too_high", relief(true, 9000), 346},
		{"relief/test_relief_too_high", relief(false, 3000), 1001},
		{"temperature/steam_hotter_than_stated", func(f *facts.Facts, n int64) {
			f.Steams = []facts.Steam{{ID: "S1", KPa: facts.Know(300), SaturatedCK: facts.Know(n), StatedCK: facts.Know(40000)}}
		}, 40101},
		{"pressure/low_side_burst_below_ammonia_law", func(f *facts.Facts, n int64) {
			f.Line.Regimes = []string{"29 CFR 1910.111"}
			f.Hoses = []facts.Hose{{ID: "H1", Medium: "gas", Ammonia: true, LowSide: true, BurstKPa: facts.Know(10000), LowReliefKPa: facts.Know(n)}}
		}, 2001},
	}
	for _, w := range []struct {
		what                string
		withLiquid, withGas int64
	}{{"body", 1500, 1330}, {"end", 1500, 1330}, {"hose", 1500, 1000}, {"gauge", 1000, 1000}, {"pump", 1000, 1000},
		{"regulator", 1000, 1000}, {"seal", 1000, 1000}, {"vessel", 1000, 1000}} {
		for i, most := range []int64{w.withLiquid, w.withGas} {
			gas := i == 1
			out = append(out, edge{"pressure/test_above_part", func(f *facts.Facts, n int64) {
				f.TestItems = []facts.TestItem{{ID: "I1", What: w.what, Gas: gas, RatedKPa: facts.Know(1000), TestKPa: facts.Know(n), Ratio: facts.Know(n)}}
			}, most + 1})
		}
	}
	return out
}

// TestOracleAtEdges wants nothing below each edge and a finding on it, from the oracle and from the engine.
func TestOracleAtEdges(t *testing.T) {
	var lines [][]byte
	for _, e := range slices.Concat(edges(), boltEdges(), tailEdges(), endEdges(), lowSideEdges()) {
		for n := e.at - 1; n <= e.at; n++ {
			f := facts.Any(func(int) int { return 0 }, []string{"x"})
			e.put(f, n)
			line := text(t, f)
			read, err := oracle.Read(line)
			require.NoError(t, err)
			found := strings.Contains(string(read.Decide(nil, "x")), fmt.Sprintf("%q:%q", "rule", e.rule))
			assert.Equal(t, n == e.at, found, "%s at %d\n%s", e.rule, n, line)
			lines = append(lines, line)
		}
	}
	newOpinions().agree(t, lines, "guarded", "unguarded")
}
