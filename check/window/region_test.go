package window_test

import (
	"context"
	"fmt"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"lineworthy/catalog"
	"lineworthy/check"
	"lineworthy/check/report"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
	"lineworthy/check/window"
)

var engine = sync.OnceValues(func() (*check.Engine, error) {
	return check.New(context.Background(), check.Options{Version: "test", AsOf: units.Date{Days: 20782}})
})

// made is a line of one run from a supply, with a hose that derates, flanges by class, and gaskets of which some have the
// two limits that never apply together.
type made struct {
	class, material, hose, kind, gasket string
	hoseBar, partBar                    float64
}

func (m made) text(celsius, kpa float64) string {
	return fmt.Sprintf(`line: W-1
as_of: 2026-11-25
site: {lowest: %[1]s, highest: %[1]s, sun: indoors}
fluids:
  gas: {fluid: nitrogen, temperature: {lowest: %[1]s, highest: %[1]s}}
vessels:
  tank: {vent: open, material: S31603, points: {in: {standard: flange-asme-b16-5, size: NPS 1, class: "%[3]s", facing: RF, material: %[4]s}}}
runs:
  gas:
    carries: [gas]
    source:
      supply: %[2]s
      end: {standard: flange-asme-b16-5, size: NPS 1, class: "%[3]s", facing: RF, material: %[4]s, seal: {kind: %[6]s, size: NPS 1, material: %[7]s}}
    to: {vessel: tank, inlet: in}
    parts:
      - id: H1
        kind: hose
        class: %[5]s
        size: DN 25
        rated: %[8]g bar(g)
        evidence: certificate
        layers: {liner: %[10]s, reinforcement: BRAID-AUS}
        inlet: {standard: flange-asme-b16-5, size: NPS 1, class: "%[3]s", facing: RF, material: %[4]s}
        outlet: {standard: flange-asme-b16-5, size: NPS 1, class: "%[3]s", facing: RF, material: %[4]s, seal: {kind: %[6]s, size: NPS 1, material: %[7]s}}
      - id: F1
        kind: fitting
        material: S31603
        rated: %[9]g bar(g)
        lowest: -60 °C
        highest: 180 °C
        evidence: certificate
        inlet: {standard: flange-asme-b16-5, size: NPS 1, class: "%[3]s", facing: RF, material: %[4]s}
        outlet: {standard: flange-asme-b16-5, size: NPS 1, class: "%[3]s", facing: RF, material: %[4]s, seal: {kind: %[6]s, size: NPS 1, material: %[7]s}}
`, fmt.Sprintf("%.9f °C", celsius), fmt.Sprintf("%.9f kPa(g)", kpa), m.class, m.material, m.hose, m.kind, m.gasket, m.hoseBar, m.partBar,
		map[string]string{"en-16643-sc": "PTFE", "iso-10380-s31603": "S31603"}[m.hose])
}

func draw(t *rapid.T) made {
	gaskets := [][2]string{{"rubber-cloth", "EPDM"}, {"ptfe-sheet", "PTFE"}, {"ptfe-expanded", "PTFE"}, {"rubber-sheet", "EPDM"}}
	g := rapid.SampledFrom(gaskets).Draw(t, "gasket")
	return made{
		rapid.SampledFrom([]string{"150", "300"}).Draw(t, "class"),
		rapid.SampledFrom([]string{"S31603", "CS"}).Draw(t, "material"),
		rapid.SampledFrom([]string{"en-16643-sc", "iso-10380-s31603"}).Draw(t, "hose"), g[0], g[1],
		float64(rapid.IntRange(5, 80).Draw(t, "hose bar")), float64(rapid.IntRange(5, 80).Draw(t, "part bar")),
	}
}

func region(t require.TestingT, m made) window.Scope {
	line, err := sheet.Parse("w.yaml", []byte(m.text(20, 100)))
	require.NoError(t, err)
	r, err := window.Of(line, catalog.Open(), units.Date{Days: 20782})
	require.NoError(t, err)
	require.True(t, r.Scopes[0].Known, "%v", r.Scopes[0].Unknown)
	return r.Scopes[0]
}

func judge(t require.TestingT, m made, celsius, kpa float64) *report.Verdict {
	line, err := sheet.Parse("w.yaml", []byte(m.text(celsius, kpa)))
	require.NoError(t, err)
	e, err := engine()
	require.NoError(t, err)
	v, err := e.Check(context.Background(), line)
	require.NoError(t, err)
	return v
}

// against are the stops of pressure and temperature, and the ratings and limits that could not be judged.
func against(v *report.Verdict) (stops, open []string) {
	for _, f := range v.Findings {
		if f.Severity == "stop" && (f.Rule == "pressure/rating_below_demand" || strings.HasPrefix(f.Rule, "temperature/")) {
			stops = append(stops, f.Rule+" "+f.Subject)
		}
	}
	for _, u := range v.Unjudged {
		if u.Fact == "capacities.rated_kpa" || strings.HasPrefix(u.Fact, "limits.") {
			open = append(open, u.Fact+" "+u.Subject)
		}
	}
	return stops, open
}

// The facts round to a kilopascal and a hundredth of a kelvin, so a step is one of each and a hair.
const stepKPa, stepK = 1.001, 0.0101

// TestRegionIsWhatCheckAllows: every point inside the region is checked without a stop of pressure or temperature and with
// nothing left open; every point one step outside has a stop, or lies where the knowledge ends and is left open.
func TestRegionIsWhatCheckAllows(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m := draw(t)
		s := region(t, m)
		lo, hi := s.Lowest.C+stepK, s.Highest.C-stepK
		c := lo + (hi-lo)*rapid.Float64Range(0, 1).Draw(t, "temperature")
		top, ok := s.Allowed(c)
		require.True(t, ok)

		stops, open := against(judge(t, m, c, (top-stepKPa)*rapid.Float64Range(0, 1).Draw(t, "pressure")))
		require.Empty(t, stops, "inside at %v °C", c)
		require.Empty(t, open, "inside at %v °C", c)
		stops, _ = against(judge(t, m, c, top-stepKPa))
		require.Empty(t, stops, "just below %v kPa at %v °C", top, c)
		stops, _ = against(judge(t, m, c, top+stepKPa))
		require.NotEmpty(t, stops, "just above %v kPa at %v °C", top, c)

		for _, e := range []struct {
			edge *window.Edge
			c    float64
		}{{s.Lowest, s.Lowest.C - stepK}, {s.Highest, s.Highest.C + stepK}} {
			stops, open = against(judge(t, m, e.c, 10))
			if e.edge.Limit {
				require.NotEmpty(t, stops, "beyond %v", e.edge)
			}
			require.NotEmpty(t, append(stops, open...), "beyond %v", e.edge)
		}
	})
}
