package window

import (
	"math"

	"lineworthy/check/report"
	"lineworthy/check/units"
)

// vapourStepC is how finely a report draws a vapour pressure.
const vapourStepC = 2

// Brief is the region of the whole line as a verdict carries it.
func (r *Result) Brief() *report.Region {
	s := r.Scopes[0]
	out := &report.Region{Complete: s.Known, Empty: s.Empty, Upper: upper(s)}
	if s.Empty == "" {
		out.Span = range1(s)
	}
	for _, b := range s.Breaks {
		out.Breaks = append(out.Breaks, report.RegionBreak{Temperature: b.Text, Allowed: b.Allowed, Above: b.Above, Weakest: few(b.Weakest)})
	}
	for _, p := range s.Points {
		out.Cases = append(out.Cases, report.RegionCase{
			Run: p.Run, Case: p.Case, At: spot(p.C, p.KPa), Text: p.Text, Held: p.Held, Least: p.Least, Spare: p.Margin,
		})
	}
	for _, v := range r.Vapours {
		if c := curve(v); len(c) > 1 {
			out.Vapours = append(out.Vapours, report.RegionCurve{Fluid: v.Fluid, Spots: c})
		}
	}
	return out
}

func upper(s Scope) (out []report.Spot) {
	for _, p := range s.Pieces {
		n := 1
		if p.Shape == "hyperbola" {
			n = hyperbolaSteps
		}
		for i := range n + 1 {
			c := p.FromC + (p.ToC-p.FromC)*float64(i)/float64(n)
			out = append(out, spot(c, p.form.at(c)/1e3))
		}
	}
	return out
}

func curve(v Vapour) (out []report.Spot) {
	if v.at == nil {
		return nil
	}
	for c := v.FromC; c <= v.ToC; c += vapourStepC {
		if pa, ok := v.at(c); ok && pa > 0 {
			out = append(out, spot(c, pa/1e3))
		}
	}
	return out
}

// spot rounds a pressure down, so that a drawing never shows more than holds.
func spot(c, kpa float64) report.Spot {
	return report.Spot{CK: int64(math.Round(float64(units.Celsius(c)) * 100)), KPa: int64(math.Floor(kpa + 1e-6))}
}
