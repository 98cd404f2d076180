package units

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Standing: computed from the exact psi and the standard atmosphere.
func TestV1_1(t *testing.T) {
	g, unit, err := ParseGauge("150 psig")
	require.NoError(t, err)
	assert.Equal(t, Unit("psig"), unit)
	assert.InEpsilon(t, 1135538.594, float64(g.Absolute(StandardAtmosphere)), 1e-9)
	bar, err := g.In("bar(g)")
	require.NoError(t, err)
	assert.InEpsilon(t, 10.342136, bar, 1e-7) // eight digits are given
}

// Standing: computed from the troposphere formula of ISO 2533 (recalled).
func TestV1_2(t *testing.T) {
	for metres, pa := range map[Length]float64{1000: 89874.6, 2000: 79495.2, 3000: 70108.5, 5000: 54019.9} {
		a, err := Ambient(metres)
		require.NoError(t, err)
		assert.InEpsilon(t, pa, float64(a), 1e-5)
	}
}

// Standing: restated, from an open library's check of the US Standard Atmosphere 1976.
func TestV1_3(t *testing.T) {
	for metres, pa := range map[Length]float64{1000: 89876.29, 2000: 79501.42, 3000: 70121.16, 5000: 54048.29} {
		a, err := Ambient(Geopotential(metres))
		require.NoError(t, err)
		assert.InEpsilon(t, pa, float64(a), 1e-6)
	}
}

// Standing: computed; 10/1.8 K.
func TestV1_4(t *testing.T) {
	d, err := ParseTemperatureDifference("10 °F")
	require.NoError(t, err)
	assert.InEpsilon(t, 5.5556, float64(d), 1e-4)
}

// Standing: computed; altitude raises the gauge pressure of a sealed vessel.
func TestV1_5(t *testing.T) {
	a, _, err := ParseAbsolute("4.0 bar(a)")
	require.NoError(t, err)
	high, err := Ambient(2000)
	require.NoError(t, err)
	for _, c := range []struct {
		ambient AbsolutePressure
		bar     float64
	}{{StandardAtmosphere, 2.987}, {high, 3.205}} {
		got, err := a.Gauge(c.ambient).In("bar(g)")
		require.NoError(t, err)
		assert.InEpsilon(t, c.bar, got, 1e-3)
	}
}

// US Standard Atmosphere 1976, geopotential altitude table (recalled): 22 632 Pa at
// 11 km, 107 478 Pa at -500 m.
func TestAmbientLimits(t *testing.T) {
	for metres, pa := range map[Length]float64{-500: 107478, 0: 101325, 11000: 22632} {
		a, err := Ambient(metres)
		require.NoError(t, err)
		assert.InEpsilon(t, pa, float64(a), 1e-4)
	}
	for _, metres := range []Length{-500.001, 11000.001, Length(nan()), Length(inf())} {
		_, err := Ambient(metres)
		assert.ErrorContains(t, err, "outside -500 m to 11000 m")
	}
}
