package measure

import (
	"math"

	"lineworthy/check/units"
)

// viscosityForms: DIPPR 101 and Perry's 8th ed. section 2 equation 9 (restated), and the three-constant form of Viswanath
// & Natarajan, Data Book on the Viscosity of Liquids, 1989 (restated), which gives the logarithm of millipascal seconds.
var viscosityForms = map[string]form{
	"dippr-101-viscosity": {5, dippr101},
	"perry-9": {5, func(c []float64, k float64) float64 {
		x := (c[2] - k) / (k - c[3])
		return c[4] * math.Exp(c[0]*math.Cbrt(x)+c[1]*x*math.Cbrt(x))
	}},
	"viswanath-3": {3, func(c []float64, k float64) float64 { return math.Pow(10, c[0]+c[1]/(c[2]-k)) / 1000 }},
}

// LiquidViscosity is the viscosity of the liquid at t. Errors as VapourPressure.
func LiquidViscosity(e Equation, t units.Temperature) (units.Viscosity, error) {
	v, err := e.eval(viscosityForms, "liquid viscosity", t)
	return units.Viscosity(v), err
}
