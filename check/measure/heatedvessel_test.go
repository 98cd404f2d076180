package measure_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/mat"
	"pgregory.net/rapid"

	"lineworthy/check/measure"
	"lineworthy/check/units"
)

// austenitic is the cubic expansion of the shell in the vectors, 3 x 1.6e-5 1/K.
const austenitic = 4.8e-5

func padded(t testing.TB, name string, fill units.Fraction) measure.PaddedVessel {
	f, l := fluid(t, name), liquid(t, name)
	return measure.PaddedVessel{Vapour: equation(f.VapourP), Density: l.Density, MolarMass: l.MolarMass,
		Fill: fill, Pad: 2*bar + seaLevel, Shut: c(15), ShellExpansion: austenitic}
}

// exact puts densities of the equation of state (Lemmon & Span 2006, computed), at 0, 20, 40 and 55 °C, in place of the
// catalog's fit to them, whose 0.27 % weighs 2 % in a pressure where the ullage is small.
func exact(t testing.TB, v measure.PaddedVessel, rho [4]float64) measure.PaddedVessel {
	fit := v.Density.C
	a, b := mat.NewDense(4, 4, nil), mat.NewVecDense(4, nil)
	for i, celsius := range []float64{0, 20, 40, 55} {
		tau := 1 - (celsius+273.15)/fit[5]
		a.SetRow(i, []float64{math.Pow(tau, 0.35), math.Pow(tau, 2.0/3), tau, math.Pow(tau, 4.0/3)})
		b.SetVec(i, rho[i]-fit[4])
	}
	var x mat.VecDense
	require.NoError(t, x.SolveVec(a, b))
	v.Density.C = append(x.RawVector().Data, fit[4], fit[5])
	return v
}

var (
	acetoneRho = [4]float64{812.10154, 790.19484, 767.66285, 750.22048}
	tolueneRho = [4]float64{885.35153, 866.81575, 848.11736, 833.92199}
)

// The densities between and beyond are those of the same equation of state: 795.72207 and 756.09395 as it prints, and
// 738.2748 at 65 °C (computed with recalled coefficients that give the printed ones).
func TestExactDensities(t *testing.T) {
	v := exact(t, padded(t, "acetone", 0.9), acetoneRho)
	for celsius, want := range map[float64]float64{15: 795.72207, 50: 756.09395, 65: 738.2748} {
		near(t, want, no(measure.LiquidDensity(v.Density, 0, c(celsius))), 1e-5)
	}
}

// hot are cases of 90 % fill and a pad of 2 bar(g) at 15 °C (computed from equations of state).
func hot(t *testing.T, v measure.PaddedVessel, want map[float64]float64) {
	for celsius, barg := range want {
		near(t, barg, no(measure.HeatedVessel(v, c(celsius))).Pressure.Gauge(seaLevel)/bar, 5e-3)
	}
}

// With the catalog's own equations nothing comes out more than 1 % below the vectors.
func TestHeatedVesselByCatalog(t *testing.T) {
	for _, w := range []struct {
		name          string
		fill          units.Fraction
		celsius, barg float64
	}{
		{"acetone", 0.9, 40, 4.035}, {"acetone", 0.9, 50, 5.602}, {"acetone", 0.9, 65, 10.562},
		{"acetone", 0.9217, 50, 7.62}, {"acetone", 0.9217, 65, 29.2},
		{"toluene", 0.9, 50, 4.154}, {"toluene", 0.9, 65, 6.099}, {"water", 0.9, 50, 2.778}, {"water", 0.9, 65, 3.355},
	} {
		h, _ := measure.HeatedVessel(padded(t, w.name, w.fill), c(w.celsius))
		got := float64(h.Pressure.Gauge(seaLevel)) / bar
		t.Logf("%s %v %g: %+.2f %%", w.name, w.fill, w.celsius, 100*(got/w.barg-1))
		assert.Greater(t, got/w.barg, 0.99)
	}
}

func TestV2_b(t *testing.T) {
	v := exact(t, padded(t, "acetone", 0.90), acetoneRho)
	hot(t, v, map[float64]float64{40: 4.035, 50: 5.602, 65: 10.562})
	for celsius, ullage := range map[float64]float64{40: .0682, 50: .0544, 65: .0323} {
		near(t, ullage, no(measure.HeatedVessel(v, c(celsius))).Ullage, 5e-3)
	}
}

func TestV2_c(t *testing.T) {
	for fill, celsius := range map[units.Fraction]float64{0.90: 84.8, 0.95: 51.3, 0.98: 29.8} {
		within(t, celsius, no(measure.LiquidFull(exact(t, padded(t, "acetone", fill), acetoneRho))).Celsius(), 0.3)
	}
}

func TestV2_d(t *testing.T) {
	hot(t, exact(t, padded(t, "toluene", 0.90), tolueneRho), map[float64]float64{50: 4.154, 65: 6.099})
}

func TestV2_e(t *testing.T) {
	hot(t, padded(t, "water", 0.90), map[float64]float64{50: 2.778, 65: 3.355})
}

func TestV2_f(t *testing.T) {
	within(t, 58.9, no(measure.LiquidFull(padded(t, "propane", 0.85))).Celsius(), 0.3)
}

// Computed: the fill limit of ADR alone does not bound the pressure of a padded vessel. At 65 °C under 1 % is gas, so the
// number comes with a refusal.
func TestV2_12(t *testing.T) {
	v := exact(t, padded(t, "acetone", 0.9217), acetoneRho)
	near(t, 7.62, no(measure.HeatedVessel(v, c(50))).Pressure.Gauge(seaLevel)/bar, 1e-2)
	h, err := measure.HeatedVessel(v, c(65))
	refuses(t, err)
	near(t, 29.2, h.Pressure.Gauge(seaLevel)/bar, 1e-2)
}

func TestHeatedVesselRefuses(t *testing.T) {
	v := padded(t, "acetone", 0.95)
	h, err := measure.HeatedVessel(v, c(55))
	refuses(t, err)
	assert.Zero(t, h)
	_, err = measure.HeatedVessel(v, c(400))
	refuses(t, err)
	_, err = measure.LiquidFull(padded(t, "water", 0.5))
	refuses(t, err)
}

func TestHeatedVesselRises(t *testing.T) {
	v := padded(t, "acetone", 0.8)
	rapid.Check(t, func(t *rapid.T) {
		a := rapid.Float64Range(15, 60).Draw(t, "celsius")
		fill := rapid.Float64Range(0.2, 0.85).Draw(t, "fill")
		at := func(celsius, fill, pad float64) units.AbsolutePressure {
			v.Fill, v.Pad = units.Fraction(fill), units.AbsolutePressure(pad)
			return no(measure.HeatedVessel(v, c(celsius))).Pressure
		}
		p := at(a, fill, 3e5)
		assert.LessOrEqual(t, p, at(a+5, fill, 3e5))
		assert.LessOrEqual(t, p, at(a, fill+0.02, 3e5))
		assert.LessOrEqual(t, p, at(a, fill, 4e5))
	})
}
