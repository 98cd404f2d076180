package measure_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"lineworthy/check/measure"
	"lineworthy/check/units"
)

// airRho is the density of a gas of relative density sg at a pressure and temperature, ideal.
func gasRho(sg float64, p units.AbsolutePressure, t units.Temperature) units.Density {
	return units.Density(float64(p) * sg * 0.0289647 / (8.314462618 * float64(t)))
}

// scfh is a mass flow as cubic feet an hour at 60 °F and 1 atm.
func scfh(kgPerS, sg float64) float64 {
	return kgPerS / float64(gasRho(sg, seaLevel, fahrenheit(60))) * 3600 / (foot * foot * foot)
}

// Restated: Crane TP-410 example 7.16, print 2.61 psi, an open library 2.715. Air at 65 psig and 115 °F, 100 scfm in 75 ft
// of 1 in schedule 40 (bore 1.049 in). Recalled: roughness 0.0018 in, viscosity 0.0192 mPa s.
func TestV5_5(t *testing.T) {
	p1 := units.GaugePressure(65 * psi).Absolute(seaLevel)
	const bore = 1.049 * inch
	w := 100 * 60 / 3600.0 * foot * foot * foot * float64(gasRho(1, seaLevel, fahrenheit(60)))
	re := 4 * w / (3.14159265 * bore * 1.92e-5)
	g := measure.GasPipe{Bore: bore, Inlet: gasRho(1, p1, fahrenheit(115)),
		Resistance: no(measure.Colebrook(re, 0.0018/1.049)) * 75 * foot / bore}
	drop := no(measure.IsothermalDrop(g, p1, w)) / psi
	near(t, 2.61, drop, 5e-2)
	near(t, 2.715, drop, 5e-2)
	_, err := measure.IsothermalDrop(g, p1, 10*w)
	refuses(t, err)
}

// Restated: Crane TP-410 example 7.22, print 3762 scfh, an open library 3773.6. Recalled: 100 °F, bore 0.546 in, total
// resistance 7.04, which give the print by its own method.
func TestV5_6(t *testing.T) {
	p1 := units.GaugePressure(19.3 * psi).Absolute(seaLevel)
	g := measure.GasPipe{Bore: 0.546 * inch, Resistance: 7.04, Inlet: gasRho(1, p1, fahrenheit(100))}
	q := scfh(measure.IsothermalFlow(g, p1, seaLevel), 1)
	near(t, 3762, q, 1e-2)
	near(t, 3773.6, q, 1e-2)
}

// The same example, counted at 15 °C instead of 60 °F. At twice the absolute pressure of choked flow twice the gas comes, for
// the speed of sound does not change; a lighter gas comes as more volume, by the root of the molar mass.
func TestBlowThrough(t *testing.T) {
	p1 := units.GaugePressure(19.3 * psi).Absolute(seaLevel)
	g := measure.GasPipe{Bore: 0.546 * inch, Resistance: 7.04}
	q := float64(measure.BlowThrough(g, p1, seaLevel, fahrenheit(100), 28.9647))
	near(t, 3762, q*3600/(foot*foot*foot)*float64(fahrenheit(60))/288.15, 1e-2)
	at := func(p units.AbsolutePressure, m float64) float64 {
		return float64(measure.BlowThrough(g, p, seaLevel, 288.15, m))
	}
	near(t, 2, at(20*seaLevel, 28)/at(10*seaLevel, 28), 1e-9)
	near(t, 2, at(10*seaLevel, 7)/at(10*seaLevel, 28), 1e-9)
	assert.Zero(t, at(seaLevel, 28))
}

// Restated: Crane TP-410 example 7.21, coke-oven gas, print 1 028 000 scfh, isothermal by an open library 922 210.
// Recalled: 125 psig, 140 °F, relative density 0.42, bore 3.068 in, resistance 2.87, which give the print by its own method.
func TestV5_7(t *testing.T) {
	p1 := units.GaugePressure(125 * psi).Absolute(seaLevel)
	g := measure.GasPipe{Bore: 3.068 * inch, Resistance: 2.87, Inlet: gasRho(0.42, p1, fahrenheit(140))}
	assert.Greater(t, measure.IsothermalChoke(p1, g.Resistance), seaLevel)
	q := scfh(measure.IsothermalFlow(g, p1, seaLevel), 0.42)
	near(t, 1028000, q, 0.12)
	near(t, 922210, q, 0.12)
}

// Restated: an open library's documented values (recalled to all their digits).
func TestV5_11(t *testing.T) {
	g := measure.GasPipe{Bore: 0.5, Resistance: 0.00185 * 1000 / 0.5, Inlet: 11.3}
	near(t, 145.4847572636031, measure.IsothermalFlow(g, 10*bar, 9*bar), 1e-8)
	prints(t, 145.4848, measure.IsothermalFlow(g, 10*bar, 9*bar), 4)
	near(t, 389699.73, measure.IsothermalChoke(10*bar, g.Resistance), 2e-8) // eight digits are given
	near(t, 389699.7317645518, measure.IsothermalChoke(10*bar, g.Resistance), 1e-8)
}

// Below the choke pressure the flow stays, above it falls; the drop of a flow gives the flow back.
func TestIsothermalFlow(t *testing.T) {
	g := measure.GasPipe{Bore: 0.05, Resistance: 20, Inlet: 5}
	choke := measure.IsothermalChoke(5*bar, 20)
	most := measure.IsothermalFlow(g, 5*bar, choke)
	near(t, most, measure.IsothermalFlow(g, 5*bar, choke/2), 1e-12)
	assert.Zero(t, measure.IsothermalFlow(g, 5*bar, 5*bar))
	rapid.Check(t, func(t *rapid.T) {
		p2 := units.AbsolutePressure(rapid.Float64Range(float64(choke)*1.001, 4.99e5).Draw(t, "p2"))
		w := measure.IsothermalFlow(g, 5*bar, p2)
		assert.LessOrEqual(t, w, most*(1+1e-12))
		near(t, float64(5*bar-p2), no(measure.IsothermalDrop(g, 5*bar, w)), 1e-3)
	})
}
