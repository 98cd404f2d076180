package measure_test

import (
	"testing"

	"lineworthy/check/measure"
)

// Computed from densities of the equation of state, formulas of ADR 4.2.1.9.2 and 4.1.1.4 (published).
func TestV2_g(t *testing.T) {
	a := measure.MeanExpansion(795.72, 756.09)
	near(t, 1.4975e-3, a, 1e-4)
	near(t, 0.9217, measure.PortableTankFill(a, c(15)), 1e-4)
	near(t, 0.9312, measure.PackagingFill(a, c(15)), 1e-4)
}

func TestV2_h(t *testing.T) {
	a := measure.MeanExpansion(999.103, 988.035)
	near(t, 3.2005e-4, a, 1e-4)
	near(t, 0.9593, measure.PortableTankFill(a, c(15)), 1e-4)
}

func TestV3_8(t *testing.T) {
	near(t, 1.4976e-3, measure.MeanExpansion(795.72, 756.09), 1e-4)
	near(t, 1.4603e-3, measure.MeanExpansionAPI(795.72, 756.09, 35), 1e-4)
	near(t, 1.4593e-3, measure.MeanExpansionSymmetric(795.72, 756.09, 35), 1e-4)
}

// ADR 4.2.1.9.3 (recalled) and 4.3.3.2.2 (published): propane, 0.95 x 448.87 kg/m3 at 50 °C; a made-up liquid that
// expands much between 50 and 60 °C.
func TestFillLimits(t *testing.T) {
	near(t, 0.95, measure.PortableTankFillToxic(1.5e-3, c(50)), 1e-12)
	near(t, 426.43, measure.LiquefiedGasFill(448.87, 429), 1e-4)
	near(t, 400, measure.LiquefiedGasFill(448.87, 400), 1e-12)
}
