package measure

import (
	"testing"

	"github.com/stretchr/testify/require"

	"lineworthy/check/units"
)

// TestLiquidViscosity checks against handbook values at 25 °C: methanol 0.544 and butanone 0.405 mPa s, CRC Handbook,
// Viscosity of Liquids (recalled). Coefficients: Perry 8th ed. table 2-313 (restated).
func TestLiquidViscosity(t *testing.T) {
	for name, c := range map[string]struct {
		c    []float64
		want float64
	}{
		"methanol": {[]float64{-25.317, 1789.2, 2.069, 0, 0}, 0.544e-3},
		"butanone": {[]float64{-1.0598, 520.68, -1.4961, 0, 0}, 0.405e-3},
	} {
		mu, err := LiquidViscosity(Equation{Name: "dippr-101-viscosity", C: c.c, From: 180, To: 330}, units.Celsius(25))
		require.NoError(t, err, name)
		require.InEpsilon(t, c.want, float64(mu), 0.05, name)
	}
	_, err := LiquidViscosity(Equation{Name: "dippr-101-viscosity", C: make([]float64, 5), From: 180, To: 330}, 331)
	require.ErrorAs(t, err, new(*OutsideError))
}
