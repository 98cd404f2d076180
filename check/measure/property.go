package measure

import (
	"fmt"
	"math"

	"lineworthy/check/units"
)

// Equation is a property equation of one fluid with its coefficients and the range it is good for.
//
// The forms are those of Perry's Chemical Engineers' Handbook 8th ed. section 2 (DIPPR 101, 105, 116), of Wagner
// (2.5-5 and 3-6 forms; McGarry, Ind. Eng. Chem. Process Des. Dev. 22 (1983) 313), of Antoine, and COSTALD (Hankinson &
// Thomson, AIChE J. 25 (1979) 653); all restated. Besides: "point" (one density and its temperature), "kell" (water) and
// "exp-quadratic" (compressibility), see density.go and liquid.go.
type Equation struct {
	Name     string
	C        []float64
	From, To units.Temperature
}

// form is one equation: how many coefficients it takes and its value at a temperature in kelvin.
type form struct {
	n  int
	at func(c []float64, k float64) float64
}

var vapourForms = map[string]form{
	"wagner-25": {6, func(c []float64, k float64) float64 { return wagner(c, k, 1.5, 2.5, 5) }},
	"wagner-36": {6, func(c []float64, k float64) float64 { return wagner(c, k, 1.5, 3, 6) }},
	"dippr-101": {5, dippr101},
	"antoine":   {3, func(c []float64, k float64) float64 { return math.Exp(c[0] - c[1]/(k+c[2])) }},
}

func wagner(c []float64, k, a, b, d float64) float64 {
	tau := 1 - k/c[4]
	if tau < 0 {
		return math.NaN()
	}
	return c[5] * math.Exp(c[4]/k*(c[0]*tau+c[1]*math.Pow(tau, a)+c[2]*math.Pow(tau, b)+c[3]*math.Pow(tau, d)))
}

func dippr101(c []float64, k float64) float64 {
	last := 0.0
	if c[3] != 0 {
		last = c[3] * math.Pow(k, c[4])
	}
	return math.Exp(c[0] + c[1]/k + c[2]*math.Log(k) + last)
}

// VapourPressure is the saturation pressure at t, absolute. Errors: a form not known, coefficients missing, t outside
// the equation's range.
func VapourPressure(e Equation, t units.Temperature) (units.AbsolutePressure, error) {
	v, err := e.eval(vapourForms, "vapour pressure", t)
	return units.AbsolutePressure(v), err
}

func (e Equation) eval(forms map[string]form, what string, t units.Temperature) (float64, error) {
	f, ok := forms[e.Name]
	if !ok || len(e.C) < f.n {
		return 0, fmt.Errorf("%s: equation %q with %d coefficients is not known", what, e.Name, len(e.C))
	}
	if !(t >= e.From && t <= e.To) { // not a number is outside too
		return 0, &OutsideError{what, "K", float64(t), float64(e.From), float64(e.To)}
	}
	v := f.at(e.C, float64(t))
	if math.IsNaN(v) || math.IsInf(v, 0) || v < 0 {
		return 0, &OutsideError{what, "K", float64(t), float64(e.From), float64(e.To)}
	}
	return v, nil
}
