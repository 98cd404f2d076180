package window

import (
	"math"
	"slices"

	"lineworthy/check/facts"
)

// bound is one form that holds over an interval, and whose it is.
type bound struct {
	f    form
	name string
}

// envelope is the lowest of all bounds between lo and hi, as pieces from left to right. Every piece ends at a row of a
// table or where two bounds cross, both exact.
func envelope(items []facts.Strength, lo, hi float64) []Piece {
	var out []Piece
	for _, span := range spans(items, lo, hi) {
		var bounds []bound
		mid := (span[0] + span[1]) / 2
		for _, s := range items {
			for _, h := range s.Holds {
				if f, ok := formAt(h, mid); ok {
					bounds = append(bounds, bound{f, name(s)})
				}
			}
		}
		if len(bounds) > 0 {
			out = join(out, lowest(bounds, span[0], span[1]))
		}
	}
	return out
}

func name(s facts.Strength) string {
	if s.What == "seal" {
		return s.ID
	}
	return s.Part + " " + s.What
}

// spans are the intervals between neighbouring rows of all tables.
func spans(items []facts.Strength, lo, hi float64) (out [][2]float64) {
	cuts := []float64{lo, hi}
	for _, s := range items {
		for _, h := range s.Holds {
			ts, _, _ := rows(h)
			cuts = append(cuts, ts...)
		}
	}
	cuts = within(cuts, lo, hi)
	for i := 0; i+1 < len(cuts); i++ {
		out = append(out, [2]float64{cuts[i], cuts[i+1]})
	}
	return out
}

// within sorts, and drops what lies outside or twice.
func within(xs []float64, lo, hi float64) []float64 {
	xs = slices.DeleteFunc(xs, func(x float64) bool { return x < lo || x > hi })
	slices.Sort(xs)
	return slices.CompactFunc(xs, func(a, b float64) bool { return math.Abs(a-b) < 1e-9 })
}

// lowest are the pieces of the lowest bound between two cuts.
func lowest(bounds []bound, from, to float64) (out []Piece) {
	cuts := []float64{from, to}
	for i := range bounds {
		for j := range i {
			cuts = append(cuts, meets(bounds[i].f, bounds[j].f)...)
		}
	}
	cuts = within(cuts, from, to)
	for i := 0; i+1 < len(cuts); i++ {
		out = append(out, piece(bounds, cuts[i], cuts[i+1]))
	}
	return out
}

func piece(bounds []bound, from, to float64) Piece {
	mid := (from + to) / 2
	low := slices.MinFunc(bounds, func(x, y bound) int {
		switch a, b := x.f.at(mid), y.f.at(mid); {
		case a < b:
			return -1
		case a > b:
			return 1
		}
		return 0
	})
	p := Piece{FromC: from, ToC: to, FromKPa: low.f.at(from) / 1e3, ToKPa: low.f.at(to) / 1e3, Shape: "straight", form: low.f}
	if low.f.k != 0 {
		p.Shape = "hyperbola"
	}
	for _, b := range bounds {
		if b.f.at(mid) <= low.f.at(mid)+1 && math.Abs(b.f.at(from)-low.f.at(from)) <= 1 && !slices.Contains(p.Weakest, b.name) { // a pascal
			p.Weakest = append(p.Weakest, b.name)
		}
	}
	slices.Sort(p.Weakest)
	return p
}

// join adds pieces, and makes one of two that go on alike.
func join(out, more []Piece) []Piece {
	for _, p := range more {
		if n := len(out) - 1; n >= 0 && same(out[n].form, p.form) && slices.Equal(out[n].Weakest, p.Weakest) {
			out[n].ToC, out[n].ToKPa = p.ToC, p.ToKPa
			continue
		}
		out = append(out, p)
	}
	return out
}

func same(f, g form) bool {
	near := func(x, y float64) bool { return math.Abs(x-y) <= 1e-9*math.Max(1, math.Abs(x)) }
	return near(f.a, g.a) && near(f.b, g.b) && near(f.k, g.k)
}
