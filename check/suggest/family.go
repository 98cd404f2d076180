package suggest

import (
	"cmp"
	"slices"
	"strings"

	"lineworthy/catalog"
	"lineworthy/check/facts"
	"lineworthy/check/resolve"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

// families are those that join themselves, take the services and reach the temperatures; those at the joint first.
func (s *search) families(sp *spot, a, b side) (out []*catalog.Connection) {
	for _, id := range s.cat.IDs(catalog.Connections) {
		f, err := s.cat.Connection(id)
		if err != nil || !slices.Contains([]string{"flange", "coupling", "hygienic"}, f.Kind) || strings.HasPrefix(id, "acme-") || len(f.Ratings) == 0 {
			continue
		}
		self := slices.ContainsFunc(f.Mates, func(m catalog.Mate) bool { return m.With == id && m.Verdict == "fits" })
		kept := slices.ContainsFunc(f.Excludes, func(e catalog.Exclusion) bool {
			return slices.ContainsFunc(sp.run.Fluids, func(x *resolve.Fluid) bool { return slices.Contains(x.Services, e.Service) })
		})
		if self && !kept && s.spans(f.Temperature, sp.run) {
			out = append(out, f)
		}
	}
	slices.SortStableFunc(out, func(x, y *catalog.Connection) int {
		return cmp.Compare(odd(x != a.family && x != b.family), odd(y != a.family && y != b.family))
	})
	return out
}

func (s *search) spans(t *catalog.Span, r *resolve.Run) bool {
	hot, cold := s.hot(r), s.cold(r)
	return t == nil || (hot == nil || t.HighestC == nil || hot.Celsius() <= *t.HighestC+1e-6) && (cold == nil || t.LowestC == nil || cold.Celsius() >= *t.LowestC-1e-6)
}

// classes are the classes of a family worth trying: the lowest two that hold what is asked in some material at hand.
func (s *search) classes(sp *spot, f *catalog.Connection, a, b side) []string {
	if f.ClassedBy == "" {
		return []string{""}
	}
	type held struct {
		class string
		p     units.GaugePressure
	}
	var all []held
	for _, r := range f.Ratings {
		if slices.ContainsFunc(all, func(h held) bool { return h.class == r.Class }) {
			continue
		}
		for _, m := range append([]string{a.material, b.material}, ends...) {
			if p, ok := s.endHolds(sp, f, r.Class, s.sizeOf(sp, a, f), m); ok && p >= s.jointNeed(sp) {
				all = append(all, held{r.Class, p})
				break
			}
		}
	}
	slices.SortStableFunc(all, func(x, y held) int { return cmp.Compare(x.p, y.p) })
	var out []string
	for _, h := range all[:min(2, len(all))] {
		out = append(out, h.class)
	}
	return out
}

// ends are the metals that ends are usually made of.
var ends = []string{"S31603", "S30403", "CS"}

func (s *search) endHolds(sp *spot, f *catalog.Connection, class, size, material string) (units.GaugePressure, bool) {
	hot := s.hot(sp.run)
	m, err := s.cat.Material(material)
	at, bad := units.ParseSize(size)
	if hot == nil || err != nil || bad != nil {
		return 0, false
	}
	e := &sheet.End{Size: sheet.Of[units.Size]{V: at, Set: true, Text: size}, Class: sheet.Of[string]{V: class, Set: class != ""}}
	return facts.EndHolds(f, e, m, *hot)
}

// jointNeed is the highest pressure that either end or a seal is asked to hold.
func (s *search) jointNeed(sp *spot) units.GaugePressure {
	top := units.GaugePressure(0)
	for _, e := range []*resolve.End{sp.joint.A, sp.joint.B} {
		top = max(top, s.need(e.Owner, "end"))
	}
	for _, x := range sp.joint.Seals {
		top = max(top, s.need(x.ID, ""))
	}
	return top
}
