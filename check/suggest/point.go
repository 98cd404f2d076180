package suggest

import (
	"slices"
	"strings"

	"lineworthy/catalog"
)

// points are other couplings for a point in reach that takes the same hose as the point meant.
func (s *search) points(sp *spot) (out []change) {
	if sp.run == nil {
		return nil
	}
	x := s.side(sp.point.End)
	for _, id := range s.cat.IDs("connections") {
		f, err := s.cat.Connection(id)
		if err != nil || f == sp.run.TargetEnd.Family || f.Kind != "coupling" || strings.HasPrefix(id, "acme-") || strings.HasPrefix(id, "quick-") {
			continue
		}
		y, ok := s.made(sp, x, f, "")
		if !ok || joins(f, sp.run.TargetEnd.Family) {
			continue
		}
		if y.gender = x.gender; !f.Gendered {
			y.gender = ""
		}
		out = append(out, change{
			spot: sp.id, kind: "point", where: sp.id, before: x.describe(), after: y.describe(), parts: []string{sp.id}, cost: 8,
			uses: []string{"connections/" + id}, edits: y.edits(),
			needs: []string{"the owner of " + sp.point.Vessel.Key + " to change its coupling, and every hose that is meant for it"},
		})
	}
	return out
}

// joins says whether two standards are a pair, or can be brought together though they must not: neither keeps a hose off.
func joins(f, g *catalog.Connection) bool {
	for _, p := range [][2]*catalog.Connection{{f, g}, {g, f}} {
		if slices.ContainsFunc(p[0].Mates, func(m catalog.Mate) bool { return m.With == p[1].ID && m.Verdict != "no-fit" }) {
			return true
		}
	}
	return false
}
