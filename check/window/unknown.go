package window

import (
	"cmp"
	"slices"

	"lineworthy/check"
	"lineworthy/check/facts"
	"lineworthy/check/units"
)

// unknowns are the ratings and limits that nobody has stated.
func unknowns(items []facts.Strength, bounds []facts.Bounds) []Unknown {
	out := []Unknown{}
	for _, s := range items {
		if s.Why != "" {
			out = append(out, Unknown{s.Part, s.What, s.Why, s.Ask})
		}
	}
	for _, b := range bounds {
		if b.Low == nil {
			out = append(out, Unknown{b.Part, b.What, "its lowest temperature is not known", b.Ask})
		}
		if b.High == nil {
			out = append(out, Unknown{b.Part, b.What, "its highest temperature is not known", b.Ask})
		}
	}
	return out
}

// unknownCases are the cases whose pressure is not known, each once.
func unknownCases(items []facts.Strength) (out []Unknown) {
	for _, s := range items {
		for _, p := range s.Pushes {
			u := Unknown{Part: p.From, What: check.CaseWords(p.Name), Why: p.Why}
			if !p.Known && !slices.Contains(out, u) {
				out = append(out, u)
			}
		}
	}
	return out
}

// suits says how hot each material here is known to bear each fluid, coldest first; what is not borne at all comes first.
func (d *drawer) suits(a area) []Suit {
	out := []Suit{}
	for _, r := range d.w.Reaches {
		if !a.has(r.Place) {
			continue
		}
		s := Suit{Material: r.Material, Fluid: r.Fluid, Limited: r.Limited, Text: "not suitable, or nothing is known"}
		if r.High != nil {
			c := clean(r.High.Celsius())
			s.ToC, s.Text = &c, d.show.Degrees(units.Celsius(c))
		}
		i := slices.IndexFunc(out, func(x Suit) bool { return x.Material == s.Material && x.Fluid == s.Fluid })
		if i < 0 {
			out, i = append(out, s), len(out)
		}
		if at := r.Part + " " + r.Layer; !slices.Contains(out[i].Parts, at) {
			out[i].Parts = append(out[i].Parts, at)
		}
	}
	slices.SortStableFunc(out, func(x, y Suit) int {
		return cmp.Or(cmp.Compare(reach(x), reach(y)), cmp.Compare(x.Material, y.Material), cmp.Compare(x.Fluid, y.Fluid))
	})
	return out
}

func reach(s Suit) float64 {
	if s.ToC == nil {
		return -300
	}
	return *s.ToC
}
