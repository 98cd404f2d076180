package suggest

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"lineworthy/catalog"
	"lineworthy/check/facts"
	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

// build is one hose that could stand in for another.
type build struct {
	class               *catalog.Hose
	liner, braid, cover string
	rated               string // empty: the class says it
	certificate         bool   // the rating is the one on the old hose, to the last digit of its unit
	size                string // the sheet's own, or the same in the terms of the class
	leastBend, bend     string // what has to be asked of the maker, or laid wider
	factor              float64
}

// hoses are other hoses for the spot: every class whose standard takes the fluids and reaches the temperatures, with the
// layers that suit. Whether they do is for the rules.
func (s *search) hoses(sp *spot) (out []change) {
	for _, id := range s.cat.IDs(catalog.Hoses) {
		h, err := s.cat.Hose(id)
		if err != nil || !s.o.Stock.has(id, "") || !serves(h, sp.run) || !s.reaches(h, sp.run) {
			continue
		}
		for _, liner := range s.choose(layer(h, "liner"), sp.run, stated(sp.part, "liner"), 3) {
			if !s.o.Stock.has(id, liner) {
				continue
			}
			for _, braid := range s.braids(h, sp, liner) {
				if c, ok := s.hose(sp, h, liner, braid); ok {
					out = append(out, c)
				}
			}
		}
	}
	slices.SortStableFunc(out, func(a, b change) int { return cmp.Compare(a.cost, b.cost) })
	return out[:min(len(out), mostHoses)]
}

// mostHoses is how many hoses are tried in one place: those that change least.
const mostHoses = 24

// serves says whether the standard of the class takes every fluid of the run, by the words the rules go by.
func serves(h *catalog.Hose, r *resolve.Run) bool {
	for _, f := range r.Fluids {
		out := slices.ContainsFunc(h.NotFor, func(e catalog.Exclusion) bool { return slices.Contains(f.Services, e.Service) })
		in := h.For == nil || slices.ContainsFunc(h.For.Values, func(w string) bool { return slices.Contains(f.Services, w) })
		if out || !in {
			return false
		}
	}
	return true
}

func (s *search) reaches(h *catalog.Hose, r *resolve.Run) bool {
	hot, cold, t := s.hot(r), s.cold(r), h.Temperature
	if t == nil {
		return true
	}
	return (hot == nil || t.HighestC == nil || hot.Celsius() <= *t.HighestC+1e-6) && (cold == nil || t.LowestC == nil || cold.Celsius() >= *t.LowestC-1e-6)
}

func layer(h *catalog.Hose, role string) []string {
	for _, l := range h.Layers {
		if l.Role == role {
			return l.Materials
		}
	}
	return nil
}

// stated is the material of a layer of the hose now at hand.
func stated(p *resolve.Part, role string) string {
	for _, l := range p.Layers {
		if l.Role == role && l.Material != nil {
			return l.Material.ID
		}
	}
	return ""
}

// braids are at most two reinforcements: none that a fluid is known to attack, the one at hand first. A metal liner lets
// nothing through, so that any will do.
func (s *search) braids(h *catalog.Hose, sp *spot, liner string) []string {
	all := layer(h, "reinforcement")
	if len(all) == 0 {
		return []string{""}
	}
	m, err := s.cat.Material(liner)
	tight := err == nil && m.Family == "metal"
	all = slices.DeleteFunc(slices.Clone(all), func(id string) bool {
		b, err := s.cat.Material(id)
		return err != nil || !tight && s.bears(b, sp.run) == 3
	})
	now := stated(sp.part, "reinforcement")
	slices.SortStableFunc(all, func(a, b string) int {
		x, _ := s.cat.Material(a)
		y, _ := s.cat.Material(b)
		return cmp.Or(cmp.Compare(odd(a != now), odd(b != now)), cmp.Compare(s.bears(x, sp.run), s.bears(y, sp.run)))
	})
	return all[:min(2, len(all))]
}

func odd(b bool) int {
	if b {
		return 1
	}
	return 0
}

// hose is the change to one build; false when the class has no such size or the catalog knows that it holds too little.
func (s *search) hose(sp *spot, h *catalog.Hose, liner, braid string) (change, bool) {
	b := build{class: h, liner: liner, braid: braid, size: sizeIn(h, sp.part.Sheet.Size.V)}
	if b.size == "" {
		return change{}, false
	}
	b.cover = s.cover(h, sp)
	if !s.rate(sp, &b) {
		return change{}, false
	}
	s.lay(sp, &b)
	return s.replace(sp, b), true
}

// cover is the one at hand where the class has it, else the first that is not too cold or too hot.
func (s *search) cover(h *catalog.Hose, sp *spot) string {
	best := ""
	for _, id := range layer(h, "cover") {
		m, err := s.cat.Material(id)
		if err != nil || !s.fitsTemperature(m, sp.run) {
			continue
		}
		if id == stated(sp.part, "cover") {
			return id
		}
		if best == "" {
			best = id
		}
	}
	return best
}

// lay settles the bend: a class that says how tight it may be bent has its way, any other maker has to be asked.
func (s *search) lay(sp *spot, b *build) {
	now := sp.part.Sheet.Bend
	size, err := units.ParseSize(b.size)
	if !now.Set || err != nil {
		return
	}
	mm := float64(now.V) * 1000
	switch least, known := facts.LeastBend(b.class, size); {
	case !known:
		b.leastBend = now.Text
	case least > mm:
		b.bend = fmt.Sprintf("%g mm", least)
	}
}

// markList is what has to be readable on the new hose: its standard, what the law of its service asks, pressure, maker and
// year.
func markList(h *catalog.Hose, rated, year string) []string {
	marks := []string{strings.TrimSpace(h.Standard)}
	if h.Class != "" {
		marks = append(marks, h.Class)
	}
	if h.Marks != nil {
		for _, m := range h.Marks.Values {
			if up := strings.ToUpper(m); m == up || strings.Contains(up, "LPG") {
				marks = append(marks, m)
			}
		}
	}
	return append(marks, strings.NewReplacer("bar(g)", "bar", "psig", "psi").Replace(rated), "maker", year)
}
