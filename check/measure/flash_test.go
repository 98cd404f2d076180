package measure_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"lineworthy/catalog"
	"lineworthy/check/measure"
	"lineworthy/check/units"
)

// Computed, and recalled of Crowl & Louvar as near 0.146: saturated water at 350 °F let down to 1 atm. The latent heat
// 2256.5 kJ/kg and heat capacity 4.216 kJ/(kg K) at 100 °C are of the steam tables (recalled).
func TestV11_6(t *testing.T) {
	const latent, cp = 2256.5e3, 4216
	hot, boiling := fahrenheit(350), c(99.974)
	psat := no(measure.VapourPressure(fullRange(fluid(t, "water").VapourP), hot))
	near(t, 134.63, psat/psi, 5e-3)
	h0, hb := no(measure.WaterEnthalpy(psat, hot)), no(measure.WaterEnthalpy(seaLevel, boiling))
	near(t, 0.146, measure.FlashFraction(h0, hb, latent), 5e-3)
	superheat := float64(hot.Minus(boiling))
	near(t, 0.143, measure.FlashFractionCp(cp, superheat, latent), 5e-3)
	near(t, 0.133, measure.FlashFractionExp(cp, superheat, latent), 5e-3)
}

// Computed: 20 °C to 1 atm. Enthalpies of the saturated liquid and latent heats at the boiling point in kJ/kg, of the
// equations of state of Lemmon 2009 and Buecker & Wagner 2006 (recalled); butane's rise is its heat capacity, 2311.87 at
// 0 °C to 2412.85 at 20 °C (computed), over 20.49 K.
func TestV11_7(t *testing.T) {
	near(t, .3555, measure.FlashFraction(251.64, 100.36, 425.59), 5e-3)
	near(t, .1256, measure.FlashFractionCp((2311.87+2412.85)/2, 20.49, 385.71e3), 5e-3)
	assert.Zero(t, measure.FlashFraction(1, 2, 3))
	assert.Zero(t, measure.FlashFractionCp(1, -2, 3))
	assert.Zero(t, measure.FlashFractionExp(1, -2, 3))
}

// fullRange lifts the upper end of an equation to the critical temperature, which it holds.
func fullRange(e *catalog.Equation) measure.Equation {
	out := equation(e)
	out.To = units.Temperature(out.C[4])
	return out
}
