package measure

import (
	"math"

	"lineworthy/check/units"
)

var densityForms = map[string]form{
	"dippr-116": {6, dippr116},
	"costald":   {3, costald},
	"point":     {2, func(c []float64, _ float64) float64 { return c[0] }},
	"kell":      {0, kell},
	"dippr-105": {4, func(c []float64, k float64) float64 {
		return c[0] / math.Pow(c[1], 1+math.Pow(1-k/c[2], c[3]))
	}},
}

// LiquidDensity is the density of the saturated liquid at t. molarMass in g/mol turns the molar forms into mass.
// Errors as VapourPressure.
func LiquidDensity(e Equation, molarMass float64, t units.Temperature) (units.Density, error) {
	v, err := e.eval(densityForms, "liquid density", t)
	if err != nil {
		return 0, err
	}
	switch e.Name {
	case "dippr-105": // mol/m3
		v *= molarMass / 1000
	case "costald": // m3/mol
		v = molarMass / 1000 / v
	}
	return units.Density(v), nil
}

func dippr116(c []float64, k float64) float64 {
	tau := 1 - k/c[5]
	if tau < 0 {
		return math.NaN()
	}
	return c[4] + c[0]*math.Pow(tau, 0.35) + c[1]*math.Pow(tau, 2.0/3) + c[2]*tau + c[3]*math.Pow(tau, 4.0/3)
}

func costald(c []float64, k float64) float64 {
	tr := k / c[2]
	tau := 1 - tr
	if tau < 0 {
		return math.NaN()
	}
	v0 := 1 - 1.52816*math.Cbrt(tau) + 1.43907*math.Pow(tau, 2.0/3) - 0.81446*tau + 0.190454*math.Pow(tau, 4.0/3)
	vd := (-0.296123 + 0.386914*tr - 0.0427258*tr*tr - 0.0480645*tr*tr*tr) / (tr - 1.00001)
	return c[0] * v0 * (1 - c[1]*vd)
}

// kell is the density of water at 1 atm: Kell, J. Chem. Eng. Data 20 (1975) 97, coefficients recalled. The saturation
// equations of other fluids cannot follow water's density maximum.
func kell(_ []float64, k float64) float64 {
	t := k - 273.15
	top := 999.83952 + t*(16.945176+t*(-7.9870401e-3+t*(-46.170461e-6+t*(105.56302e-9-t*280.54253e-12))))
	return top / (1 + 16.879850e-3*t)
}
