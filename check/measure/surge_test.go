package measure_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"lineworthy/check/measure"
	"lineworthy/check/units"
)

// hose is a hose of an effective modulus in MPa.
func hose(modulus float64) measure.Container { return measure.Container{Compliance: 1e-6 / modulus} }

const (
	waterRho   units.Density = 998.207 // 20 °C, IAPWS-95 (computed)
	waterKappa float64       = 4.583e-10
)

// The problem is published, the answer recalled from Potter & Wiggert's textbook: oil in 4 km of 0.5 m pipe.
func TestV4_1(t *testing.T) {
	w := measure.Wall{Bore: 0.5, Thickness: 0.005, YoungPa: 200e9}
	a := measure.WaveSpeed(860, 1/1.5e9, w.FreeEnds())
	near(t, 998.3, a, 2e-3)
	dv := 600e3 / float64(measure.Joukowsky(860, a, 1))
	near(t, 0.699, dv, 2e-3)
	near(t, 0.274, dv/float64(measure.BoreVelocity(0.5, 0.5)), 2e-3)
	near(t, 16.03, 2*measure.WaveReturn(4000, a), 2e-3)
}

// Computed: water in DN25 schedule 40 steel stopped from 3 m/s.
func TestV4_2(t *testing.T) {
	a := measure.WaveSpeed(waterRho, waterKappa, dn25.FreeEnds())
	near(t, 1419, a, 5e-3)
	near(t, 42.5*bar, measure.Joukowsky(waterRho, a, 3), 5e-3)
}

// Computed: the same in hose. Speeds are given in whole m/s and surges to 0.1 bar.
func TestV4_3(t *testing.T) {
	for modulus, want := range map[float64][2]float64{500: {638, 19.1}, 50: {221, 6.6}, 25: {157, 4.7}} {
		a := measure.WaveSpeed(waterRho, waterKappa, hose(modulus))
		near(t, want[0], a, 5e-3)
		near(t, want[1]*bar, measure.Joukowsky(waterRho, a, 3), 5e-3)
	}
}

// Computed: 10 m closed in 0.5 s. The times are given in whole ms, the surge to three digits.
func TestV4_4(t *testing.T) {
	near(t, 1.20*bar, measure.Michaud(998.4, 10, 3, 0.5), 5e-3)
	prints(t, 14, 1000*measure.WaveReturn(10, measure.WaveSpeed(waterRho, waterKappa, dn25.FreeEnds())), 0)
	prints(t, 90, 1000*measure.WaveReturn(10, measure.WaveSpeed(waterRho, waterKappa, hose(50))), 0)
	near(t, 0.663*bar, measure.RigidColumn(1000, 10, 3, 0.5, 3*bar), 5e-3)
}

// The surge is Joukowsky's to the return time of the wave and Michaud's after it, and they meet there.
func TestSurge(t *testing.T) {
	const a, l, v = units.Velocity(1419), units.Length(10), units.Velocity(3)
	back := measure.WaveReturn(l, a)
	fast := measure.Joukowsky(waterRho, a, v)
	near(t, float64(fast), measure.Surge(waterRho, a, v, l, back/2), 1e-12)
	near(t, float64(fast), measure.Surge(waterRho, a, v, l, back), 1e-12)
	near(t, float64(fast)/2, measure.Surge(waterRho, a, v, l, 2*back), 1e-12)
	near(t, float64(fast), measure.Surge(waterRho, a, v, l, 0), 1e-12)
	assert.True(t, math.IsInf(float64(measure.Michaud(waterRho, l, v, 0)), 1))
	assert.Zero(t, measure.Surge(waterRho, a, v, 0, 0), "no line, no column to stop")
}

func TestSurgeRises(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		v := units.Velocity(rapid.Float64Range(0, 10).Draw(t, "v"))
		tc := units.Time(rapid.Float64Range(1e-3, 5).Draw(t, "tc"))
		soft := rapid.Float64Range(0, 1e-7).Draw(t, "compliance")
		at := func(v units.Velocity, tc units.Time, soft float64) units.PressureDifference {
			return measure.Surge(waterRho, measure.WaveSpeed(waterRho, waterKappa, measure.Container{Compliance: soft}), v, 10, tc)
		}
		p := at(v, tc, soft)
		assert.LessOrEqual(t, p, at(v*1.1, tc, soft))
		assert.GreaterOrEqual(t, p, at(v, tc*1.1, soft))
		assert.GreaterOrEqual(t, p, at(v, tc, soft*2))
	})
}
