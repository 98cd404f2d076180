package facts

import (
	"strings"

	"lineworthy/catalog"
	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

// point describes one receiving point against what the run carries.
func (b *builder) point(r *resolve.Run, v *resolve.Vessel, e *resolve.End, id string) Point {
	s := e.Sheet
	p := Point{
		ID: v.Key + "/" + e.Name, Vessel: v.Key, OpenPoint: s.Open.V, Entry: s.Entry.V, Keyed: s.Keyed.Set && s.Keyed.V != "none",
		Padlocked: boolOf(s.Padlock), Neighbours: len(b.l.Nearby) > 0,
	}
	if id != "" {
		p.ID = id
	}
	if s.Marked.Set {
		p.Marked = Yes(!strings.EqualFold(s.Marked.V, "none"))
	}
	for _, f := range r.Fluids {
		p.Flammable = p.Flammable || resolve.Yes(f.Cat.Hazards.Flammable)
		p.Liquid = p.Liquid || !isGas(f)
	}
	if p.Entry == "" && !p.OpenPoint {
		p.Entry = "bottom" // a closed coupling does not splash from a height; only an open point must say how it is filled
	}
	b.holds(r, v, &p)
	return p
}

// holds compares what the vessel is for with what the run brings, and with what the point meant is for: the next tanker
// may bring that. A vessel that only this line uses may leave it out.
func (b *builder) holds(r *resolve.Run, v *resolve.Vessel, p *Point) {
	c := v.Contents
	if c == nil {
		if v == r.Target && len(b.l.Nearby) == 0 {
			p.Contents, p.SameFluid, p.Hazardous = "as delivered", Yes(true), Yes(false)
		}
		return
	}
	p.Contents, p.SameFluid, p.Hazardous = c.Cat.Name, Yes(false), Yes(false)
	against := []*resolve.Fluid{}
	if r.Target != nil && r.Target != v && r.Target.Contents != nil {
		against = append(against, r.Target.Contents)
	}
	for _, f := range r.Fluids {
		if f.Role == "product" {
			against = append(against, f)
			p.SameFluid = Yes(p.SameFluid.V || f.Cat.ID == c.Cat.ID)
		}
	}
	for _, f := range against {
		hazard, product, why := b.reaction(f.Cat, c.Cat)
		if why != "" {
			b.unknown(p.ID, "points.hazardous", why, "the safety data sheets of both fluids")
		}
		p.Hazardous = worse(p.Hazardous, hazard)
		if hazard.V {
			p.Product = product
		}
	}
}

// coupling compares a point in reach with the one meant: the same standard, or one made to join it, in the same size and
// gender takes the same hose.
func coupling(meant, other *resolve.End) string {
	if meant.Family == nil || other.Family == nil {
		return ""
	}
	if !interchange(meant.Family, other.Family) {
		return "different"
	}
	if meant.Sheet.Gender.Set && other.Sheet.Gender.Set && meant.Sheet.Gender.V != other.Sheet.Gender.V {
		return "different"
	}
	same, known := units.Same(meant.Sheet.Size.V, other.Sheet.Size.V)
	if known && !same {
		return "different"
	}
	if !known {
		return ""
	}
	return "same"
}

func interchange(a, c *catalog.Connection) bool {
	m := worseMate(findMate(a, c.ID), findMate(c, a.ID))
	return a == c || m != nil && m.Verdict == "fits"
}
