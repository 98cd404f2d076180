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

// jointItems judges the seals of a run as things that hold pressure. A seal without a pressure of its own is held by
// its joint.
func (b *builder) jointItems(r *resolve.Run, top *units.Temperature) {
	for n, j := range r.Joints {
		pushes := b.atJoint(r, n)
		for _, s := range j.Seals {
			if it, ok := b.sealItem(s, top); ok {
				b.hold(it, pushes, top)
			}
		}
	}
}

// atJoint is what pushes on the n-th joint: that at the inlet of the part behind it, else that at the far end.
func (b *builder) atJoint(r *resolve.Run, n int) []push {
	j := r.Joints[n]
	if j.B.Part != nil {
		return b.at(r, j.B.Part.Index)
	}
	return b.relieved(r, len(r.Parts), b.passage(r).end)
}

func (b *builder) sealItem(s *resolve.Seal, top *units.Temperature) (item, bool) {
	it := item{id: s.ID, part: s.ID, what: "seal"}
	if s.Sheet.Rated.Set {
		it.have = s.Sheet.Rated.V.Gauge(b.l.Ambient)
		b.rests(s.ID+" rated", "pressure rating of "+s.ID, stated(s.Sheet.Evidence.V), s.ID)
		return it, true
	}
	if s.Kind == nil || s.Kind.HighestBar == nil {
		return it, false
	}
	bar := s.Kind.HighestBar.Value
	b.rests(s.Kind.ID+" pressure", "pressure limit of "+s.Kind.Name, s.Kind.HighestBar.Origin, s.ID)
	if pt := s.Kind.PressTimesT; pt != nil && top != nil && top.Celsius() > 0 {
		bar = min(bar, pt.Value/top.Celsius())
	}
	it.have = units.GaugePressure(bar * 1e5)
	return it, true
}
