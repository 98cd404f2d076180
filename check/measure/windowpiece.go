package measure

import (
	"math"
	"slices"

	"lineworthy/check/units"
)

// piece is where the margin, a parabola at most, is not negative between two breakpoints. It is read inside the piece, so
// that a table of steps shows the value that holds there.
func piece(a, b units.Temperature, margin func(units.Temperature) float64) (out []Interval) {
	mid, quarter := (a+b)/2, (b-a)/4
	f1, f2, f3 := margin(mid-quarter), margin(mid), margin(mid+quarter)
	ends := []units.Temperature{a}
	for _, v := range roots((f1-2*f2+f3)/2, (f3-f1)/2, f2) {
		if t := mid + quarter*units.Temperature(v); t > a && t < b {
			ends = append(ends, t)
		}
	}
	ends = append(ends, b)
	for i := 0; i+1 < len(ends); i++ {
		if margin((ends[i]+ends[i+1])/2) >= 0 {
			out = append(out, Interval{ends[i], ends[i+1]})
		}
	}
	return join(out)
}

// roots are the real roots of a v^2 + b v + c, ascending. A curvature lost in rounding counts as none.
func roots(a, b, c float64) []float64 {
	scale := math.Abs(b) + math.Abs(c)
	if math.Abs(a) <= 1e-13*scale {
		if b == 0 {
			return nil
		}
		return []float64{-c / b}
	}
	d := b*b - 4*a*c
	if d < 0 {
		return nil
	}
	q := -(b + math.Copysign(math.Sqrt(d), b)) / 2
	if q == 0 {
		return []float64{0}
	}
	r := []float64{q / a, c / q}
	slices.Sort(r)
	return r
}

// join makes one interval of those that touch; they come in order.
func join(in []Interval) (out []Interval) {
	for _, i := range in {
		if n := len(out); n > 0 && out[n-1].To >= i.From {
			out[n-1].To = max(out[n-1].To, i.To)
			continue
		}
		out = append(out, i)
	}
	return out
}

// intersect is what both lists cover.
func intersect(a, b []Interval) (out []Interval) {
	for _, x := range a {
		for _, y := range b {
			if i := (Interval{max(x.From, y.From), min(x.To, y.To)}); i.From <= i.To {
				out = append(out, i)
			}
		}
	}
	return out
}
