package units

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func nan() float64 { return math.NaN() }
func inf() float64 { return math.Inf(1) }

func TestPressureSpellings(t *testing.T) {
	for unit, spellings := range map[Unit][]string{
		"bar(g)":     {"bar(g)", "barg", "bar g", "BARG", "bar gauge", "bar (gauge)", "bar-g", "Bar(G)", "bar[g]", "bar gage"},
		"bar(a)":     {"bar(a)", "bara", "bar a", "bar abs", "bar absolute", "bar(abs)", "bar (absolute)"},
		"psig":       {"psig", "PSIG", "psi(g)", "psi g", "p.s.i.g.", "lbf/in2(g)", "lb/in² g", "psi gauge"},
		"psia":       {"psia", "PSIA", "psi(a)", "psi abs"},
		"kPa(g)":     {"kPa(g)", "kPag", "kpa g", "KPA(G)"},
		"kPa(a)":     {"kPa(a)", "kPaa", "kpa abs"},
		"MPa(g)":     {"MPa(g)", "MPag", "N/mm2(g)"},
		"MPa(a)":     {"MPa(a)", "MPa abs"},
		"mbar(g)":    {"mbar(g)", "mbarg", "hPa(g)"},
		"Pa(g)":      {"Pa(g)", "Pag", "pa gauge"},
		"Pa(a)":      {"Pa(a)", "Paa"},
		"kgf/cm2(g)": {"kgf/cm2(g)", "kg/cm2(g)", "kgf/cm²g", "kg/cm^2 g", "kp/cm2 gauge"},
		"ksi(g)":     {"ksi(g)", "ksig"},
		"atm(a)":     {"atm(a)", "atma", "atm abs"},
		"inH2O(g)":   {"inH2O(g)", "in. H2O g"},
		"mmHg(a)":    {"mmHg(a)", "mmHg abs"},
		"inHg(g)":    {"inHg(g)", "inHgg"},
	} {
		for _, spelling := range spellings {
			p, err := ParsePressure("3 " + spelling)
			require.NoError(t, err, spelling)
			assert.Equal(t, unit, p.Unit, spelling)
			assert.Equal(t, "3 "+spelling, p.Typed)
			again, err := ParsePressure("3" + string(unit))
			require.NoError(t, err)
			assert.Equal(t, again.Pascals, p.Pascals, spelling)
		}
	}
}

func TestPressureRefusals(t *testing.T) {
	for typed, want := range map[string]string{
		"16 bar":            `"16 bar" does not say gauge or absolute: write 16 bar(g) (= 17.013 bar(a) at sea level) or 16 bar(a) (= 14.987 bar(g))`,
		"150 psi":           `write 150 psig (= 164.7 psia at sea level) or 150 psia (= 135.3 psig)`,
		"600 kPa":           `write 600 kPa(g) (= 701.33 kPa(a) at sea level) or 600 kPa(a) (= 498.68 kPa(g))`,
		"1.6 MPa":           `write 1.6 MPa(g) (= 1.7013 MPa(a) at sea level)`,
		"10 kgf/cm2":        `write 10 kgf/cm2(g) (= 11.033 kgf/cm2(a) at sea level)`,
		"-0.5 bar":          `write -0.5 bar(g) (= 0.51325 bar(a) at sea level); it cannot be absolute`,
		"5 psgi":            `did you mean psig?`,
		"5 barr(g)":         `did you mean bar(g)?`,
		"5 furlong":         `unknown pressure unit "furlong" (known: bar(g), bar(a), psig`,
		"7 kg":              `write kgf/cm2(g)`,
		"0.5 bar vac":       `below zero in gauge`,
		"5":                 `no unit: write a pressure like 6 bar(g)`,
		"":                  `empty: write a number and a unit`,
		"bar(g)":            `does not start with a number`,
		"NaN bar(g)":        `does not start with a number`,
		"Inf bar(g)":        `does not start with a number`,
		"1,5 bar(g)":        `has a decimal comma: write 1.5`,
		"1,000 psig":        `can be read two ways: write 1000 or 1.000`,
		"1 000 kPa(g)":      `splits the number with a space or underscore: write 1000`,
		"1\u202f000 kPa(g)": `write 1000`,
		"1\u2009000 kPa(g)": `write 1000`,
		"1_000 kPa(g)":      `write 1000`,
		"1.000.000 Pa(g)":   `two decimal points`,
		"0x10 bar(g)":       `hexadecimal`,
		"1 1/2 bar(g)":      `a fraction, which is read for inches and feet only`,
		"1e999 bar(g)":      `too large a number`,
		"1e3":               `no unit`,
		"1.1e5 bar(g)":      `beyond any plausible pressure`,
		"-1 bar(a)":         `an absolute pressure cannot be`,
		"-1.2 bar(g)":       `deeper than a full vacuum`,
	} {
		_, err := ParsePressure(typed)
		assert.ErrorContains(t, err, want, typed)
		_, _, err = ParseGauge(typed)
		assert.ErrorContains(t, err, want, typed)
		_, _, err = ParseAbsolute(typed)
		assert.ErrorContains(t, err, want, typed)
	}
}

func TestPressureBasisRefusals(t *testing.T) {
	_, _, err := ParseGauge("4 bar(a)")
	assert.ErrorContains(t, err, `"4 bar(a)" is absolute where a gauge pressure is wanted: at sea level write 2.987 bar(g)`)
	_, _, err = ParseAbsolute("150 psig")
	assert.ErrorContains(t, err, `"150 psig" is gauge where an absolute pressure is wanted: at sea level write 164.7 psia`)
	_, _, err = ParsePressureDifference("5 psig")
	assert.ErrorContains(t, err, `"5 psig" is gauge where a pressure difference is wanted: write 5 psi`)
	for typed, want := range map[string]string{
		"": "empty", "5": "no unit", "5 pis": "did you mean psig?", "1e6 bar": "beyond any plausible pressure",
	} {
		_, _, err = ParsePressureDifference(typed)
		assert.ErrorContains(t, err, want, typed)
	}
}

func TestPressureLimitsAccepted(t *testing.T) {
	for _, typed := range []string{"1e5 bar(g)", "-1.09 bar(g)", "0 bar(a)", "0 bar(g)", "1.5e1 bar(g)", "+3 bar(g)", ".5 bar(g)", "5. bar(g)"} {
		_, err := ParsePressure(typed)
		assert.NoError(t, err, typed)
	}
}

func TestPressureResolves(t *testing.T) {
	p, err := ParsePressure("2 bar(a)")
	require.NoError(t, err)
	assert.Equal(t, AbsoluteBasis, p.Basis)
	assert.InDelta(t, 1.2e5, float64(p.Gauge(0.8e5)), 1e-6)
	assert.InDelta(t, 2e5, float64(p.Absolute(0.8e5)), 1e-6)
	assert.Equal(t, "2.0 bar(a)", p.String())
	p, err = ParsePressure("2 bar(g)")
	require.NoError(t, err)
	assert.InDelta(t, 2e5, float64(p.Gauge(0.8e5)), 1e-6)
	assert.InDelta(t, 2.8e5, float64(p.Absolute(0.8e5)), 1e-6)
	assert.Equal(t, []string{"gauge", "absolute", "unstated"}, []string{GaugeBasis.String(), AbsoluteBasis.String(), Basis(0).String()})
}

func TestPressureArithmetic(t *testing.T) {
	d, unit, err := ParsePressureDifference("1 psid")
	require.NoError(t, err)
	assert.Equal(t, Unit("psi"), unit)
	assert.InEpsilon(t, 6894.757, float64(d), 2e-7)
	d, unit, err = ParsePressureDifference("0.5 bar(d)")
	require.NoError(t, err)
	assert.Equal(t, Unit("bar"), unit)
	assert.Equal(t, GaugePressure(1.5e5), GaugePressure(1e5).Plus(d))
	assert.Equal(t, AbsolutePressure(1.5e5), AbsolutePressure(1e5).Plus(d))
	assert.Equal(t, d, GaugePressure(1.5e5).Minus(1e5))
	assert.Equal(t, d, AbsolutePressure(1.5e5).Minus(1e5))
}

func TestPressureInRefusesTheOtherBasis(t *testing.T) {
	_, err := GaugePressure(1e5).In("psia")
	assert.ErrorContains(t, err, "is not gauge")
	_, err = AbsolutePressure(1e5).In("psig")
	assert.ErrorContains(t, err, "is not absolute")
	_, err = GaugePressure(1e5).In("brg")
	assert.ErrorContains(t, err, "did you mean barg?")
	_, err = PressureDifference(1e5).In("brg")
	assert.ErrorContains(t, err, "unknown pressure unit")
	kpa, err := PressureDifference(1e5).In("kPa(g)")
	require.NoError(t, err)
	assert.Equal(t, 100.0, kpa)
}
