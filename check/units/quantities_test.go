package units

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestLengths(t *testing.T) {
	for typed, metres := range map[string]float64{
		"150 mm": 0.15, "150mm": 0.15, "3 m": 3, "20 cm": 0.2, "1.2 km": 1200, "1 in": 0.0254, `1"`: 0.0254, "2 inches": 0.0508,
		"10 ft": 3.048, "10'": 3.048, "1 1/2 in": 0.0381, "1-1/2 in": 0.0381, `1-1/2"`: 0.0381, `3/4"`: 0.01905, "3/4 in": 0.01905,
		"1½ in": 0.0381, "¾″": 0.01905, "1 1/2 ft": 0.4572, "0 mm": 0, "1.5 in.": 0.0381, "1e3 mm": 1, "1e6 m": 1e6,
	} {
		got, err := ParseLength(typed)
		require.NoError(t, err, typed)
		assert.InDelta(t, metres, float64(got), 1e-12*(1+metres), typed)
	}
	down, err := ParseElevation("-200 m")
	require.NoError(t, err)
	assert.Equal(t, Length(-200), down)
	up, err := ParseElevation("1000 ft")
	require.NoError(t, err)
	assert.InDelta(t, 304.8, float64(up), 1e-9)
}

func TestResistanceCapitals(t *testing.T) {
	for typed, ohm := range map[string]float64{"5 mohm": 5e-3, "5 Mohm": 5e6, "5 MΩ": 5e6, "5 mΩ": 5e-3, "5 OHM": 5, "5 Ω": 5, "5 kΩ": 5e3, "5 megohm": 5e6} {
		r, err := ParseResistance(typed)
		require.NoError(t, err, typed)
		assert.InEpsilon(t, ohm, float64(r), 1e-12, typed)
	}
	_, err := ParseResistance("5 MOHM")
	assert.ErrorContains(t, err, "can be read as mohm or Mohm: type its capitals as shown")
}

func TestFractions(t *testing.T) {
	for typed, ratio := range map[string]float64{"85 %": 0.85, "85%": 0.85, "0.85": 0.85, "0": 0, "1": 1, "100 %": 1, "50 ppm": 5e-5, "850 ‰": 0.85, "85 percent": 0.85} {
		f, err := ParseFraction(typed)
		require.NoError(t, err, typed)
		assert.InDelta(t, ratio, float64(f), 1e-12, typed)
	}
}

func TestFlowCoefficients(t *testing.T) {
	for typed, kv := range map[string]float64{"Cv 0.06": 0.0518988, "Kv 0.05": 0.05, "cv=0.06": 0.0518988, "0.06 Cv": 0.0518988, "Kvs: 2.5": 2.5, "KV2": 2} {
		c, err := ParseFlowCoefficient(typed)
		require.NoError(t, err, typed)
		assert.InEpsilon(t, kv, c.Kv(), 1e-9, typed)
	}
}

func TestTemperatureSteps(t *testing.T) {
	for typed, kelvin := range map[string]float64{"5 K": 5, "5 °C": 5, "9 F": 5, "-9 °F": -5, "0 °F": 0} {
		d, err := ParseTemperatureDifference(typed)
		require.NoError(t, err, typed)
		assert.InDelta(t, kelvin, float64(d), 1e-12, typed)
	}
	assert.Equal(t, Temperature(305), Temperature(300).Plus(5))
	assert.Equal(t, TemperatureDifference(5), Temperature(305).Minus(300))
}

// refuser runs one parser for its error alone.
type refuser func(string) error

func only[T any](parse func(string) (T, error)) refuser {
	return func(s string) error { _, err := parse(s); return err }
}

func temperature(s string) error { _, _, err := ParseTemperature(s); return err }

func TestRefusals(t *testing.T) {
	for _, c := range []struct {
		parse refuser
		typed string
		want  string
	}{
		{only(ParseLength), "", "empty: write a number and a unit, like 150 mm"},
		{only(ParseLength), "12", `"12" has no unit: write a length like 150 mm`},
		{only(ParseLength), "1 1/2", "has no unit"},
		{only(ParseLength), "1/0 in", "divides by zero"},
		{only(ParseLength), "1 1/2 mm", "a fraction, which is read for inches and feet only"},
		{only(ParseLength), "-5 mm", `"-5 mm" is below zero, which a length cannot be`},
		{only(ParseLength), "-1/2 in", "below zero"},
		{only(ParseLength), "1001 km", "beyond the highest plausible value for a length"},
		{only(ParseLength), "5 nm", `unknown unit "nm" for a length; did you mean mm? (known: mm, m, cm, km, in, ft)`},
		{only(ParseLength), "5 parsec", `unknown unit "parsec" for a length (known:`},
		{only(ParseLength), "1,5 m", "write 1.5"},
		{only(ParseElevation), "-12 km", "below the lowest plausible value for an elevation (-11000 m)"},
		{only(ParseElevation), "12 km", "beyond the highest plausible value for an elevation (11000 m)"},
		{temperature, "20", "has no unit: write a temperature like 20 °C"},
		{temperature, "20 °", "does not say which degree"},
		{temperature, "20 deg", "does not say which degree"},
		{temperature, "-273.16 °C", "below the lowest plausible value for a temperature (-273.15 °C)"},
		{temperature, "-1 K", "below the lowest plausible"},
		{temperature, "3001 K", "beyond the highest plausible value for a temperature"},
		{temperature, "20 degX", "did you mean degC?"},
		{only(ParseTemperatureDifference), "5", "write a temperature difference like 5 K"},
		{only(ParseTemperatureDifference), "3001 K", "beyond the highest"},
		{only(ParseTemperatureDifference), "-3001 K", "below the lowest plausible value for a temperature difference"},
		{only(ParseArea), "-1 mm2", "an area cannot be"},
		{only(ParseVolume), "5 gal", "does not say which gallon: write US gal (3.785 L) or imp gal (4.546 L)"},
		{only(ParseVolume), "5 bbl", "several barrels"},
		{only(ParseVolume), "-5 L", "a volume cannot be"},
		{only(ParseVolumeFlow), "5 gpm", "write US gal/min or imp gal/min"},
		{only(ParseVolumeFlow), "5 Nm3/h", "gas counted at reference conditions"},
		{only(ParseVolumeFlow), "5 cfm", "does not say free air or line volume"},
		{only(ParseMass), "1 ton", "does not say which ton"},
		{only(ParseMass), "1 kgg", "did you mean kg?"},
		{only(ParseTime), "5 m", "does not say minutes or months"},
		{only(ParseDuration), "2 months", "has no fixed length"},
		{only(ParseTime), "-2 s", "a time cannot be"},
		{only(ParseVelocity), "2 m/ss", "did you mean m/s?"},
		{only(ParseViscosity), "5 cSt", "is kinematic: multiply by the density"},
		{only(ParseDensity), "805", "write a density like 805 kg/m3"},
		{only(ParseConductivity), "5 qS/m", "did you mean pS/m?"},
		{only(ParseForce), "5 kg", "is a mass: write kgf or N"},
		{only(ParseEnergy), "5 Btu", "several definitions: write kJ"},
		{only(ParsePower), "5 hp", "several definitions: write kW"},
		{only(ParseFraction), "", "empty"},
		{only(ParseFraction), "85", `"85" is more than 1: write 85 % if a percentage is meant`},
		{only(ParseFraction), "850", "beyond the highest plausible value for a fraction (100 %)"},
		{only(ParseFraction), "100.1 %", "beyond the highest plausible value for a fraction (100 %)"},
		{only(ParseFraction), "-1 %", "a fraction cannot be"},
		{only(ParseFraction), "-0.1", "a fraction cannot be"},
		{only(ParseFraction), "1e-2", "has an exponent and no unit"},
		{only(ParseFraction), "40 % vol", "write the percentage alone"},
		{only(ParseFlowCoefficient), "", "empty"},
		{only(ParseFlowCoefficient), "0.06", "does not say Cv or Kv: write Cv 0.06 (= Kv 0.0519) or Kv 0.06 (= Cv 0.06937)"},
		{only(ParseFlowCoefficient), "Dv 0.06", "unknown unit \"Dv\" for a flow coefficient"},
		{only(ParseFlowCoefficient), "Cv -1", "a flow coefficient cannot be"},
		{only(ParseMonths), "12", "write an interval like 12 months or 5 years"},
		{only(ParseMonths), "0 months", "not a whole number of months"},
		{only(ParseMonths), "1.5 months", "not a whole number of months"},
		{only(ParseMonths), "30 days", "does not make whole months"},
		{only(ParseMonths), "3 m", "minutes or months"},
		{only(ParseMonths), "101 years", "beyond the highest plausible value for an interval (1200 months)"},
		{only(ParseMass), "5 " + strings.Repeat("x", 200), "..."},
	} {
		assert.ErrorContains(t, c.parse(c.typed), c.want, c.typed)
	}
}
