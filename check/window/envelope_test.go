package window

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"lineworthy/check/facts"
	"lineworthy/check/measure"
	"lineworthy/check/units"
)

func table(scale float64, pairs ...float64) facts.Hold {
	c := &measure.Curve{}
	for i := 0; i < len(pairs); i += 2 {
		c.T, c.Y = append(c.T, units.Celsius(pairs[i])), append(c.Y, pairs[i+1])
	}
	return facts.Hold{Table: c, Scale: scale}
}

func thing(id string, holds ...facts.Hold) facts.Strength {
	return facts.Strength{ID: id, Part: id, What: "body", Holds: holds}
}

const bar = 1e5

// Made-up tables, every crossing worked out by hand.
func TestEnvelope(t *testing.T) {
	steps := table(bar, 20, 10, 50, 8, 80, 4)
	steps.Table.Steps = true
	flat := table(bar, 20, 10, 80, 4)
	flat.Table.FlatFrom = units.Celsius(-40)
	type row struct{ c, barg float64 } // each piece from its left end, and the right end of the last
	for name, w := range map[string]struct {
		items []facts.Strength
		lo    float64
		hi    float64
		want  []row
	}{
		// 10 - t/10 meets the flat 6 at 40 °C.
		"line and flat": {[]facts.Strength{thing("a", table(bar, 0, 10, 80, 2)), thing("b", facts.Hold{Flat: 6 * bar})}, 0, 80, []row{{0, 6}, {40, 6}, {80, 2}}},
		// 600/t meets 20 - t/10 where t^2 - 200 t + 6000 = 0: t = 100 - sqrt(4000) = 36.754447.
		"hyperbola and line": {[]facts.Strength{thing("a", facts.Hold{PerCelsius: 600 * bar}), thing("b", table(bar, 0, 20, 150, 5))}, 0, 100, []row{{0, 20}, {36.7544467966324, 16.32455532033676}, {100, 6}}},
		// 600/t meets the flat 12 at 50 °C.
		"hyperbola and flat": {[]facts.Strength{thing("a", facts.Hold{PerCelsius: 600 * bar}, facts.Hold{Flat: 12 * bar})}, -20, 100, []row{{-20, 12}, {50, 12}, {100, 6}}},
		"steps":              {[]facts.Strength{thing("a", steps)}, 20, 80, []row{{20, 8}, {50, 4}, {80, 4}}},
		"flat below":         {[]facts.Strength{thing("a", flat)}, -40, 80, []row{{-40, 10}, {20, 10}, {80, 4}}},
		"a factor":           {[]facts.Strength{thing("a", table(20*bar, 0, 1, 100, 0.5), facts.Hold{Flat: 15 * bar})}, 0, 100, []row{{0, 15}, {50, 15}, {100, 10}}},
	} {
		t.Run(name, func(t *testing.T) {
			got := envelope(w.items, w.lo, w.hi)
			require.Len(t, got, len(w.want)-1)
			for i, p := range got {
				assert.InDelta(t, w.want[i].c, p.FromC, 1e-9)
				assert.InDelta(t, w.want[i].barg*100, p.FromKPa, 1e-6)
			}
			last := got[len(got)-1]
			assert.InDelta(t, w.want[len(got)].c, last.ToC, 1e-9)
			assert.InDelta(t, w.want[len(got)].barg*100, last.ToKPa, 1e-6)
		})
	}
}

// The envelope is the lowest of what the things hold, whatever the tables, and names a thing that holds just that.
func TestEnvelopeIsTheLowest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		y := rapid.SliceOfN(rapid.Float64Range(0.1, 30), 9, 9).Draw(t, "y")
		items := []facts.Strength{
			thing("a", table(bar, 0, y[0], 30, y[1], 60, y[2], 120, y[3])), thing("b", table(bar, 0, y[4], 55, y[5], 120, y[6])),
			thing("c", facts.Hold{Flat: units.GaugePressure(y[7] * bar)}, facts.Hold{PerCelsius: y[8] * 60 * bar}),
		}
		c := rapid.Float64Range(0.001, 119.999).Draw(t, "celsius")
		for _, p := range envelope(items, 0, 120) {
			if c < p.FromC || c > p.ToC {
				continue
			}
			low, who := units.GaugePressure(1e12), ""
			for _, s := range items {
				if have, ok := s.Known(units.Celsius(c)); ok && have < low {
					low, who = have, name(s)
				}
			}
			require.InDelta(t, float64(low), p.form.at(c), 1, "%v °C", c)
			if d := c - p.FromC; d > 1e-3 && p.ToC-c > 1e-3 {
				require.Contains(t, p.Weakest, who)
			}
		}
	})
}
