package suggest

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"lineworthy/check/resolve"
)

// joints are other ends and seals for the spot: one end made to match the other, both of another family, another material,
// another seal. The cheapest come first: a seal, then the end of a hose, then another part, then a vessel.
func (s *search) joints(sp *spot) (out []change) {
	for _, pair := range s.pairs(sp) {
		for _, mats := range s.materials(sp, pair) {
			for _, seal := range s.seals(sp, mats) {
				if c, ok := s.joint(sp, mats, seal); ok {
					out = append(out, c)
				}
			}
		}
	}
	slices.SortStableFunc(out, func(a, b change) int { return cmp.Compare(a.cost, b.cost) })
	return out[:min(len(out), mostJoints)]
}

// mostJoints is how many ways are tried at one joint.
const mostJoints = 28

// materials gives each changed end, and each that a fluid attacks, a material that bears the fluids and that the family
// has a rating for.
func (s *search) materials(sp *spot, pair [2]side) [][2]side {
	options := [2][]side{}
	for i, x := range pair {
		for _, m := range s.endMaterials(sp, x) {
			y := x
			y.materialOnly = !x.changed && m != x.material
			y.material = m
			options[i] = append(options[i], y)
		}
	}
	var out [][2]side
	for _, a := range options[0] {
		for _, b := range options[1] {
			out = append(out, [2]side{a, b})
		}
	}
	return out
}

func (s *search) endMaterials(sp *spot, x side) []string {
	m, err := s.cat.Material(x.material)
	if err == nil && !x.changed && (s.bears(m, sp.run) == 0 || x.fixed) || err != nil && x.fixed {
		return []string{x.material}
	}
	var rated []string
	for _, id := range append([]string{x.material}, append(slices.Clone(ends), s.metals()...)...) {
		if id == "" || slices.Contains(rated, id) {
			continue
		}
		if _, ok := s.endHolds(sp, x.family, x.class, x.size, id); ok || len(x.family.Ratings) == 0 {
			rated = append(rated, id)
		}
	}
	best := s.choose(rated, sp.run, x.material, 2)
	if err == nil && !x.changed && !slices.Contains(best, x.material) {
		best = append(best, x.material) // the end may be right and only its seal wrong
	}
	return best
}

// joint is the change to two ends and the seal between them; false when nothing changes.
func (s *search) joint(sp *spot, pair [2]side, seal sealing) (change, bool) {
	c := change{spot: sp.id, kind: "joint", where: sp.id, before: s.before(sp), cost: seal.cost}
	var words []string
	for _, x := range pair {
		if !x.changed && !x.materialOnly {
			continue
		}
		c.edits = append(c.edits, x.edits()...)
		c.uses = append(c.uses, "connections/"+x.family.ID, "materials/"+x.material)
		c.cost += x.cost()
		c.parts = append(c.parts, x.end.Owner)
		words = append(words, x.describe())
		switch {
		case x.end.Vessel != nil:
			c.needs = append(c.needs, "the owner of "+x.end.Owner+" to change its "+x.end.Name)
		case x.end.Part.Sheet.Kind.V != "hose":
			c.needs = append(c.needs, x.end.Owner+" supplied with that "+x.end.Name+", its plate or certificate for the new ends")
		}
		if x.family.Locking != nil && x.family.Locking.Value {
			c.needs = append(c.needs, "the levers of "+x.end.Owner+" "+x.end.Name+" pinned")
		}
	}
	if !seal.new && len(sp.joint.Seals) > 0 && len(words) > 0 {
		words = append(words, "seal as it is")
	}
	if seal.new {
		c.edits = append(c.edits, s.sealEdits(sp, pair, seal)...)
		c.uses = append(c.uses, "seals/"+seal.kind, "materials/"+seal.material)
		c.parts = append(c.parts, "seal of "+sp.id)
		c.needs = append(c.needs, fmt.Sprintf("the data sheet of the %s of %s for %s, good for at least %s", seal.kind, seal.material, sp.id, s.sealRated(sp)))
		words = append(words, "seal "+seal.kind+" of "+seal.material)
	}
	c.after = strings.Join(words, "; ")
	return c, len(words) > 0
}

func (s *search) before(sp *spot) string {
	var words []string
	for _, e := range []*resolve.End{sp.joint.A, sp.joint.B} {
		if e.Family != nil {
			words = append(words, s.side(e).describe())
		}
	}
	for _, x := range sp.joint.Seals {
		if x.Kind != nil {
			words = append(words, "seal "+x.Kind.ID+" of "+x.Sheet.Material.V)
		}
	}
	return strings.Join(words, "; ")
}
