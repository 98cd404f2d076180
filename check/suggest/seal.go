package suggest

import (
	"cmp"
	"fmt"
	"slices"

	"lineworthy/catalog"
	"lineworthy/check/resolve"
)

// sealing is the seal of a joint: the one that is there, or a new one.
type sealing struct {
	kind, material string
	new            bool
	cost           int
}

// seals are the seals worth trying between two ends: the one that is there, and kinds that both standards take in materials
// that bear the fluids.
func (s *search) seals(sp *spot, pair [2]side) []sealing {
	kinds, needed := kindsFor(pair)
	out := []sealing{}
	now := ""
	if n := len(sp.joint.Seals); n == 1 || n == 0 && !needed || !needed {
		out = append(out, sealing{})
	}
	if len(sp.joint.Seals) == 1 && sp.joint.Seals[0].Material != nil {
		now = sp.joint.Seals[0].Material.ID
	}
	var more []sealing
	for _, id := range kinds {
		k, err := s.cat.Seal(id)
		if err != nil {
			continue
		}
		for i, m := range s.choose(s.sealMaterials(k), sp.run, now, 2) {
			if s.o.Stock.has(id, m) && s.holds(sp, k) {
				more = append(more, sealing{id, m, true, 1 + i})
			}
		}
	}
	slices.SortStableFunc(more, func(a, b sealing) int { return cmp.Compare(a.cost, b.cost) })
	return append(out, more[:min(4, len(more))]...)
}

// kindsFor are the kinds of seal that the standards of both ends take, and whether one is needed.
func kindsFor(pair [2]side) (kinds []string, needed bool) {
	for i, x := range pair {
		needed = needed || x.family.Seals.Required
		switch {
		case i == 0 || len(kinds) == 0:
			kinds = slices.Clone(x.family.Seals.Kinds)
		case len(x.family.Seals.Kinds) > 0:
			kinds = slices.DeleteFunc(kinds, func(k string) bool { return !slices.Contains(x.family.Seals.Kinds, k) })
		}
	}
	return kinds, needed
}

// sealMaterials is what the kind may be made of; a kind that leaves it open may be of any elastomer.
func (s *search) sealMaterials(k *catalog.Seal) []string {
	if len(k.Materials) > 0 {
		return k.Materials
	}
	return []string{}
}

// holds drops kinds that the catalog knows to be too weak or too cold for the joint; what is at the limit is for the rules.
func (s *search) holds(sp *spot, k *catalog.Seal) bool {
	if hot := s.hot(sp.run); hot != nil && k.HighestC != nil && hot.Celsius() > k.HighestC.Value+1e-6 {
		return false
	}
	return k.HighestBar == nil || k.HighestBar.Value*1e5 >= float64(s.jointNeed(sp))-500
}

// sealEdits write the new seal where the old one stood, else on the end that changes, and take any other away.
func (s *search) sealEdits(sp *spot, pair [2]side, seal sealing) []edit {
	at := pair[0].end
	for _, x := range pair {
		if x.changed && x.end.Vessel == nil {
			at = x.end
		}
	}
	for _, e := range []*resolve.End{pair[0].end, pair[1].end} {
		if e.Sheet != nil && len(e.Sheet.Seals) > 0 {
			at = e
		}
	}
	size := ""
	if pair[0].family.Kind == "flange" || pair[1].family.Kind == "flange" {
		size = pair[1].size
	}
	var out []edit
	for _, x := range pair {
		if x.end != at {
			out = append(out, drop(x.end.Path, "seal")...)
		}
	}
	return append(out, edit{at.Path, "seal", record("kind", seal.kind, "size", size, "material", seal.material, "rated", s.sealRated(sp)), "to be shown by its data sheet"})
}

// sealRated is what the data sheet of a new seal has to state: no less than what is asked of the joint, nor than the old
// seal was good for.
func (s *search) sealRated(sp *spot) string {
	need := max(s.jointNeed(sp), 1e5)
	for _, x := range sp.joint.Seals {
		if x.Sheet.Rated.Set {
			need = max(need, x.Sheet.Rated.V.Gauge(s.line.Ambient))
		}
	}
	return fmt.Sprintf("%g bar(g)", roundUp(need))
}
