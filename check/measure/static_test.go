package measure_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"lineworthy/check/measure"
	"lineworthy/check/units"
)

const pico = 1e-12

// Computed; the times are given to three digits.
func TestV6_1(t *testing.T) {
	for ps, want := range map[units.Conductivity]float64{50: 0.354, 10: 1.77, 1: 17.7} {
		near(t, want, measure.RelaxationTime(2, ps*pico), 1e-3)
	}
	assert.True(t, math.IsInf(float64(measure.RelaxationTime(2, 0)), 1))
}

// Computed; a table of Crowl & Louvar is recalled as 21 s.
func TestV6_2(t *testing.T) {
	near(t, 21.2, measure.RelaxationTime(2.4, 1*pico), 1e-2)
	prints(t, 21, measure.RelaxationTime(2.4, 1*pico), 0)
}

// Computed with 0.5 m2/s and 7 m/s of API RP 2003 (recalled); 3.33 is given to three digits.
func TestV6_3(t *testing.T) {
	for bore, want := range map[units.Length]float64{0.05: 7, 0.08: 6.25, 0.1: 5, 0.15: 10.0 / 3, 0.2: 2.5} {
		near(t, want, measure.VelocityBound(bore, 0.5, 7), 1e-4)
	}
	prints(t, 3.33, measure.VelocityBound(0.15, 0.5, 7), 2)
}

// Computed.
func TestV6_4(t *testing.T) {
	for bore, want := range map[units.Length]float64{0.025: 1.767, 0.05: 7.069, 0.08: 18.10, 0.1: 28.27} {
		q := measure.BoreFlow(bore, 1)
		near(t, want, q*3600, 1e-3)
		near(t, 1, measure.BoreVelocity(bore, q), 1e-12)
	}
}
