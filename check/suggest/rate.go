package suggest

import (
	"fmt"
	"slices"

	"lineworthy/catalog"
	"lineworthy/check/facts"
	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

// rate settles the working pressure: that of the class, else what its maker has to be asked for.
func (s *search) rate(sp *spot, b *build) bool {
	b.factor = 1
	if hot := s.hot(sp.run); hot != nil {
		f, ok := facts.HoseFactor(b.class, s.layers(*b), *hot)
		if !ok || f <= 0 {
			return false
		}
		b.factor = f
	}
	need := s.need(sp.part.ID, "hose")
	class, known := classBar(b.class, b.size)
	switch {
	case !known:
		if now := sp.part.Sheet.Rated; now.Set {
			need = max(need, now.V.Gauge(s.line.Ambient)*units.GaugePressure(b.factor)) // a new hose is no weaker than the old one
		}
		b.rated = fmt.Sprintf("%g bar(g)", roundUp(max(need/units.GaugePressure(b.factor), 1e5)))
	case class*1e5*b.factor < float64(need)-500: // half a kilopascal: the facts round
		return false
	default:
		s.nominal(sp, b, class)
	}
	if bareEnds(sp.part) && b.rated == "" {
		b.rated = fmt.Sprintf("%g bar(g)", class)
	}
	b.certificate = b.certificate || bareEnds(sp.part)
	return true
}

// bareEnds says whether an end of the hose is of a standard that gives no pressure: then the certificate of the assembly
// has to speak for its ends.
func bareEnds(p *resolve.Part) bool {
	return slices.ContainsFunc([]*resolve.End{p.Inlet, p.Outlet}, func(e *resolve.End) bool {
		return e != nil && e.Family != nil && len(e.Family.Ratings) == 0
	})
}

// nominal keeps the figure on the sheet where it and that of the class are one but for the rounding of a unit, as 350 psi
// and 24.1 bar: a law may go by the former.
func (s *search) nominal(sp *spot, b *build, class float64) {
	now := sp.part.Sheet.Rated
	if !now.Set {
		return
	}
	if p := float64(now.V.Gauge(s.line.Ambient)) / 1e5; p > class*0.995 && p < class*1.005 && p != class {
		b.rated, b.certificate = now.Text, true
	}
}

func (s *search) layers(b build) (out []resolve.Layer) {
	for _, l := range [][2]string{{"liner", b.liner}, {"reinforcement", b.braid}} {
		if m, err := s.cat.Material(l[1]); err == nil {
			out = append(out, resolve.Layer{Role: l[0], Material: m})
		}
	}
	return out
}

// classBar is the rating of the class in bar for the size, if the catalog knows one.
func classBar(h *catalog.Hose, size string) (float64, bool) {
	r := h.Rating
	if r == nil || r.MakerStates {
		return 0, false
	}
	if len(r.Sizes) == 0 {
		return r.Bar, r.Bar > 0
	}
	want, err := units.ParseSize(size)
	for _, row := range r.Sizes {
		if at, e := units.ParseSize(row.Size); err == nil && e == nil {
			if same, known := units.Same(at, want); same && known {
				return row.Bar, true
			}
		}
	}
	return 0, false
}
