package facts

import (
	"slices"

	"lineworthy/catalog"
	"lineworthy/check/resolve"
)

// contact is one material of the line and how fluids reach it.
type contact struct {
	part, layer, how string
	material         *catalog.Material
	missing          string   // what to state when the material is not known
	options          []string // what it may be made of when that is not stated
}

func (b *builder) pairs() {
	b.f.Pairs = Pairs{Unsuitable: []Pair{}, Limited: []Pair{}, Suitable: make([]Pair, 0, 64), Unlisted: []Pair{}}
	b.f.Bars = []Bar{}
	for _, r := range b.l.Runs {
		for _, c := range contacts(r) {
			for _, f := range met(r) {
				if c.how == "permeated" && !b.permeates(f, c) {
					continue
				}
				b.pair(c, f)
			}
		}
	}
}

// contacts are all materials of a run that a fluid touches or can reach through a liner.
func contacts(r *resolve.Run) []contact {
	out := make([]contact, 0, 3*len(r.Parts)+4*len(r.Joints))
	for _, p := range r.Parts {
		out = append(out, partContacts(p)...)
	}
	for _, j := range r.Joints {
		for _, e := range []*resolve.End{j.A, j.B} {
			out = append(out, endContact(r, e)...)
		}
		for _, s := range j.Seals {
			out = append(out, contact{s.ID, "seal", "wetted", s.Material, "material of " + s.ID, nil})
		}
	}
	return out
}

func partContacts(p *resolve.Part) []contact {
	var out []contact
	if p.Sheet.Kind.V == "weight" {
		return nil
	}
	if p.Sheet.Kind.V == "hose" {
		out = layerContacts(p)
	} else {
		out = append(out, contact{p.ID, "body", "wetted", p.Body, "material of " + p.ID, nil})
	}
	for _, m := range p.Wetted {
		out = append(out, contact{p.ID, "wetted", "wetted", m, "", nil})
	}
	return out
}

// layerContacts are the liner, and behind a liner that lets molecules through the reinforcement too.
func layerContacts(p *resolve.Part) []contact {
	var out []contact
	tight, liner, backed := false, false, p.Hose != nil // a class lists its reinforcement, or has none
	for _, l := range p.Layers {
		ask := "layers." + l.Role + " of " + p.ID
		switch {
		case l.Role == "liner":
			liner = true
			out = append(out, contact{p.ID, "liner", "wetted", l.Material, ask, l.Options})
			tight = l.Material != nil && l.Material.Family == "metal"
		case l.Role == "reinforcement":
			backed = true
			if !tight {
				out = append(out, contact{p.ID, "reinforcement", "permeated", l.Material, ask, l.Options})
			}
		}
	}
	if !liner {
		out = append(out, contact{p.ID, "liner", "wetted", nil, "layers.liner of " + p.ID, nil})
	}
	if !backed && !tight {
		out = append(out, contact{p.ID, "reinforcement", "permeated", nil, "layers.reinforcement of " + p.ID, nil})
	}
	return out
}

// endContact is an end of its own material; an end made of the part's body is judged with the body (a hose has none), and
// the valve of a gas cylinder belongs to its filler.
func endContact(r *resolve.Run, e *resolve.End) []contact {
	if e.Sheet == nil || isOpen(e) {
		return nil
	}
	if e.Part != nil && e.Part.Sheet.Kind.V != "hose" && e.Material != nil && e.Material == e.Part.Body {
		return nil
	}
	if e == r.SourceEnd && r.Sheet.Source.Cylinder.Set {
		return nil
	}
	return []contact{{e.Owner + " " + e.Name, "end", "wetted", e.Material, "material of the " + e.Name + " of " + e.Owner, nil}}
}

// permeates says whether the fluid is one that reaches the layer behind the liner in harmful amount: the catalog has a
// row for it, or it is a liquefied or aggressive gas. Absent such a row a solvent or water is not held against a braid.
func (b *builder) permeates(f *resolve.Fluid, c contact) bool {
	may := c.options
	if c.material != nil {
		may = []string{c.material.ID}
	}
	if slices.ContainsFunc(may, func(id string) bool { return len(b.rowsOf(f.Cat, id)) > 0 }) {
		return true
	}
	h := f.Cat.Hazards
	return f.Cat.Form == "liquefied-gas" || isGas(f) && (resolve.Yes(h.Corrosive) || resolve.Yes(h.Toxic))
}
