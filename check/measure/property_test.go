package measure_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"lineworthy/check/measure"
	"lineworthy/check/units"
)

// Values at 20 °C of the equations of state (computed), against the catalog's equations.
func TestPropertiesAt20(t *testing.T) {
	for name, w := range map[string]struct{ rho, psat, expansion, kappa float64 }{
		"acetone": {790.19, 0.2466, 1.399e-3, 1.233e-9},
		"toluene": {866.82, 0.0292, 1.069e-3, 8.84e-10},
		"hexane":  {659.29, 0.1616, 1.361e-3, 1.607e-9},
		"propane": {500.06, 8.365, 3.087e-3, 5.534e-9},
		"butane":  {578.59, 2.077, 1.972e-3, 2.799e-9},
		"water":   {998.207, 0.02339, 2.075e-4, 4.583e-10},
		"ethanol": {789.34, 0.0588, 1.080e-3, 1.119e-9},
	} {
		f, l := fluid(t, name), liquid(t, name)
		near(t, w.rho, no(measure.LiquidDensity(l.Density, l.MolarMass, c(20))), 2e-3)
		near(t, w.psat*bar, no(measure.VapourPressure(equation(f.VapourP), c(20))), 5e-3)
		near(t, w.expansion, no(l.Expansion(c(20))), 3e-2) // at 5 bar above saturation there, at saturation here
		near(t, w.kappa, no(measure.Compressibility(l.Compressibility, c(20))), 3e-2)
	}
}

func TestPropertiesRefuse(t *testing.T) {
	l, f := liquid(t, "acetone"), fluid(t, "acetone")
	for _, k := range []units.Temperature{l.Density.From - 1, 600, units.Temperature(nan())} {
		_, err := measure.LiquidDensity(l.Density, l.MolarMass, k)
		refuses(t, err)
		_, err = measure.VapourPressure(equation(f.VapourP), k)
		refuses(t, err)
		_, err = measure.Compressibility(l.Compressibility, k)
		refuses(t, err)
		_, err = l.Expansion(k)
		refuses(t, err)
	}
	short := measure.Equation{Name: "wagner-25", C: []float64{1}, From: 0, To: 400}
	_, err := measure.VapourPressure(short, 300)
	assert.ErrorContains(t, err, `"wagner-25" with 1 coefficients is not known`)
	l.Vapour = measure.Equation{}
	_, err = l.Expansion(c(20))
	assert.ErrorContains(t, err, "vapour pressure")
}

// Beyond the critical temperature an equation whose stated range is wrong still gives no number.
func TestPropertiesBeyondCritical(t *testing.T) {
	f, l := fluid(t, "acetone"), liquid(t, "acetone")
	e := equation(f.VapourP)
	e.To, l.Density.To = 900, 900
	_, err := measure.VapourPressure(e, 600)
	refuses(t, err)
	_, err = measure.LiquidDensity(l.Density, 0, 600)
	refuses(t, err)
}

// At the ends of its range an equation still has a slope.
func TestExpansionAtTheEnds(t *testing.T) {
	l := liquid(t, "acetone")
	for _, at := range []units.Temperature{l.Compressibility.From, l.Compressibility.To} {
		assert.Positive(t, no(l.Expansion(at)))
	}
	e := l.Density
	e.From, e.To = c(20), c(20)
	_, err := measure.SaturationExpansion(e, 0, c(20))
	assert.ErrorContains(t, err, "no range")
}

// Every equation form that the fluids above do not use, with the coefficients of its source, gives the density of acetone
// or the boiling point of water.
func TestForms(t *testing.T) {
	costald := measure.Equation{Name: "costald", C: []float64{0.000208, 0.3149, 508.1}, From: 200, To: 500}
	near(t, 790.19, no(measure.LiquidDensity(costald, 58.07914, c(20))), 1e-2) // acetone
	// Water, Antoine by the NIST WebBook in its usual form, recalled: log10(p/bar) = 4.6543 - 1435.264/(T - 64.848).
	const ln10 = 2.302585093
	antoine := measure.Equation{Name: "antoine", C: []float64{(4.6543 + 5) * ln10, 1435.264 * ln10, -64.848}, From: 255, To: 374}
	near(t, 101325, no(measure.VapourPressure(antoine, c(100))), 2e-2)
	// Perry 8th ed. table 2-8, water, and 2-32, acetone in mol/m3, both recalled.
	perry := measure.Equation{Name: "dippr-101", C: []float64{73.649, -7258.2, -7.3037, 4.1653e-6, 2}, From: 273, To: 647}
	near(t, 101325, no(measure.VapourPressure(perry, c(100))), 5e-3)
	rackett := measure.Equation{Name: "dippr-105", C: []float64{1233.2, 0.25886, 508.2, 0.2913}, From: 179, To: 508}
	near(t, 790.19, no(measure.LiquidDensity(rackett, 58.07914, c(20))), 5e-3)
	point := measure.Equation{Name: "point", C: []float64{859, 293.15}, From: 273, To: 323}
	near(t, 859, no(measure.LiquidDensity(point, 58, c(20))), 1e-12)
}

// ISO 2503 R of 0.3 (recalled); 1 m of water is 9.789 kPa; the weakest of items; the burst ratio.
func TestSimple(t *testing.T) {
	near(t, 3.9*bar, measure.LockUp(3*bar, measure.DefaultLockUp), 1e-12)
	near(t, 9789, measure.StaticHead(998.2, 1), 1e-4)
	assert.Equal(t, -1, measure.Weakest(nil))
	assert.Equal(t, 1, measure.Weakest([]measure.Held{{"a", 10, 2}, {"b", 5, 2}, {"c", 5, 2}}))
	assert.Equal(t, 4.0, measure.BurstRatio(40, 10))
	assert.Zero(t, measure.BurstRatio(40, 0))
	empty := no(measure.WeakestAt(nil, demand(1), c(20)))
	assert.Empty(t, empty.ID)
}

// Rows of steps count to their own temperature; the error says where a table that is flat in the cold begins.
func TestCurveEdges(t *testing.T) {
	steps := curve(1, 20, 10, 50, 8)
	steps.Steps = true
	for celsius, want := range map[float64]float64{20: 10, 20.1: 8, 50: 8} {
		near(t, want, no(steps.At(c(celsius))), 1e-12)
	}
	flat := curve(1, 20, 10, 50, 8)
	flat.FlatFrom = c(-40)
	near(t, 10, no(flat.At(c(-40))), 1e-12)
	near(t, 9, no(flat.At(c(35))), 1e-12)
	for _, celsius := range []float64{-40.1, 50.1} {
		_, err := flat.At(c(celsius))
		refuses(t, err)
		assert.ErrorContains(t, err, "the rating is known from -40 to 50 °C")
	}
	_, err := measure.Curve{T: []units.Temperature{300, 300}, Y: []float64{1, 2}}.At(300)
	assert.ErrorContains(t, err, "does not rise in temperature")
}
