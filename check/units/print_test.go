package units

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestPressurePrintKeepsItsMark(t *testing.T) {
	for _, c := range []struct {
		pa       float64
		unit     Unit
		gauge    string
		absolute string
		step     string
	}{
		{6e5, "bar(g)", "6.0 bar(g)", "6.0 bar(a)", "6.0 bar"},
		{6e5, "bar(a)", "6.0 bar(g)", "6.0 bar(a)", "6.0 bar"},
		{6e5, "bar", "6.0 bar(g)", "6.0 bar(a)", "6.0 bar"},
		{6e5, "cubit", "6.0 bar(g)", "6.0 bar(a)", "6.0 bar"},
		{6e5, "", "6.0 bar(g)", "6.0 bar(a)", "6.0 bar"},
		{1e6, "psig", "145 psig", "145 psia", "145 psi"},
		{1.6e6, "kPa(g)", "1600 kPa(g)", "1600 kPa(a)", "1600 kPa"},
		{16e5, "bar(g)", "16 bar(g)", "16 bar(a)", "16 bar"},
		{35e3, "bar(g)", "0.35 bar(g)", "0.35 bar(a)", "0.35 bar"},
		{-5e4, "bar(g)", "-0.50 bar(g)", "-0.50 bar(a)", "-0.50 bar"},
		{1e-11, "bar(g)", "0.0 bar(g)", "0.0 bar(a)", "0.0 bar"},
		{0, "psig", "0.0 psig", "0.0 psia", "0.0 psi"},
		{1034213.594, "bar(g)", "10.34 bar(g)", "10.34 bar(a)", "10.34 bar"},
		{999999, "bar(g)", "10.0 bar(g)", "10.0 bar(a)", "10.0 bar"},
	} {
		assert.Equal(t, c.gauge, GaugePressure(c.pa).Format(c.unit))
		assert.Equal(t, c.absolute, AbsolutePressure(c.pa).Format(c.unit))
		assert.Equal(t, c.step, PressureDifference(c.pa).Format(c.unit))
	}
}

func TestSystems(t *testing.T) {
	si, err := ParseSystem(" si ")
	require.NoError(t, err)
	us, err := ParseSystem("US")
	require.NoError(t, err)
	kgf, err := ParseSystem("kgf/cm²")
	require.NoError(t, err)
	assert.Equal(t, si, DefaultSystem())
	show := func(s System) []string {
		return []string{s.Gauge(1e6), s.Absolute(1e6), s.Difference(1e6), s.Degrees(Celsius(55)), s.Step(5), s.Distance(0.0381)}
	}
	assert.Equal(t, []string{"10 bar(g)", "10 bar(a)", "10 bar", "55 °C", "5 K", "38.1 mm"}, show(si))
	assert.Equal(t, []string{"145 psig", "145 psia", "145 psi", "131 °F", "9 °F", "1.5 in"}, show(us))
	assert.Equal(t, []string{"10.2 kgf/cm2(g)", "10.2 kgf/cm2(a)", "10.2 kgf/cm2", "55 °C", "5 K", "38.1 mm"}, show(kgf))
	assert.Equal(t, show(si), show(System{}))
	for _, s := range []System{si, us, kgf, {}} {
		assert.NoError(t, s.Check())
	}
}

func TestSystemFaultsAreAllReported(t *testing.T) {
	err := System{Pressure: "psgi", Temperature: "°X", Length: "mmm"}.Check()
	assert.ErrorContains(t, err, "did you mean psig?")
	assert.ErrorContains(t, err, `unknown unit "°X" for a temperature`)
	assert.ErrorContains(t, err, "did you mean mm?")
	_, err = ParseSystem("kgf/cm")
	assert.ErrorContains(t, err, "did you mean kgf/cm2?: write SI, US or kgf/cm2")
}

func TestPrintOtherQuantities(t *testing.T) {
	for want, got := range map[string]string{
		"50 mm2": Area(50e-6).String(), "1000 L": Volume(1).String(), "3 m3/h": VolumeFlow(3.0 / 3600).String(),
		"12.5 kg": Mass(12.5).String(), "90 s": Time(90).String(), "1.5 min": Time(90).Format("min"),
		"2 m/s": Velocity(2).String(), "0.4 mPa s": Viscosity(4e-4).String(), "805 kg/m3": Density(805).String(),
		"10 ohm": Resistance(10).String(), "1 Mohm": Resistance(1e6).Format("Mohm"), "50 pS/m": Conductivity(50e-12).String(),
		"1e-09 S/m": Conductivity(1e-9).Format("S/m"), "120 N": Force(120).String(), "5000 J": Energy(5000).String(),
		"2 kW": Power(2000).Format("kW"), "2000 W": Power(2000).String(), "85 %": Fraction(0.85).String(), "850 ‰": Fraction(0.85).Format("‰"),
		"Cv 0.06": FromCv(0.06).Format("Cv"), "Kv 0.05": FromKv(0.05).String(), "Kv 0.07": FromKv(0.07).Format("Xv"),
		"150 mm": Length(0.15).String(), "31.75 mm": Length(0.03175).String(), "0 mm": Length(0).String(),
		"5 K": TemperatureDifference(5).String(), "20 °C": Celsius(20).String(), "0 °C": Celsius(-0.01).String(),
		"56.1 °C": Celsius(56.07).String(), "293.2 K": Celsius(20).Format("K"), "-40 °F": Celsius(-40).Format("°F"), "30 °C": Celsius(30).Format("?"),
		"1 month": Months(1).String(), "18 months": Months(18).String(), "1 year": Months(12).String(), "5 years": Months(60).String(),
	} {
		assert.Equal(t, want, got)
	}
	assert.Equal(t, []string{"6.0 bar(g)", "6.0 bar(a)", "6.0 bar"},
		[]string{GaugePressure(6e5).String(), AbsolutePressure(6e5).String(), PressureDifference(6e5).String()})
	assert.Equal(t, "NaN mm", Length(nan()).String())
}
