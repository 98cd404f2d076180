package measure_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"lineworthy/check/measure"
	"lineworthy/check/units"
)

// Computed from the equation of state of Lemmon & Span 2006: altitude lowers the boiling point of acetone.
func TestV1_6(t *testing.T) {
	e := equation(fluid(t, "acetone").VapourP)
	for pa, want := range map[units.AbsolutePressure]float64{101325: 56.07, 79495: 49.15} {
		within(t, want, no(measure.BoilingPoint(e, pa)).Celsius(), 0.1)
	}
}

func TestBoilingPointRefuses(t *testing.T) {
	e := equation(fluid(t, "acetone").VapourP)
	for _, pa := range []units.AbsolutePressure{0, 1e9} {
		_, err := measure.BoilingPoint(e, pa)
		refuses(t, err)
	}
	_, err := measure.BoilingPoint(measure.Equation{Name: "guess"}, 1e5)
	assert.ErrorContains(t, err, "not known")
}
