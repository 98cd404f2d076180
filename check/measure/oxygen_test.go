package measure_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"lineworthy/check/measure"
	"lineworthy/check/units"
)

const perHour = 1.0 / 3600

// Published: a university's worked example, five 10 L dewars losing 0.15 L of liquid a day, doubled, 700 times the volume,
// 36 m3 with 0.4 changes an hour. It prints a depletion of 0.06 %: one digit, to which 0.0638 rounds; the relative
// deviation of 6 % is that of its rounding.
func TestV11_1(t *testing.T) {
	leak := units.VolumeFlow(5 * 0.15 * 2 * 700 / 24.0 * litre * perHour)
	near(t, 0.04375, leak/perHour, 1e-9)
	near(t, 0.044, leak/perHour, 5e-2)
	lost := measure.SteadyDepletion(36, leak, 0.4)
	near(t, 0.003, lost/21, 5e-2)
	prints(t, 0.06, lost, 2)
}

// Computed: one cylinder of 9.46 m3 let out; given to 0.1 %, to which it is held (15.4 stands for 15.445, 2.9e-3 off).
func TestV11_2(t *testing.T) {
	for room, want := range map[units.Volume][2]float64{36: {15.4, 16.1}, 50: {17.0, 17.3}, 100: {19.0, 19.1}} {
		prints(t, want[0], measure.SuddenRelease(room, 9.46), 1)
		prints(t, want[1], measure.MixedRelease(room, 9.46), 1)
	}
	assert.Zero(t, measure.SuddenRelease(1, 2))
}

func TestV11_3(t *testing.T) {
	for oxygen, want := range map[float64]float64{19.5: 0.0692, 18: 0.1408} {
		near(t, want, measure.ReleaseFor(oxygen), 1e-3)
		near(t, oxygen, measure.SuddenRelease(100, units.Volume(100*measure.ReleaseFor(oxygen))), 1e-12)
	}
}

func TestV11_4(t *testing.T) {
	for hours, want := range map[float64]float64{.25: 19.54, .5: 18.94, 1: 18.57, math.Inf(1): 18.49} {
		near(t, want, measure.SteadyLeak(50, 150*perHour, 20*perHour, units.Time(hours*3600)), 1e-3)
	}
	near(t, 20.95, measure.SteadyLeak(50, 0, 0, 1), 1e-12)
	near(t, 20.95, measure.SteadyLeak(50, 1, 1, 0), 1e-12)
}
