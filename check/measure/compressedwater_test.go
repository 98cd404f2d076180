package measure_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"lineworthy/check/measure"
	"lineworthy/check/units"
)

// IAPWS R7-97 table 5, the release's own values for testing a program (recalled).
func TestWaterCheckValues(t *testing.T) {
	for _, w := range []struct {
		p    units.AbsolutePressure
		k    units.Temperature
		v, h float64
	}{
		{3e6, 300, 0.100215168e-2, 0.115331273e6}, {80e6, 300, 0.971180894e-3, 0.184142828e6},
		{3e6, 500, 0.120241800e-2, 0.975542239e6},
	} {
		near(t, w.v, no(measure.WaterVolume(w.p, w.k)), 1e-8)
		near(t, w.h, no(measure.WaterEnthalpy(w.p, w.k)), 1e-8)
	}
}

func TestWaterRefuses(t *testing.T) {
	for _, s := range []struct {
		p units.AbsolutePressure
		k units.Temperature
	}{{1e5, 273.1}, {1e5, 624}, {101e6, 300}, {600, 300}} {
		_, err := measure.WaterVolume(s.p, s.k)
		refuses(t, err)
		_, err = measure.WaterEnthalpy(s.p, s.k)
		refuses(t, err)
	}
}

// Two independent equations of water meet at 1 atm: Kell 1975 and IAPWS-IF97.
func TestWaterAgainstKell(t *testing.T) {
	e := measure.Equation{Name: "kell", From: c(0), To: c(100)}
	for celsius := 1.0; celsius < 98; celsius += 3 {
		rho := no(measure.LiquidDensity(e, 0, c(celsius)))
		assert.InEpsilon(t, float64(rho), 1/no(measure.WaterVolume(seaLevel, c(celsius))), 3e-5)
	}
}
