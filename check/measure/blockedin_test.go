package measure_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"lineworthy/check/measure"
	"lineworthy/check/units"
)

// dn25 is steel pipe DN25 schedule 40.
var dn25 = measure.Wall{Bore: 26.64 * mm, Thickness: 3.38 * mm, YoungPa: 2e11, Poisson: 0.3, LinearExpansion: 1.2e-5}

// mpa is a slope in MPa/K.
func mpa(paPerK float64) float64 { return paPerK / 1e6 }

// Published: an engineering forum's frequently asked question, 2007; the source prints 0.19 and 0.39.
func TestV3_1(t *testing.T) {
	for ratio, want := range map[units.Length]float64{100: 0.193, 10: 0.387} {
		w := measure.Wall{Bore: ratio, Thickness: 1, YoungPa: 2e11, LinearExpansion: 12e-6}
		near(t, want, mpa(measure.RisePerKelvin(210e-6, 4e-10, w.FreeEnds())), 2e-2)
	}
}

// Computed: the same by the pipe term of API 521, Poisson's ratio 0.3. Held to the four digits given; 0.1989 stands for
// 0.19886, 2.2e-4 off.
func TestV3_2(t *testing.T) {
	for ratio, want := range map[units.Length]float64{100: 0.1989, 10: 0.3888} {
		w := measure.Wall{Bore: ratio, Thickness: 1, YoungPa: 2e11, Poisson: 0.3, LinearExpansion: 12e-6}
		got := mpa(measure.RisePerKelvin(210e-6, 4e-10, w.Closed()))
		prints(t, want, got, 4)
	}
}

// Published: engineering forum, octane at 25 °C, which prints 0.9.
func TestV3_3(t *testing.T) {
	near(t, 0.906, mpa(measure.RisePerKelvin(0.00116, 0.00128e-6, measure.Container{})), 1e-2)
}

// Computed: acetone from 20 to 40 °C.
func TestV3_4(t *testing.T) {
	p := measure.BlockedInAPI(0, 20, 1.399e-3, 1.233e-9, dn25.Closed(), measure.Leak{})
	near(t, 214.6*bar, p, 1e-3)
	near(t, 3.7e-11, dn25.Closed().Compliance, 2e-2)
	leaking := measure.BlockedInAPI(0, 20, 1.399e-3, 1.233e-9, dn25.Closed(), measure.Leak{Rate: 1e-9, For: 100, Volume: 1e-2})
	near(t, float64(p)-1e-5/(1.233e-9+dn25.Closed().Compliance), leaking, 1e-9)
}

// Computed: exact isochores of the equation of state, from 3 bar absolute and 20 °C, in a rigid section. The densities
// are those of the same equation; the catalog's fit to them is within 1 %.
func TestV3_5(t *testing.T) {
	l := liquid(t, "acetone")
	fitted := l
	fitted.Density = exact(t, padded(t, "acetone", 0.9), acetoneRho).Density
	for celsius, want := range map[float64]float64{30: 116.18, 40: 228.98} {
		near(t, want*bar, no(measure.BlockedIn(fitted, measure.Container{}, 3*bar, c(20), c(celsius))), 2e-3)
		near(t, want*bar, no(measure.BlockedIn(l, measure.Container{}, 3*bar, c(20), c(celsius))), 1e-2)
	}
}

// Computed, IAPWS-95: taking water's expansion at the cold end would understate by a third.
func TestV3_6(t *testing.T) {
	l := liquid(t, "water")
	for celsius, want := range map[float64]float64{30: 60.81, 40: 141.68} {
		near(t, want*bar, no(measure.BlockedIn(l, measure.Container{}, 3*bar, c(20), c(celsius))), 1e-3)
	}
	coldEnd := 3 + measure.RisePerKelvin(no(l.Expansion(c(20))), 4.583e-10, measure.Container{})*20/bar
	near(t, 93.6, coldEnd, 1e-2)
}

// Computed: a trapped pocket of gas, in steel.
func TestV3_7(t *testing.T) {
	for gas, want := range map[units.Fraction]float64{0: 215, 0.01: 138, 0.02: 64.2, 0.03: 17.8, 0.05: 6.53} {
		p := measure.Pocket{Gas: gas, P0: 3 * bar, T0: c(20), Expansion: 1.4e-3, Compressibility: 1.25e-9,
			Container: measure.Container{Expansion: 3.6e-5, Compliance: 3.7e-11}}
		near(t, want*bar, no(measure.GasPocket(p, c(40))), 1e-2)
	}
	_, err := measure.GasPocket(measure.Pocket{P0: 1, T0: 1, Expansion: 1, Compressibility: 1e-20}, c(40))
	refuses(t, err)
}

// Computed: 10 m of DN50 (bore 52.5 mm, outside 60.3 mm) in 1 kW/m2 of sun; acetone's heat capacity 2150 J/(kg K) is
// recalled.
func TestV3_9(t *testing.T) {
	heat := units.Power(1000 * 10 * 60.3 * mm)
	near(t, 603, heat, 1e-9)
	near(t, 1.8, measure.HeatingRelief(1.399e-3, heat, 790.19, 2150)*3600/litre, 2e-2)
}

// Computed: what hose compliance does to acetone. The figures are given to two digits, which is all that 1.7 (here 1.721)
// allows: its relative deviation of 1.2 % is that of its rounding.
func TestV3_10(t *testing.T) {
	rise := func(k measure.Container) float64 { return measure.RisePerKelvin(1.399e-3, 1.233e-9, k) / bar }
	near(t, 10.7, rise(dn25.Closed()), 1e-2)
	for modulus, want := range map[float64]float64{500e6: 4.3, 50e6: 0.66, 25e6: 0.34} {
		near(t, want, rise(measure.Container{Compliance: 1 / modulus}), 1e-2)
	}
	prints(t, 1.7, rise(measure.Container{Compliance: 1 / 145e6}), 1)
}

func TestBlockedInRefuses(t *testing.T) {
	l := liquid(t, "acetone")
	for _, to := range []float64{400, -200} {
		_, err := measure.BlockedIn(l, measure.Container{}, 3*bar, c(20), c(to))
		refuses(t, err)
	}
	_, err := measure.BlockedIn(measure.Liquid{Density: l.Density}, measure.Container{}, 3*bar, c(20), c(30))
	assert.ErrorContains(t, err, "compressibility")
	point := measure.Liquid{Density: measure.Equation{Name: "point", C: []float64{800, 293}, From: 0, To: 400}}
	_, err = measure.BlockedIn(point, measure.Container{}, 3*bar, c(20), c(30))
	assert.ErrorContains(t, err, "one temperature only")
	for _, to := range []float64{-1, 30, 200} { // frozen, fine, past 100 MPa
		_, err = measure.BlockedInWater(measure.Container{}, 3*bar, c(20), c(to))
		if to == 30 {
			assert.NoError(t, err)
			continue
		}
		refuses(t, err)
	}
}

func TestBlockedInRises(t *testing.T) {
	liquids := []measure.Liquid{liquid(t, "acetone"), liquid(t, "water"), liquid(t, "propane")}
	rapid.Check(t, func(t *rapid.T) {
		l := rapid.SampledFrom(liquids).Draw(t, "liquid")
		from := rapid.Float64Range(10, 30).Draw(t, "from")
		rise := rapid.Float64Range(0, 20).Draw(t, "rise")
		soft := rapid.Float64Range(0, 1e-8).Draw(t, "compliance")
		at := func(rise, soft float64, p units.AbsolutePressure) units.AbsolutePressure {
			return no(measure.BlockedIn(l, measure.Container{Compliance: soft}, p, c(from), c(from+rise)))
		}
		p := at(rise, soft, 20*bar)
		assert.LessOrEqual(t, p, at(rise+1, soft, 20*bar))
		assert.GreaterOrEqual(t, p, at(rise, soft*2, 20*bar))
		assert.LessOrEqual(t, p, at(rise, soft, 21*bar))
		assert.Equal(t, 20*bar, float64(no(measure.BlockedIn(l, measure.Container{}, 20*bar, c(from), c(from-1)))))
	})
}

func BenchmarkBlockedInWater(b *testing.B) {
	for b.Loop() {
		_, _ = measure.BlockedInWater(measure.Container{}, 3*bar, c(20), c(40))
	}
}
