package units

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Factors of NIST SP 811 (2008), Appendix B.8, and the SI Brochure, 9th edition (2019),
// table 8; recalled. Digits as printed there, so the tolerance is half their last place; the imperial flow is computed.
func TestPressureFactors(t *testing.T) {
	for _, c := range []struct {
		typed string
		pa    float64
	}{
		{"1 bar(g)", 1e5}, {"1 mbar(g)", 1e2}, {"1 kPa(g)", 1e3}, {"1 MPa(g)", 1e6}, {"1 Pa(g)", 1},
		{"1 psig", 6894.757}, {"1 ksi(g)", 6894757}, {"1 kgf/cm2(g)", 98066.5}, {"1 atm(g)", 101325},
		{"1 inH2O(g)", 249.0889}, {"1 mmH2O(g)", 9.80665}, {"1 inHg(g)", 3386.389}, {"1 mmHg(g)", 133.3224},
		{"1 hPa(g)", 100}, {"1 N/mm2(g)", 1e6},
	} {
		g, _, err := ParseGauge(c.typed)
		require.NoError(t, err, c.typed)
		assert.InEpsilon(t, c.pa, float64(g), 2e-7, c.typed)
	}
}

func TestOtherFactors(t *testing.T) {
	read := func(v float64, err error) float64 { require.NoError(t, err); return v }
	for _, c := range []struct {
		name string
		want float64
		got  float64
	}{
		{"inch", 0.0254, read(si(ParseLength("1 in")))},
		{"foot", 0.3048, read(si(ParseLength("1 ft")))},
		{"square inch", 6.4516e-4, read(si(ParseArea("1 in2")))},
		{"square foot", 9.290304e-2, read(si(ParseArea("1 ft2")))},
		{"square millimetre", 1e-6, read(si(ParseArea("1 mm2")))},
		{"litre", 1e-3, read(si(ParseVolume("1 L")))},
		{"US gallon", 3.785412e-3, read(si(ParseVolume("1 US gal")))},
		{"imperial gallon", 4.54609e-3, read(si(ParseVolume("1 imp gal")))},
		{"cubic foot", 2.831685e-2, read(si(ParseVolume("1 ft3")))},
		{"US gallon a minute", 6.309020e-5, read(si(ParseVolumeFlow("1 US gal/min")))},
		{"imperial gallon a minute", 4.54609e-3 / 60, read(si(ParseVolumeFlow("1 imp gal/min")))},
		{"cubic foot a minute", 4.719474e-4, read(si(ParseVolumeFlow("1 ft3/min")))},
		{"cubic metre an hour", 2.777778e-4, read(si(ParseVolumeFlow("1 m3/h")))},
		{"pound", 0.45359237, read(si(ParseMass("1 lb")))},
		{"ounce", 2.834952e-2, read(si(ParseMass("1 oz")))},
		{"tonne", 1000, read(si(ParseMass("1 t")))},
		{"hour", 3600, read(si(ParseTime("1 h")))},
		{"day", 86400, read(si(ParseTime("1 d")))},
		{"foot a second", 0.3048, read(si(ParseVelocity("1 ft/s")))},
		{"kilometre an hour", 2.777778e-1, read(si(ParseVelocity("1 km/h")))},
		{"centipoise", 1e-3, read(si(ParseViscosity("1 cP")))},
		{"poise", 0.1, read(si(ParseViscosity("1 P")))},
		{"pound a cubic foot", 16.01846, read(si(ParseDensity("1 lb/ft3")))},
		{"gram a cubic centimetre", 1000, read(si(ParseDensity("1 g/cm3")))},
		{"pound-force", 4.448222, read(si(ParseForce("1 lbf")))},
		{"kilogram-force", 9.80665, read(si(ParseForce("1 kgf")))},
		{"foot pound-force", 1.355818, read(si(ParseEnergy("1 ft lbf")))},
		{"kilowatt hour", 3.6e6, read(si(ParseEnergy("1 kWh")))},
		{"microsiemens a centimetre", 1e-4, read(si(ParseConductivity("1 µS/cm")))},
		{"picosiemens a metre", 1e-12, read(si(ParseConductivity("1 pS/m")))},
		{"megawatt", 1e6, read(si(ParsePower("1 MW")))},
		{"megohm", 1e6, read(si(ParseResistance("1 Mohm")))},
	} {
		assert.InEpsilon(t, c.want, c.got, 5e-7, c.name)
	}
}

// si strips the type off a parser's result.
func si[T ~float64](v T, err error) (float64, error) { return float64(v), err }

// Cv counts US gallons a minute at 1 psi and Kv cubic metres an hour at 1 bar, both of
// water, so their ratio follows from the exact units (computed); IEC 60534-1 has 0.865 (recalled).
func TestFlowCoefficientFactor(t *testing.T) {
	psiPerBar := 6894.757293168361 / 1e5
	derived := 3.785411784e-3 * 60 / math.Sqrt(psiPerBar)
	assert.InEpsilon(t, derived, FromCv(1).Kv(), 5e-6)
	assert.InEpsilon(t, 0.865, FromCv(1).Kv(), 5e-4)
	assert.InEpsilon(t, 1, FromKv(FromCv(1).Kv()).Cv(), 1e-12)
}

// Practice, no source: equivalences people carry in their heads, to the digits they carry.
func TestCommonEquivalences(t *testing.T) {
	g, _, err := ParseGauge("100 psig")
	require.NoError(t, err)
	assert.InDelta(t, 690, float64(g)/1e3, 1)
	g, _, err = ParseGauge("260 psig")
	require.NoError(t, err)
	assert.InDelta(t, 1800, float64(g)/1e3, 10)
	k, _, err := ParseTemperature("131 °F")
	require.NoError(t, err)
	assert.InDelta(t, 55, k.Celsius(), 1e-9)
	m, err := ParseMass("1000 lb")
	require.NoError(t, err)
	assert.InDelta(t, 454, float64(m), 0.5)
}

// Fixed points of the scales: NIST SP 811 (2008), App. B.8, temperature; recalled.
func TestTemperaturePoints(t *testing.T) {
	for typed, kelvin := range map[string]float64{
		"0 °C": 273.15, "32 °F": 273.15, "212 °F": 373.15, "-40 °F": 233.15, "-40 °C": 233.15,
		"0 K": 0, "-459.67 °F": 0, "-273.15 °C": 0, "68F": 293.15, "20 deg C": 293.15, "20degc": 293.15, "20 ℃": 293.15,
		"20 deg. C": 293.15, "\u221210 C": 263.15, "293.15 k": 293.15,
	} {
		k, _, err := ParseTemperature(typed)
		require.NoError(t, err, typed)
		assert.InDelta(t, kelvin, float64(k), 1e-9, typed)
	}
}
