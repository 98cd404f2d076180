package suggest_test

import (
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"lineworthy/check/sheet"
	"lineworthy/check/suggest"
)

// yard is the sheet of toluene-yard with texts replaced, each of which it has to hold.
func yard(t testing.TB, pairs ...string) []byte {
	text, err := os.ReadFile(linePath("toluene-yard"))
	require.NoError(t, err)
	for i := 0; i+1 < len(pairs); i += 2 {
		require.Contains(t, string(text), pairs[i])
		text = []byte(strings.Replace(string(text), pairs[i], pairs[i+1], 1))
	}
	return text
}

func added(r *suggest.Result) (out []suggest.Change) {
	for _, o := range r.Offers {
		for _, c := range o.Changes {
			if c.Kind == "relief" {
				out = append(out, c)
			}
		}
	}
	return out
}

// TestReliefsAdded: a device behind the regulator, on the vessel and in the section, with what each still has to prove.
func TestReliefsAdded(t *testing.T) {
	o := forLine(t, "toluene-yard", suggest.Options{}).Offers[0]
	var where []string
	for _, c := range o.Changes {
		where = append(where, c.Where)
	}
	require.Equal(t, []string{"RV1", "returnable", "RV2"}, where)
	needs := strings.Join(o.Needs, "\n")
	for _, id := range []string{"RV1", "RV2", "the relief device of returnable"} {
		for _, need := range []string{"the size of " + id + " by calculation", "the certificate of " + id, "the first test of " + id, "the outlet of " + id + " led to a safe place"} {
			require.Contains(t, needs, need)
		}
	}
	text := string(o.Text)
	require.Regexp(t, `(?s)- id: PR1\n.*- id: T1\n.*- id: RV1\n.*- id: CV1\n.*- id: H2\n.*- id: T2\n.*- id: RV2\n.*- id: V2\n`, text)
	require.Regexp(t, `(?m)^        tested: 2026-11-25 # to be done and recorded$`, text)
	require.NotContains(t, text, "!end")
}

// TestReliefNotDoubled: a line that has a device gets no second one of its kind.
func TestReliefNotDoubled(t *testing.T) {
	require.Empty(t, added(forLine(t, "toluene-yard-corrected", suggest.Options{})))

	twin, err := os.ReadFile(linePath("toluene-yard-corrected"))
	require.NoError(t, err)
	tooSmall := strings.Replace(string(twin), "area: 50 mm2\n        kdr: 0.7\n        isolatable", "area: 1 mm2\n        kdr: 0.7\n        isolatable", 1)
	require.NotEqual(t, string(twin), tooSmall)
	require.Empty(t, added(suggestions(t, "twin.yaml", []byte(tooSmall), suggest.Options{})), "RV1 is too small, and a second is no cure for that")
}

// TestReliefNotForOnePart: what the site keeps names no relief devices, and one part asked for is one part.
func TestReliefNotForOnePart(t *testing.T) {
	require.Empty(t, added(forLine(t, "toluene-yard", suggest.Options{Part: "H2"})))
	require.Empty(t, added(forLine(t, "toluene-yard", suggest.Options{Stock: &suggest.Stock{}})))
}

// TestSetBelowWeakest: whatever the weakest part holds, no device is offered that opens above it, nor one that opens at what
// the line sees in ordinary operation.
func TestSetBelowWeakest(t *testing.T) {
	const operatingBar = 3.5 // the regulator of the line at lock-up, and the head
	old := "rated: 10 bar(g)\n        burst: 40 bar(g)"
	offered := 0
	for _, bar := range []float64{4, 5, 6, 7.5, 9, 10} {
		rated := strconv.FormatFloat(bar, 'f', -1, 64)
		r := suggestions(t, "yard.yaml", yard(t, old, "rated: "+rated+" bar(g)\n        burst: 40 bar(g)"), suggest.Options{})
		for _, o := range r.Offers {
			weakest := min(10, hoseBar(t, o.Text))
			for _, set := range setsBar(t, o.Text) {
				offered++
				require.Greater(t, set, operatingBar, rated)
				require.LessOrEqual(t, set*1.1, weakest+1e-9, rated)
			}
		}
	}
	require.Greater(t, offered, 10)
}

func setsBar(t *testing.T, text []byte) (out []float64) {
	line, err := sheet.Parse("offer.yaml", text)
	require.NoError(t, err)
	for _, v := range line.Vessels {
		if v.V.Relief != nil {
			out = append(out, barOf(t, v.V.Relief.Set.Text))
		}
	}
	for _, r := range line.Runs {
		for _, p := range r.V.Parts {
			if p.Kind.V == "relief" {
				out = append(out, barOf(t, p.Set.Text))
			}
		}
	}
	return out
}

func hoseBar(t *testing.T, text []byte) float64 {
	line, err := sheet.Parse("offer.yaml", text)
	require.NoError(t, err)
	for _, r := range line.Runs {
		for _, p := range r.V.Parts {
			if p.ID.V == "H2" && p.Rated.Set {
				return barOf(t, p.Rated.Text)
			}
		}
	}
	return 1e9
}

func barOf(t *testing.T, text string) float64 {
	bar, err := strconv.ParseFloat(strings.TrimSuffix(text, " bar(g)"), 64)
	require.NoError(t, err, text)
	return bar
}

// TestReliefUnknownWeakest: where it is not known what the weakest part holds, no set pressure is made up.
func TestReliefUnknownWeakest(t *testing.T) {
	text := yard(t, "rated: 40 bar(g)\n        lowest: -15 °C", "lowest: -15 °C")
	for _, c := range added(suggestions(t, filepath.Join("x", "yard.yaml"), text, suggest.Options{})) {
		require.NotContains(t, c.After, "behind PR1")
	}
}
