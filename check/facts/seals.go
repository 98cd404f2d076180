package facts

import (
	"slices"

	"lineworthy/catalog"
	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

func (b *builder) sealFacts(j *resolve.Joint, s *resolve.Seal) Seal {
	out := Seal{ID: s.ID, Joint: j.ID}
	if s.Material != nil {
		out.Material = s.Material.ID
	}
	if s.Kind == nil {
		return out
	}
	out.Kind = s.Kind.ID
	out.KindFits = kindFits(j, s.Kind)
	b.hotAndHigh(j, s, &out)
	if !flanged(j) {
		out.Size = "none" // a ring or washer of a coupling or thread goes by the joint, not by a size of its own
		return out
	}
	if size := s.Sheet.Size; size.Set && j.B.Sheet != nil && j.B.Sheet.Size.Set {
		if same, known := units.Same(size.V, j.B.Sheet.Size.V); known {
			out.Size = sameWord(same)
		}
	}
	return out
}

func flanged(j *resolve.Joint) bool {
	return j.A.Family != nil && j.A.Family.Kind == "flange" || j.B.Family != nil && j.B.Family.Kind == "flange"
}

// kindFits says whether the standard of either end takes this kind of seal.
func kindFits(j *resolve.Joint, k *catalog.Seal) Bool {
	said := false
	for _, e := range []*resolve.End{j.A, j.B} {
		if e.Family == nil || len(e.Family.Seals.Kinds) == 0 {
			continue
		}
		said = true
		if slices.Contains(e.Family.Seals.Kinds, k.ID) {
			return Yes(true)
		}
	}
	return Bool{V: false, Known: said}
}

// outletNumber compares outlet numbers, and asks whether the number is assigned to the gas. Threads prove nothing.
func (b *builder) outletNumber(j *resolve.Joint, out *Joint) {
	x, y := j.A, j.B
	out.Cylinder = x.Family.Kind == "cylinder-outlet" || y.Family.Kind == "cylinder-outlet"
	if !out.Cylinder {
		out.Number, out.GasListed = "none", Yes(true)
		return
	}
	if x.Sheet.Number.Set && y.Sheet.Number.Set {
		out.Number = sameWord(x.Sheet.Number.V == y.Sheet.Number.V && x.Family == y.Family)
	}
	for _, e := range []*resolve.End{x, y} {
		if n := outlet(e); n != nil {
			out.GasListed = Yes(listed(n, j.Run))
			return
		}
	}
	b.unknown(j.ID, "joints.gas_listed", "the outlet number is not stated, or the catalog does not hold it", "number of the cylinder outlet")
}

func outlet(e *resolve.End) *catalog.OutletNumber {
	for i, n := range e.Family.Outlets {
		if e.Sheet.Number.Set && n.Number == e.Sheet.Number.V {
			return &e.Family.Outlets[i]
		}
	}
	return nil
}

func listed(n *catalog.OutletNumber, r *resolve.Run) bool {
	for _, f := range r.Fluids {
		if !slices.Contains(n.Fluids, f.Cat.ID) {
			return false
		}
	}
	return true
}

// jointItems judges the seals of a run, and the ends that no part is judged with, as things that hold pressure. A seal
// without a pressure of its own is held by its joint.
func (b *builder) jointItems(r *resolve.Run, top *units.Temperature) {
	for n, j := range r.Joints {
		pushes := b.atJoint(r, n)
		for _, e := range []*resolve.End{j.A, j.B} {
			if it, ok := b.looseEnd(r, e, top); ok {
				b.hold(it, b.onEnd(r, e, pushes), top)
			}
		}
		for _, s := range j.Seals {
			if it, ok := b.sealItem(s, top); ok {
				b.hold(it, pushes, top)
			}
		}
	}
}

// looseEnd is what the point of a vessel, the far end of a line or the branch that a gauge or relief device sits on holds.
// A standard that gives no pressure leaves it to the vessel, the part or whoever owns the far end.
func (b *builder) looseEnd(r *resolve.Run, e *resolve.End, top *units.Temperature) (item, bool) {
	if e.Part != nil && e != e.Part.Mount || e.Family == nil || top == nil {
		return item{}, false
	}
	if e == r.SourceEnd && r.Sheet.Source.Cylinder.Set {
		return cylinderOutlet(e)
	}
	if len(e.Family.Ratings) == 0 {
		return item{}, false
	}
	return b.endItem(e, *top)
}

// onEnd is what pushes on a loose end. The class of a cylinder outlet is one of filling pressures: it is compared with the
// cylinder as filled, not with what a hot day makes of it.
func (b *builder) onEnd(r *resolve.Run, e *resolve.End, pushes []push) []push {
	if e != r.SourceEnd || !r.Sheet.Source.Cylinder.Set {
		return pushes
	}
	return []push{{name: "duty", p: r.Sheet.Source.Cylinder.V.Gauge(b.l.Ambient), known: true, cause: "the cylinder as filled"}}
}

// cylinderOutlet is the pressure class of the outlet number; it is for the cylinder as filled, so it speaks for the outlet
// only where the catalog holds one.
func cylinderOutlet(e *resolve.End) (item, bool) {
	n := outlet(e)
	if n == nil || n.MaxBar == nil {
		return item{}, false
	}
	return item{id: e.Owner + " " + e.Name, part: e.Owner, what: "outlet class", have: units.GaugePressure(*n.MaxBar * 1e5)}, true
}

// atJoint is what pushes on the n-th joint: that at the inlet of the part behind it, else that at the far end.
func (b *builder) atJoint(r *resolve.Run, n int) []push {
	j := r.Joints[n]
	if j.B.Part != nil {
		return b.at(r, j.B.Part.Index)
	}
	return b.arriving(r)
}

func (b *builder) sealItem(s *resolve.Seal, top *units.Temperature) (item, bool) {
	it := item{id: s.ID, part: s.ID, what: "seal"}
	kind, known := kindLimit(s.Kind)
	if s.Sheet.Rated.Set {
		it.have = s.Sheet.Rated.V.Gauge(b.l.Ambient)
	}
	if s.Sheet.Rated.Set && (s.Sheet.Evidence.Set || !known || it.have < kind) {
		b.rests(s.ID+" rated", "pressure rating of "+s.ID, stated(s.Sheet.Evidence.V), s.ID)
		return it, true
	}
	if known {
		b.rests(s.Kind.ID+" pressure", "pressure limit of "+s.Kind.Name, s.Kind.HighestBar.Origin, s.ID)
	}
	it.have = kind
	return it, known
}

// kindLimit is what a kind of seal holds when cold, and whether the catalog knows. The limit of pressure times temperature
// is a fact of its own.
func kindLimit(k *catalog.Seal) (units.GaugePressure, bool) {
	if k == nil || k.HighestBar == nil {
		return 0, false
	}
	return units.GaugePressure(k.HighestBar.Value * 1e5), true
}
