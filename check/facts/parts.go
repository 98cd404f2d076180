package facts

import (
	"slices"

	"lineworthy/check/resolve"
)

func (b *builder) services(p *resolve.Part) {
	for _, f := range p.Run.Fluids {
		s := Service{
			ID: p.ID + " for " + f.Key, Hose: p.ID, Fluid: f.Cat.Name, FluidID: f.Cat.ID, Ammonia: f.Cat.ID == "ammonia",
			Words: f.Services, OnlyFor: []string{}, NotFor: []string{},
		}
		if p.Sheet.SpecFor != nil {
			s.Named = Yes(b.named(p, f))
		}
		if p.Hose != nil {
			s.ClassKnown = Yes(true)
			if p.Hose.For != nil {
				s.ForStated, s.OnlyFor = true, slices.Sorted(slices.Values(p.Hose.For.Values))
				b.rests(p.Hose.ID+" service", "what "+p.Hose.Name+" is made for", p.Hose.For.Origin, p.ID)
			}
			s.NotFor = slices.Grow(s.NotFor, len(p.Hose.NotFor))
			for _, x := range p.Hose.NotFor {
				s.NotFor = append(s.NotFor, x.Service)
			}
			slices.Sort(s.NotFor)
		}
		b.f.Services = append(b.f.Services, s)
	}
}

// named says whether the maker's paper names the fluid, under any name the catalog knows.
func (b *builder) named(p *resolve.Part, f *resolve.Fluid) bool {
	for _, name := range p.Sheet.SpecFor {
		if name.V == f.Cat.ID {
			return true // the usual way to write it
		}
		if row, err := b.c.Fluid(name.V); err == nil && row.ID == f.Cat.ID {
			return true
		}
	}
	return false
}

func (b *builder) parts() {
	n := 0
	for _, r := range b.l.Runs {
		n += len(r.Parts)
	}
	b.f.Parts = make([]Part, 0, n)
	for _, r := range b.l.Runs {
		open := r.TargetEnd != nil && r.TargetEnd.Sheet != nil && r.TargetEnd.Sheet.Open.V
		for _, p := range r.Parts {
			part := b.part(p)
			part.AtOpenPoint = open
			b.f.Parts = append(b.f.Parts, part)
			b.f.Line.PassiveShutoff = b.f.Line.PassiveShutoff || part.Separation
		}
	}
}

func (b *builder) part(p *resolve.Part) Part {
	s := p.Sheet
	out := Part{ID: p.ID, Run: p.Run.Key, Kind: s.Kind.V, Bonded: boolOf(s.Bonded), OxygenClean: boolOf(s.OxyClean)}
	if k := s.Kind.V; k != "hose" && k != "relief" && s.Tested.Set && s.TestEvery.Set {
		out.TestDated, out.TestedDays, out.Interval = true, b.since(s.Tested), b.due(s)
	}
	out.Conductor = b.conductor(p)
	if out.Conductor.Known && !out.Conductor.V && !out.Bonded.Known {
		out.Bonded = Yes(false) // what cannot hold a charge has nothing to bond
	}
	out.Separation = s.ActsOn.V == "separation"
	for _, f := range p.Run.Fluids {
		out.Flammable = out.Flammable || resolve.Yes(f.Cat.Hazards.Flammable)
		out.Oxygen = out.Oxygen || f.Props.ID == "oxygen"
	}
	return out
}

// conductor says whether the part is metal that can hold a charge. A hose's own end fittings count: a hose is one.
func (b *builder) conductor(p *resolve.Part) Bool {
	if p.Sheet.Kind.V == "hose" {
		return Yes(true)
	}
	if p.Body == nil {
		return Bool{}
	}
	return Yes(p.Body.Family == "metal")
}
