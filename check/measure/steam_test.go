package measure_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/check/measure"
	"lineworthy/check/units"
)

// IAPWS R7-97 (2012), tables 35 and 36 (recalled): the check values of the saturation line, to their printed digits.
func TestSaturatedSteam(t *testing.T) {
	for at, want := range map[units.Temperature]float64{300: 0.353658941e-2, 500: 0.263889776e1, 600: 0.123443146e2} {
		p, err := measure.SteamPressure(at)
		require.NoError(t, err)
		near(t, want, float64(p)/1e6, 2e-9)
	}
	for mpa, want := range map[float64]float64{0.1: 0.372755919e3, 1: 0.453035632e3, 10: 0.584149488e3} {
		at, err := measure.SteamTemperature(units.AbsolutePressure(mpa * 1e6))
		require.NoError(t, err)
		near(t, want, float64(at), 2e-9)
	}
}

// Steam tables in common use (recalled): 3 bar(g) is 143.8 °C, 6 bar(g) 165.0 °C, 10 bar(g) 184.1 °C.
func TestSteamAtGauge(t *testing.T) {
	for bars, want := range map[float64]float64{3: 143.8, 6: 165.0, 10: 184.1} {
		at, err := measure.SteamTemperature(units.AbsolutePressure(bars*1e5 + 101325))
		require.NoError(t, err)
		assert.InDelta(t, want, at.Celsius(), 0.2, "%g bar(g)", bars)
	}
}

// The two directions are one line, and agree with the catalog's other equation of water in its range.
func TestSteamBothWays(t *testing.T) {
	for _, k := range []units.Temperature{273.15, 283, 373.15, 450, 640, 647.096} {
		p, err := measure.SteamPressure(k)
		require.NoError(t, err)
		back, err := measure.SteamTemperature(p)
		require.NoError(t, err)
		assert.InDelta(t, float64(k), float64(back), 2e-2)
	}
	_, err := measure.SteamPressure(273.14)
	assert.Error(t, err)
	_, err = measure.SteamPressure(647.2)
	assert.Error(t, err)
	_, err = measure.SteamTemperature(600)
	assert.Error(t, err)
	_, err = measure.SteamTemperature(22.1e6)
	assert.Error(t, err)
}
