package measure_test

import (
	"testing"

	"lineworthy/check/measure"
)

// ASME B31.3 345.4.2 and 345.5, PED Annex I 7.4 (recalled): the PED's two terms meet at a stress ratio of 1.144.
func TestTestPressures(t *testing.T) {
	near(t, 15, measure.HydrostaticTest(10, 1), 1e-12)
	near(t, 18, measure.HydrostaticTest(10, 1.2), 1e-12)
	low, high := measure.PneumaticTest(10)
	near(t, 11, low, 1e-12)
	near(t, 13.3, high, 1e-12)
	for ratio, want := range map[float64]float64{1: 14.3, 1.144: 14.3, 1.2: 15} {
		near(t, want, measure.PEDTest(10, ratio), 1e-12)
	}
}
