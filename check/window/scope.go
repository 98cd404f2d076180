package window

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"lineworthy/check/facts"
	"lineworthy/check/units"
)

func (d *drawer) scope(a area, vapours []Vapour) Scope {
	items, bounds := a.strengths(d.w), a.bounds(d.w)
	s := Scope{
		ID: a.id, Kind: a.kind, From: a.from, To: a.to, Strength: len(items), Pieces: []Piece{}, Breaks: []Break{},
		Points: d.points(a, items), Unknown: unknowns(items, bounds), Suits: d.suits(a), Curves: []VapourAt{},
	}
	if a.run != nil {
		s.Run = a.run.Key
	}
	s.Known = len(s.Unknown) == 0
	s.Unknown = append(s.Unknown, unknownCases(items)...)
	known := slices.DeleteFunc(slices.Clone(items), func(x facts.Strength) bool { return x.Why != "" || len(x.Holds) == 0 })
	if len(known) == 0 {
		s.Empty = "nothing here has a pressure rating that is known"
		return s
	}
	lo, hi := d.edges(&s, known, bounds)
	if lo > hi {
		s.Empty = fmt.Sprintf("no temperature suits every part: %s begins at %s, %s ends at %s",
			strings.Join(s.Lowest.By, ", "), s.Lowest.Text, strings.Join(s.Highest.By, ", "), s.Highest.Text)
		return s
	}
	s.Pieces = append(s.Pieces, envelope(known, lo, hi)...)
	s.Breaks = d.breaks(known, s.Pieces, lo, hi)
	s.Curves = d.meetings(s, vapours)
	return s
}

// edge is one candidate for where the region ends in temperature.
type edge struct {
	c     float64
	by    string
	limit bool
}

// edges are the ends of the region in temperature. Where nothing states one, the tables and cases set how far to look.
func (d *drawer) edges(s *Scope, items []facts.Strength, bounds []facts.Bounds) (lo, hi float64) {
	var lows, highs []edge
	seen := []float64{20}
	for _, it := range items {
		for _, h := range it.Holds {
			ts, from, to := rows(h)
			seen = append(seen, ts...)
			lows, highs = append(lows, edge{from, name(it) + " rating", false}), append(highs, edge{to, name(it) + " rating", false})
		}
	}
	for _, b := range bounds {
		by := limitName(b)
		if b.Low != nil {
			lows = append(lows, edge{clean(b.Low.Celsius()), by, true})
		}
		if b.High != nil {
			highs = append(highs, edge{clean(b.High.Celsius()), by, true})
		}
	}
	for _, p := range s.Points {
		seen = append(seen, p.C)
	}
	s.Lowest, s.Highest = d.furthest(lows, 1), d.furthest(highs, -1)
	lo, hi = slices.Min(seen)-20, slices.Max(seen)+20
	if s.Lowest != nil {
		lo = s.Lowest.C
	}
	if s.Highest != nil {
		hi = s.Highest.C
	}
	return lo, hi
}

func limitName(b facts.Bounds) string { return b.Part + " (" + once(b.What) + ")" }

// once leaves out a word that only says the one before it again.
func once(text string) string {
	return strings.Join(slices.Compact(strings.Fields(text)), " ")
}

// furthest is the edge that cuts off most, seen from the side that sign gives, with everything that shares it.
func (d *drawer) furthest(es []edge, sign float64) *Edge {
	es = slices.DeleteFunc(es, func(e edge) bool { return math.IsInf(e.c, 0) })
	if len(es) == 0 {
		return nil
	}
	worst := es[0].c
	for _, e := range es {
		worst = sign * max(sign*worst, sign*e.c)
	}
	out := &Edge{C: worst, Text: d.show.Degrees(units.Celsius(worst))}
	for _, e := range es {
		if math.Abs(e.c-worst) < 1e-9 && !slices.Contains(out.By, e.by) {
			out.By, out.Limit = append(out.By, e.by), out.Limit || e.limit
		}
	}
	return out
}

// breaks are the ends of the pieces with what is allowed at each.
func (d *drawer) breaks(items []facts.Strength, pieces []Piece, lo, hi float64) []Break {
	var out []Break
	for i, c := range ends(pieces, lo, hi) {
		b := Break{C: c, Text: d.show.Degrees(units.Celsius(c)), KPa: tidy(heldAt(items, c) / 1e3)}
		b.Allowed = d.show.Pressure(units.GaugePressure(b.KPa * 1e3))
		if i < len(pieces) {
			b.Weakest = pieces[i].Weakest
			if above := tidy(pieces[i].FromKPa); math.Abs(above-b.KPa) > 1e-3 {
				b.AboveKPa, b.Above = &above, d.show.Pressure(units.GaugePressure(above*1e3))
			}
		} else if i > 0 {
			b.Weakest = pieces[i-1].Weakest
		}
		out = append(out, b)
	}
	return out
}

func ends(pieces []Piece, lo, hi float64) []float64 {
	if len(pieces) == 0 {
		return within([]float64{lo, hi}, lo, hi)
	}
	var out []float64
	for _, p := range pieces {
		out = append(out, p.FromC)
	}
	return append(out, pieces[len(pieces)-1].ToC)
}

// heldAt is what the weakest holds at exactly that temperature, in Pa.
func heldAt(items []facts.Strength, c float64) float64 {
	low := math.Inf(1)
	for _, s := range items {
		if p, ok := s.Known(units.Celsius(c)); ok {
			low = min(low, float64(p))
		}
	}
	return low
}

// tidy rounds to a millionth, so that the last digits of floating point do not show.
func tidy(x float64) float64 { return math.Round(x*1e6) / 1e6 }

// Allowed is the highest pressure in kPa at c °C; false outside the region.
func (s Scope) Allowed(c float64) (kpa float64, ok bool) {
	for _, p := range s.Pieces {
		if c >= p.FromC && c <= p.ToC {
			if here := p.form.at(c) / 1e3; !ok || here < kpa {
				kpa, ok = here, true
			}
		}
	}
	return kpa, ok
}
