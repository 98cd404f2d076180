package measure

import (
	"errors"
	"math"

	"lineworthy/check/units"
)

// Liquid is what a blocked-in section needs to know of a liquid.
type Liquid struct {
	Vapour          Equation
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

// Expansion is the cubic expansion of the liquid at constant pressure in 1/K. The density equation runs along saturation,
// where the rising vapour pressure holds the liquid back, and so compressibility times the slope of the vapour pressure is
// added: little for a solvent, a sixth for a liquefied gas near its critical point. Errors as the three equations.
func (l Liquid) Expansion(t units.Temperature) (float64, error) {
	a, err := SaturationExpansion(l.Density, l.MolarMass, t)
	if err != nil {
		return 0, err
	}
	kappa, err := Compressibility(l.Compressibility, t)
	if err != nil {
		return 0, err
	}
	rise, err := vapourSlope(l.Vapour, t)
	return a + kappa*rise, err
}

// vapourSlope is dpsat/dT in Pa/K.
func vapourSlope(e Equation, t units.Temperature) (float64, error) {
	if _, err := VapourPressure(e, t); err != nil {
		return 0, err
	}
	from, to := max(t-expansionStepK, e.From), min(t+expansionStepK, e.To)
	cold, err := VapourPressure(e, from)
	if err != nil {
		return 0, err
	}
	hot, err := VapourPressure(e, to)
	return float64(hot-cold) / float64(to-from), errors.Join(err, errIfEmpty(from, to))
}

// SaturationExpansion is the slope of the density equation in 1/K, one-sided at the ends of its range. A single density
// has no slope, which is an error, not zero. Other errors as LiquidDensity.
func SaturationExpansion(e Equation, molarMass float64, t units.Temperature) (float64, error) {
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
		return errors.New("the expansion of the liquid is not known: an equation has no range")
	}
	return nil
}
