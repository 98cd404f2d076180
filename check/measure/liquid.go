package measure

import (
	"errors"
	"math"

	"lineworthy/check/units"
)

// Liquid is what a blocked-in section needs to know of a liquid.
type Liquid struct {
	Density         Equation
	Compressibility Equation
	MolarMass       float64 // g/mol, for the molar forms of density
}

// compressForms: kappa = exp(c0 + c1 x + c2 x^2) 1/Pa, x = t - 20 °C, a fit to equations of state (computed).
var compressForms = map[string]form{
	"exp-quadratic": {3, func(c []float64, k float64) float64 {
		x := k - 293.15
		return math.Exp(c[0] + x*(c[1]+x*c[2]))
	}},
}

// Compressibility is the isothermal compressibility of the liquid in 1/Pa. Errors as VapourPressure.
func Compressibility(e Equation, t units.Temperature) (float64, error) {
	return e.eval(compressForms, "liquid compressibility", t)
}

// expansionStepK is wide enough for the digits of a density and narrow enough for its curve.
const expansionStepK = 0.05

// Expansion is the cubic expansion of the liquid in 1/K, the slope of its density equation, one-sided at the ends of the
// range. It is the slope along saturation, within 1 % of that at constant pressure below 0.9 Tc (computed). A single
// density has no slope, which is an error, not zero. Other errors as LiquidDensity.
func Expansion(e Equation, molarMass float64, t units.Temperature) (float64, error) {
	if e.Name == "point" {
		return 0, errors.New("the expansion of the liquid is not known: its density is held at one temperature only")
	}
	if _, err := LiquidDensity(e, molarMass, t); err != nil {
		return 0, err
	}
	from, to := max(t-expansionStepK, e.From), min(t+expansionStepK, e.To)
	cold, err := LiquidDensity(e, molarMass, from)
	if err != nil {
		return 0, err
	}
	hot, err := LiquidDensity(e, molarMass, to)
	if err != nil || from == to {
		return 0, errors.Join(err, errIfEmpty(from, to))
	}
	return math.Log(float64(cold/hot)) / float64(to-from), nil
}

func errIfEmpty(from, to units.Temperature) error {
	if from == to {
		return errors.New("the expansion of the liquid is not known: its density equation has no range")
	}
	return nil
}
