package measure_test

import (
	"testing"

	"pgregory.net/rapid"

	"github.com/stretchr/testify/assert"

	"lineworthy/check/measure"
	"lineworthy/check/units"
)

// EN 837-1: formula and first value published; the second is 6 * 1/100 (computed).
func TestV12_1(t *testing.T) {
	near(t, 0.16*bar, measure.GaugeBand(1.6, 10*bar), 1e-12)
	near(t, 0.06*bar, measure.GaugeBand(1.0, 6*bar), 1e-12)
}

// Computed: 0-25 bar of class 1.6 at 6 bar.
func TestV12_2(t *testing.T) {
	near(t, 0.40*bar, measure.GaugeBand(1.6, 25*bar), 1e-9)
	prints(t, 0.067, measure.GaugeBand(1.6, 25*bar)/(6*bar), 3)
	near(t, 0.60*bar, measure.GaugeUncertainty(1.6, 25*bar, c(40)), 1e-9)
	near(t, 0.60*bar, measure.GaugeUncertainty(1.6, 25*bar, c(0)), 1e-9)
	near(t, 0.24, measure.ScaleUsed(6*bar, 0, 25*bar), 1e-12)
	near(t, 0.5, measure.ScaleUsed(2*bar, -1*bar, 5*bar), 1e-12)
}

func TestV12_3(t *testing.T) {
	near(t, 0.16*bar, measure.GaugeBand(1.6, 10*bar), 1e-9)
	prints(t, 0.027, measure.GaugeBand(1.6, 10*bar)/(6*bar), 3)
}

// The root of the squares never exceeds the sum nor falls below its larger part.
func TestGaugeUncertaintyRSS(t *testing.T) {
	near(t, 0.4472*bar, measure.GaugeUncertaintyRSS(1.6, 25*bar, c(40)), 1e-4)
	rapid.Check(t, func(t *rapid.T) {
		class := rapid.Float64Range(0.1, 4).Draw(t, "class")
		at := c(rapid.Float64Range(-20, 60).Draw(t, "celsius"))
		span := units.PressureDifference(rapid.Float64Range(1e4, 1e8).Draw(t, "span"))
		rss := measure.GaugeUncertaintyRSS(class, span, at)
		assert.LessOrEqual(t, float64(rss), float64(measure.GaugeUncertainty(class, span, at))*(1+1e-12))
		assert.GreaterOrEqual(t, rss, measure.GaugeBand(class, span))
	})
}
