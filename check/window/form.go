package window

import (
	"math"

	"lineworthy/check/facts"
)

// form is a pressure in Pa over a temperature of x °C: a + b x + k/x. Every table is made of such pieces.
type form struct{ a, b, k float64 }

func (f form) at(x float64) float64 {
	y := f.a + f.b*x
	if f.k != 0 {
		y += f.k / x
	}
	return y
}

// meets are the temperatures at which two forms are equal: roots of b x^2 + a x + k, or of a + b x without hyperbolas.
func meets(f, g form) []float64 {
	d := form{f.a - g.a, f.b - g.b, f.k - g.k}
	if d.k == 0 {
		if d.b == 0 {
			return nil
		}
		return []float64{-d.a / d.b}
	}
	return roots(d.b, d.a, d.k)
}

// roots are the real roots of p x^2 + q x + r, found without loss of digits where q is large.
func roots(p, q, r float64) []float64 {
	if p == 0 {
		if q == 0 {
			return nil
		}
		return []float64{-r / q}
	}
	disc := q*q - 4*p*r
	if disc < 0 {
		return nil
	}
	s := -(q + math.Copysign(math.Sqrt(disc), q)) / 2
	if s == 0 {
		return []float64{0}
	}
	return []float64{s / p, r / s}
}

// rows are the temperatures in °C at which a bound changes its form, and the span in which it says anything.
func rows(h facts.Hold) (ts []float64, from, to float64) {
	from, to = math.Inf(-1), math.Inf(1)
	if h.PerCelsius > 0 {
		return []float64{0}, from, to
	}
	if h.Table == nil || len(h.Table.T) == 0 {
		return nil, from, to
	}
	for _, t := range h.Table.T {
		ts = append(ts, clean(t.Celsius()))
	}
	from, to = ts[0], ts[len(ts)-1]
	if flat := clean(h.Table.FlatFrom.Celsius()); h.Table.FlatFrom > 0 && flat < from {
		from, ts = flat, append([]float64{flat}, ts...)
	}
	return ts, from, to
}

// formAt is the form of the bound around x, which is not one of its rows; false when it bounds nothing there.
func formAt(h facts.Hold, x float64) (form, bool) {
	switch {
	case h.PerCelsius > 0:
		return form{k: h.PerCelsius}, x > 0
	case h.Table == nil:
		return form{a: float64(h.Flat)}, true
	}
	c := h.Table
	next := 0
	for next < len(c.T)-1 && clean(c.T[next].Celsius()) < x {
		next++
	}
	if next == 0 || c.Steps {
		return form{a: c.Y[next] * h.Scale}, true
	}
	x0, x1 := clean(c.T[next-1].Celsius()), clean(c.T[next].Celsius())
	y0, y1 := c.Y[next-1]*h.Scale, c.Y[next]*h.Scale
	slope := (y1 - y0) / (x1 - x0)
	return form{a: y0 - slope*x0, b: slope}, true
}

// clean takes the dust off a temperature that went through kelvin: tables and sheets have no billionths of a degree.
func clean(c float64) float64 { return math.Round(c*1e9) / 1e9 }
