package suggest

import (
	"strings"

	"lineworthy/catalog"
	"lineworthy/check/resolve"
)

// side is one end of a joint as it could be: as it is when end is not changed.
type side struct {
	end                         *resolve.End
	family                      *catalog.Connection
	size, class, gender, facing string
	material                    string
	changed                     bool
	hand                        string
	materialOnly, fixed         bool
}

// cost is how far the change reaches. An end keeps its material where it can: a steel flange on a stainless pump is no
// good neighbour.
func (x side) cost() int {
	other := 0
	if x.end.Material != nil && x.end.Material.ID != x.material {
		other = 2
	}
	switch {
	case x.end.Vessel != nil:
		return 8 + other
	case x.end.Part != nil && x.end.Part.Sheet.Kind.V == "hose":
		return 2 + other
	}
	return 5 + other
}

func (x side) describe() string {
	parts := []string{x.end.Owner + " " + x.end.Name + ": " + x.family.ID}
	for _, w := range []string{x.size, x.class, x.facing, x.gender, x.material} {
		if w != "" {
			parts = append(parts, w)
		}
	}
	return strings.Join(parts, " ")
}

// edits write the end anew; what only the old one had is taken out.
func (x side) edits() []edit {
	path := x.end.Path
	if x.materialOnly {
		return []edit{put(path, "material", x.material, "")}
	}
	out := drop(path, "number", "class", "gender", "hand", "facing", "locked")
	for _, kv := range [][2]string{{"standard", x.family.ID}, {"size", x.size}, {"class", x.class}, {"gender", x.gender}, {"hand", x.hand}, {"facing", x.facing}, {"material", x.material}} {
		if kv[1] != "" && (kv[0] != "gender" || x.family.Gendered) {
			out = append(out, put(path, kv[0], kv[1], ""))
		}
	}
	if x.family.Locking != nil && x.family.Locking.Value {
		out = append(out, put(path, "locked", "yes", "to be pinned before each job"))
	}
	return out
}

func (s *search) side(e *resolve.End) side {
	x := side{end: e, family: e.Family, fixed: e.Part == nil && e.Vessel == nil}
	if e.Sheet != nil {
		x.size, x.class, x.gender, x.facing, x.hand = e.Sheet.Size.Text, e.Sheet.Class.Text, e.Sheet.Gender.V, e.Sheet.Facing.V, e.Sheet.Hand.V
		if e.Sheet.Class.Set {
			x.class = e.Sheet.Class.V
		}
	}
	if e.Material != nil {
		x.material = e.Material.ID
	}
	return x
}

// pairs are the ways the two ends can face each other.
func (s *search) pairs(sp *spot) [][2]side {
	a, b := s.side(sp.joint.A), s.side(sp.joint.B)
	if open(a.end) || open(b.end) {
		return nil
	}
	out := [][2]side{}
	if a.family != nil && b.family != nil {
		out = append(out, [2]side{a, b})
	}
	if b.family != nil && !a.fixed {
		if m, ok := s.match(sp, a, b); ok {
			out = append(out, [2]side{m, b})
		}
	}
	if a.family != nil && !b.fixed {
		if m, ok := s.match(sp, b, a); ok {
			out = append(out, [2]side{a, m})
		}
	}
	if a.fixed || b.fixed {
		return out
	}
	for _, f := range s.families(sp, a, b) {
		for _, class := range s.classes(sp, f, a, b) {
			x, okA := s.made(sp, a, f, class)
			y, okB := s.made(sp, b, f, class)
			if !okA || !okB {
				continue
			}
			if f.Gendered {
				x.gender, y.gender = genders(a, b)
			}
			out = append(out, [2]side{x, y})
		}
	}
	return out
}

func open(e *resolve.End) bool { return e.Sheet != nil && e.Sheet.Open.V }

// genders keeps the genders where they are opposite, else lets the upstream end be the male one.
func genders(a, b side) (string, string) {
	if a.gender == "female" && b.gender == "male" {
		return "female", "male"
	}
	return "male", "female"
}

// match is the end made to fit the other as that is.
func (s *search) match(sp *spot, e, other side) (side, bool) {
	out, ok := s.made(sp, e, other.family, other.class)
	if !ok || other.size == "" {
		return out, false
	}
	out.size, out.facing, out.hand = other.size, other.facing, other.hand
	if other.family.Gendered {
		out.gender = map[string]string{"male": "female", "female": "male"}[other.gender]
	}
	return out, out.gender != "" || !other.family.Gendered
}

// made is the end in another family, at the size that comes nearest.
func (s *search) made(sp *spot, e side, f *catalog.Connection, class string) (side, bool) {
	size := s.sizeOf(sp, e, f)
	if size == "" || !s.o.Stock.has(f.ID, "") {
		return side{}, false
	}
	out := side{end: e.end, family: f, size: size, class: class, changed: true, material: e.material}
	switch f.ID {
	case "flange-asme-b16-5":
		out.facing = "RF"
	case "flange-en-1092-1":
		out.facing = "B1"
	}
	if f.Hand != "" {
		out.hand = "right"
	}
	return out, true
}
