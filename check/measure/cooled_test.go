package measure_test

import (
	"testing"

	"lineworthy/check/measure"
)

// Computed by Dalton's law from saturation pressures of the steam tables (recalled): water 19.95 kPa at 60 °C, 0.611 kPa at
// 0 °C, 101.4 kPa at 100 °C.
func TestCooled(t *testing.T) {
	near(t, 101.325*273.15/353.15, measure.Cooled(101325, 0, 0, c(80), c(0))/1e3, 1e-9) // air alone: 78.37 kPa
	near(t, (101.325-19.95)*273.15/333.15+0.611, measure.Cooled(101325, 19950, 611, c(60), c(0))/1e3, 1e-9)
	near(t, 0.611, measure.Cooled(101325, 101400, 611, c(100), c(0))/1e3, 1e-9)    // nothing but steam
	near(t, 101.325, measure.Cooled(101325, 0, 0, c(20), c(20))/1e3, 1e-9)         // no cooling, no vacuum
	near(t, 300*273.15/353.15, measure.Cooled(300e3, 0, 0, c(80), c(0))/1e3, 1e-9) // a pad keeps it above the air: 232 kPa
}
