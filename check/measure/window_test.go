package measure_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"lineworthy/check/measure"
	"lineworthy/check/units"
)

// curve is a table of pairs: °C, and bar(g) or a factor times scale.
func curve(scale float64, pairs ...float64) (out measure.Curve) {
	for i := 0; i < len(pairs); i += 2 {
		out.T, out.Y = append(out.T, c(pairs[i])), append(out.Y, pairs[i+1]*scale)
	}
	return out
}

// hoseAndGasket are the made-up items of V10.
func hoseAndGasket(dynamic float64) []measure.Rated {
	return []measure.Rated{
		{ID: "hose", Table: curve(bar, 20, 16, 40, 14, 60, 11, 80, 8), Factor: []float64{dynamic}},
		{ID: "gasket", Table: curve(bar, -20, 25, 50, 16, 90, 6)},
	}
}

func demand(barg float64) measure.Curve { return curve(bar, -50, barg, 200, barg) }

// Computed on made-up tables.
func TestV10_1(t *testing.T) {
	at := no(measure.WeakestAt(hoseAndGasket(0.8), demand(7.5), c(50)))
	assert.Equal(t, "hose", at.ID)
	near(t, 10.0*bar, at.Have, 1e-9)
	in := no(measure.Window(hoseAndGasket(0.8), demand(7.5)))
	require.Len(t, in, 1)
	within(t, 20, in[0].From.Celsius(), 1e-9)
	within(t, 70+5.0/6, in[0].To.Celsius(), 1e-9)
	prints(t, 70.8333, in[0].To.Celsius(), 4)
}

func TestV10_2(t *testing.T) {
	for celsius, want := range map[float64]float64{20: 12.8, 60: 8.8, 75: 7.0, 80: 6.4} {
		near(t, want*bar, no(measure.WeakestAt(hoseAndGasket(0.8), demand(7.5), c(celsius))).Have, 1e-9)
	}
}

func TestV10_3(t *testing.T) {
	_, err := measure.WeakestAt(hoseAndGasket(0.8), demand(7.5), c(90))
	refuses(t, err)
	_, err = measure.WeakestAt(hoseAndGasket(0.8), demand(7.5), c(201))
	refuses(t, err)
}

func TestV10_4(t *testing.T) {
	items := hoseAndGasket(0.8)
	items[0].Table.Steps = true
	near(t, 8.8*bar, no(measure.WeakestAt(items, demand(7.5), c(50))).Have, 1e-9)
}

// A cold limit and a hot limit, two windows, none, a table of steps, and two sloping tables, each by hand.
func TestWindowIntervals(t *testing.T) {
	type spans [][2]float64
	steps := curve(bar, 20, 10, 50, 8, 80, 4)
	steps.Steps = true
	flat := curve(bar, 20, 10, 80, 4)
	flat.FlatFrom = c(-40)
	for name, w := range map[string]struct {
		item   measure.Rated
		demand measure.Curve
		want   spans
	}{
		"cold and hot": {measure.Rated{Table: curve(bar, -40, 0, 20, 10, 80, 4)}, demand(7), spans{{2, 50}}},
		"two windows":  {measure.Rated{Table: curve(bar, 0, 10, 20, 2, 40, 10)}, demand(6), spans{{0, 10}, {30, 40}}},
		"none":         {measure.Rated{Table: curve(bar, 0, 10, 40, 10)}, demand(11), nil},
		"at the limit": {measure.Rated{Table: curve(bar, 0, 10, 40, 10)}, demand(10), spans{{0, 40}}},
		"steps":        {measure.Rated{Table: steps}, demand(7), spans{{20, 50}}},
		"flat below":   {measure.Rated{Table: flat}, demand(7), spans{{-40, 50}}},
		// (10 - t/10)(1 - t/100) = 10 (1 - t/100)^2 = 2.5 at 50 °C
		"two slopes": {measure.Rated{Table: curve(bar, 0, 10, 100, 0), By: []measure.Curve{curve(1, 0, 1, 100, 0)}},
			demand(2.5), spans{{0, 50}}},
		"rising demand": {measure.Rated{Table: curve(bar, 0, 10, 100, 10)}, curve(bar, 0, 0, 50, 20), spans{{0, 25}}},
	} {
		in := no(measure.Window([]measure.Rated{w.item}, w.demand))
		if assert.Len(t, in, len(w.want), name) {
			for i := range in {
				assert.InDelta(t, w.want[i][0], in[i].From.Celsius(), 1e-9, name)
				assert.InDelta(t, w.want[i][1], in[i].To.Celsius(), 1e-9, name)
			}
		}
	}
	slope := curve(1, 0, 1, 100, 0)
	_, err := measure.Window([]measure.Rated{{ID: "H1", Table: slope, By: []measure.Curve{slope, slope}}}, demand(0))
	assert.ErrorContains(t, err, "H1 has 3 tables")
	_, err = measure.Window([]measure.Rated{{ID: "H1"}}, demand(0))
	assert.ErrorContains(t, err, "H1: the rating table is empty")
	_, err = measure.Window(nil, curve(1, 50, 1, 20, 1))
	assert.ErrorContains(t, err, "does not rise")
}

// Within the window the weakest item holds the demand, outside it does not, whatever the tables.
func TestWindowAgreesWithWeakest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		y := rapid.SliceOfN(rapid.Float64Range(0, 20), 8, 8).Draw(t, "y")
		items := []measure.Rated{
			{ID: "a", Table: curve(bar, 0, y[0], 30, y[1], 60, y[2]), By: []measure.Curve{curve(0.1, 0, y[6], 60, y[7])}},
			{ID: "b", Table: curve(bar, -10, y[3], 50, y[4], 70, y[5])},
		}
		at := c(rapid.Float64Range(0, 60).Draw(t, "celsius"))
		held := no(measure.WeakestAt(items, demand(5), at))
		inside := false
		for _, i := range no(measure.Window(items, demand(5))) {
			inside = inside || at >= i.From && at <= i.To
		}
		if margin := held.Have - held.Need; margin > 1 || margin < -1 { // Pa
			assert.Equal(t, margin > 0, inside)
		}
	})
}

func TestRatingFalls(t *testing.T) {
	items := hoseAndGasket(0.8)
	rapid.Check(t, func(t *rapid.T) {
		at := rapid.Float64Range(20, 79).Draw(t, "celsius")
		a := no(measure.WeakestAt(items, demand(7.5), c(at)))
		b := no(measure.WeakestAt(items, demand(7.5), c(at+1)))
		assert.GreaterOrEqual(t, a.Have, b.Have)
	})
	_, err := items[0].Table.At(units.Temperature(nan()))
	refuses(t, err)
	_, err = measure.Curve{}.At(300)
	assert.ErrorContains(t, err, "empty")
}

func BenchmarkWindow(b *testing.B) {
	items := hoseAndGasket(0.8)
	for b.Loop() {
		_, _ = measure.Window(items, demand(7.5))
	}
}
