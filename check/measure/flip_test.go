package measure_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"lineworthy/check/measure"
	"lineworthy/check/units"
)

func nan() float64 { return math.NaN() }

// margin10 is the margin of V10.1 in bar.
func margin10(celsius, need, dynamic float64) float64 {
	h := no(measure.WeakestAt(hoseAndGasket(dynamic), demand(need), c(celsius)))
	return float64(h.Have-h.Need) / bar
}

// Computed: what flips V10.1 at 50 °C.
func TestV14_1(t *testing.T) {
	at, ok := measure.WindowFlip(no(measure.Window(hoseAndGasket(0.8), demand(7.5))), c(50))
	assert.True(t, ok)
	within(t, 20+5.0/6, at.Minus(c(50)), 1e-9)
	need, ok := measure.FlipLinear(7.5, []float64{0, 20}, func(x float64) float64 { return margin10(50, x, 0.8) })
	assert.True(t, ok)
	within(t, 2.5, need-7.5, 1e-9)
	prints(t, 0.33, measure.Flip{Nominal: 7.5, At: need}.Relative(), 2)
	// The gasket takes over at a factor of 1.28.
	dynamic, ok := measure.FlipLinear(0.8, []float64{0, 1}, func(x float64) float64 { return margin10(50, 7.5, x) })
	assert.True(t, ok)
	within(t, 0.60, dynamic, 1e-9)
}

// Computed: what flips V2.11.
func TestV14_2(t *testing.T) {
	capacity := measure.ReliefCapacity(50*mm2, 0.7, relieved, air15)
	flow := func(cv float64) float64 {
		g := measure.Gas{MolarMass: 28.0134, K: 1.4, Z: 1.0485, T: 288.15}
		return measure.ValveGasFlow(units.FromCv(cv), 200*bar+seaLevel, seaLevel, 0.75, g)
	}
	cv, ok := measure.FlipSearch(0.06, 0.01, 0.2, func(x float64) float64 { return capacity - flow(x) })
	assert.True(t, ok)
	near(t, 0.0670, cv, 2e-3)
	factor, ok := measure.FlipSearch(1, 0.5, 2, func(x float64) float64 { return capacity - x*flow(0.06) })
	assert.True(t, ok)
	near(t, 1.117, factor, 2e-3)
	near(t, 0.117, measure.Flip{Nominal: 0.06, At: cv}.Relative(), 1e-2) // three digits of a difference
	within(t, 0.117, measure.Flip{Nominal: 1, At: factor}.Relative(), 1.117*2e-3)
}

// Computed: 95 % acetone shut at 15 °C, against the sun.
func TestV14_3(t *testing.T) {
	v := exact(t, padded(t, "acetone", 0.95), acetoneRho)
	full := no(measure.LiquidFull(v))
	within(t, 51.3, full.Celsius(), 0.3)
	within(t, 36.3, full.Minus(c(15)), 0.3)
	assert.Less(t, full, c(65))
}

// Of several changes the nearest counts, on either side; none in the range is said so.
func TestFlipNearest(t *testing.T) {
	saw := func(x float64) float64 { return math.Sin(x) }
	for nominal, want := range map[float64]float64{3: math.Pi, 3.5: math.Pi, 5: 2 * math.Pi, 1: math.Pi} {
		at, ok := measure.FlipSearch(nominal, 0.5, 7, saw)
		assert.True(t, ok)
		within(t, want, at, 1e-9)
	}
	_, ok := measure.FlipSearch(1, 0.5, 3, saw)
	assert.False(t, ok)
	_, ok = measure.WindowFlip(nil, 300)
	assert.False(t, ok)
}

func TestFlipsAreRanked(t *testing.T) {
	flips := []measure.Flip{
		{Name: "far", Nominal: 1, At: 5, Found: true, Uncertainty: 1}, {Name: "none", Uncertainty: 1},
		{Name: "down", Nominal: 1, At: 0, Found: true, Uncertainty: 0.5}, {Name: "unsaid", At: 1, Found: true},
		{Name: "near", Nominal: 1, At: 2, Found: true, Uncertainty: 1},
	}
	var names []string
	for _, f := range measure.Nearest(flips, 3) {
		names = append(names, f.Name)
	}
	assert.Equal(t, []string{"near", "down", "far"}, names)
	assert.Len(t, measure.Nearest(flips, 9), 5)
	assert.Equal(t, -2.0, flips[2].Z())
	assert.Equal(t, 5.0, measure.MarginSpread([]float64{1, -2}, []float64{3, 2}))
}

// On a straight margin the search finds what the exact solution gives.
func TestFlipFormsAgree(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		slope := rapid.Float64Range(0.1, 10).Draw(t, "slope")
		zero := rapid.Float64Range(-9, 9).Draw(t, "zero")
		nominal := rapid.Float64Range(-10, 10).Draw(t, "nominal")
		m := func(x float64) float64 { return slope * (zero - x) }
		a, okA := measure.FlipLinear(nominal, []float64{-10, 10}, m)
		b, okB := measure.FlipSearch(nominal, -10, 10, m)
		assert.True(t, okA && okB)
		within(t, zero, a, 1e-9)
		within(t, zero, b, 1e-9)
	})
}
