package facts

import (
	"slices"
	"strings"

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
	b.f.Pairs = Pairs{Unsuitable: []Pair{}, Limited: []Pair{}, Suitable: b.pairSpace[:0], Unlisted: []Pair{}}
	b.f.Bars = []Bar{}
	for _, r := range b.l.Runs {
		b.contacts = contacts(b.contacts[:0], r)
		for i := range b.contacts {
			c := &b.contacts[i]
			for _, f := range met(r) {
				if c.how == "permeated" && !b.permeates(f, c) {
					continue
				}
				b.pair(c, f)
			}
		}
	}
	b.f.Pairs.Suitable, b.pairSpace = cut(b.f.Pairs.Suitable), b.f.Pairs.Suitable
}

// contacts adds all materials of a run that a fluid touches or can reach through a liner.
func contacts(out []contact, r *resolve.Run) []contact {
	for _, p := range r.Parts {
		out = partContacts(out, p)
	}
	for _, j := range r.Joints {
		out = endContact(endContact(out, r, j.A), r, j.B)
		for _, s := range j.Seals {
			out = append(out, contact{s.ID, "seal", "wetted", s.Material, unless(s.Material != nil, "material of ", s.ID), nil})
		}
	}
	return out
}

// unless is the text for what is not known; for what is known it is not put together.
func unless(known bool, text ...string) string {
	if known {
		return ""
	}
	return strings.Join(text, "")
}

func partContacts(out []contact, p *resolve.Part) []contact {
	switch p.Sheet.Kind.V {
	case "weight":
		return out
	case "hose":
		out = layerContacts(out, p)
	default:
		out = append(out, contact{p.ID, "body", "wetted", p.Body, unless(p.Body != nil, "material of ", p.ID), nil})
	}
	for _, m := range p.Wetted {
		out = append(out, contact{p.ID, "wetted", "wetted", m, "", nil})
	}
	return out
}

// layerContacts are the liner, and behind a liner that lets molecules through the reinforcement too.
func layerContacts(out []contact, p *resolve.Part) []contact {
	tight, liner, backed := false, false, p.Hose != nil // a class lists its reinforcement, or has none
	for _, l := range p.Layers {
		switch {
		case l.Role == "liner":
			liner = true
			out = append(out, layerContact(p, l, "wetted"))
			tight = l.Material != nil && l.Material.Family == "metal"
		case l.Role == "reinforcement":
			backed = true
			if !tight {
				out = append(out, layerContact(p, l, "permeated"))
			}
		}
	}
	if !liner {
		out = append(out, layerContact(p, resolve.Layer{Role: "liner"}, "wetted"))
	}
	if !backed && !tight {
		out = append(out, layerContact(p, resolve.Layer{Role: "reinforcement"}, "permeated"))
	}
	return out
}

func layerContact(p *resolve.Part, l resolve.Layer, how string) contact {
	return contact{p.ID, l.Role, how, l.Material, unless(l.Material != nil, "layers.", l.Role, " of ", p.ID), l.Options}
}

// endContact is an end of its own material; an end made of the part's body is judged with the body (a hose has none), and
// the valve of a gas cylinder belongs to its filler.
func endContact(out []contact, r *resolve.Run, e *resolve.End) []contact {
	if e.Sheet == nil || isOpen(e) {
		return out
	}
	if e.Part != nil && e.Part.Sheet.Kind.V != "hose" && e.Material != nil && e.Material == e.Part.Body {
		return out
	}
	if e == r.SourceEnd && r.Sheet.Source.Cylinder.Set {
		return out
	}
	return append(out, contact{e.Owner + " " + e.Name, "end", "wetted", e.Material, unless(e.Material != nil, "material of the ", e.Name, " of ", e.Owner), nil})
}

// permeates says whether the fluid is one that reaches the layer behind the liner in harmful amount: the catalog has a
// row for it, or it is a liquefied or aggressive gas. Absent such a row a solvent or water is not held against a braid.
func (b *builder) permeates(f *resolve.Fluid, c *contact) bool {
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
