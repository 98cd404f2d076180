package window

import (
	"math"
	"slices"

	"lineworthy/catalog"
	"lineworthy/check/measure"
	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

// vapours are the vapour pressures of the line's liquids in gauge, by the same equation and on the same safe side as the
// facts.
func (d *drawer) vapours() []Vapour {
	out := []Vapour{}
	for _, r := range d.line.Runs {
		for _, f := range r.Fluids {
			e := f.Props.VapourP
			if e == nil || f.Cat.Form == "compressed-gas" || f.Cat.Form == "dissolved-gas" || f.Cat.Form == "vapour" {
				continue
			}
			i := slices.IndexFunc(out, func(v Vapour) bool { return v.Fluid == f.Cat.Name })
			if i < 0 {
				out, i = append(out, d.vapour(f, e)), len(out)
			}
			out[i].Runs = append(out[i].Runs, r.Key)
		}
	}
	return out
}

const (
	curveStepK   = 5
	highestCurve = 100e5 // Pa: beyond the rating of any transfer hose the curve says nothing more
	hair         = 1e-6  // K: the ends of an equation's range are not lost in the last digit
)

func (d *drawer) vapour(f *resolve.Fluid, e *catalog.Equation) Vapour {
	q := measure.Equation{Name: e.Equation, C: e.C, From: units.Temperature(e.FromK), To: units.Temperature(e.ToK)}
	v := Vapour{Fluid: f.Cat.Name, FromC: clean(q.From.Celsius()), ToC: clean(q.To.Celsius()), Points: []XY{}, Rows: []Row{}}
	v.at = func(c float64) (float64, bool) {
		p, err := measure.VapourPressure(q, units.Celsius(c))
		p *= units.AbsolutePressure(1 / (1 - e.UnderstatesPct/100))
		return float64(p.Gauge(d.line.Ambient)), err == nil
	}
	if p, ok := v.at(v.FromC + hair); ok && p < 0 {
		if c, ok := crossing(v.FromC+hair, v.ToC-hair, v.at); ok {
			v.BoilsC, v.BoilsAt = &c, d.show.Degrees(units.Celsius(c))
		}
	}
	for c := math.Ceil(v.FromC/curveStepK) * curveStepK; c <= v.ToC; c += curveStepK {
		if p, ok := v.at(c); ok && p <= highestCurve {
			v.Points = append(v.Points, XY{c, tidy(p / 1e3)})
		}
	}
	v.Rows = d.vapourRows(f, v)
	return v
}

// vapourRows are every 20 K from the coldest to well above the hottest, and the stated temperatures of the fluid.
func (d *drawer) vapourRows(f *resolve.Fluid, v Vapour) []Row {
	var cs []float64
	for _, t := range []*units.Temperature{f.Lowest, f.Hottest} {
		if t != nil {
			cs = append(cs, clean(t.Celsius()))
		}
	}
	if len(cs) == 0 {
		return []Row{}
	}
	for c, last := math.Ceil(slices.Min(cs)/20)*20, slices.Max(cs)+40; c <= last; c += 20 {
		cs = append(cs, c)
	}
	out := []Row{}
	for _, c := range within(cs, v.FromC, v.ToC) {
		if p, ok := v.at(c); ok {
			out = append(out, Row{d.show.Degrees(units.Celsius(c)), d.show.Pressure(units.GaugePressure(p))})
		}
	}
	return out
}

// meetings are where the vapour pressure of a liquid grows beyond what is allowed, within the region.
func (d *drawer) meetings(s Scope, vapours []Vapour) []VapourAt {
	out := []VapourAt{}
	for _, v := range vapours {
		if s.Run != "" && !slices.Contains(v.Runs, s.Run) {
			continue
		}
		for _, p := range s.Pieces {
			c, ok := crossing(max(p.FromC, v.FromC+hair), min(p.ToC, v.ToC-hair), func(c float64) (float64, bool) {
				y, ok := v.at(c)
				return y - p.form.at(c), ok
			})
			if ok {
				out = append(out, VapourAt{v.Fluid, tidy(c), d.show.Degrees(units.Celsius(c))})
				break
			}
		}
	}
	return out
}

const halvings = 60

// crossing is where a difference that starts below zero rises above it, by a fixed count of halvings.
func crossing(lo, hi float64, diff func(float64) (float64, bool)) (float64, bool) {
	if lo >= hi {
		return 0, false
	}
	a, okA := diff(lo)
	b, okB := diff(hi)
	switch {
	case !okA || !okB || b < 0:
		return 0, false
	case a > 0: // above from the start
		return tidy(lo), true
	}
	for range halvings {
		mid := (lo + hi) / 2
		if y, ok := diff(mid); ok && y <= 0 {
			lo = mid
		} else {
			hi = mid
		}
	}
	return tidy(lo), true
}
