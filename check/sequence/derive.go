package sequence

import (
	"slices"

	"lineworthy/check/units"
)

// Derive is the sequence for the line: connect, open from the destination to the source, transfer, close the source, let
// the line run empty, close the rest, vent, and only then disconnect.
func (m *Model) Derive() *Sequence {
	s := &Sequence{Line: m.line.Sheet.ID.V}
	s.add(Step{Do: "check", Text: "the inspection of the line is recorded and clears it; area cleared, protective equipment worn, stop tried"})
	gas, liquid := m.order()
	s.bonds(liquid)
	for _, r := range slices.Concat(gas, liquid) {
		s.each(r, "hose", "connect")
	}
	for _, r := range gas {
		s.begin(m, r)
		s.use(m, r)
	}
	for _, r := range liquid {
		s.begin(m, r)
		s.each(r, "pump", "start")
		s.add(Step{Do: "transfer", Run: r.key, Quantity: quantity(r)})
		s.each(r, "pump", "stop")
		s.close(r, 0) // before the next begins, or it goes on
	}
	s.shut(gas, liquid)
	return s
}

func (s *Sequence) add(steps ...Step) { s.Steps = append(s.Steps, steps...) }

func quantity(r *run) string {
	if r.quantityM3 == 0 {
		return ""
	}
	return units.Volume(r.quantityM3).Format("L")
}

// order puts the gas before the liquid it drives, and what fills a vessel before what empties it.
func (m *Model) order() (gas, liquid []*run) {
	var later []*run
	for _, r := range m.runs {
		switch {
		case !r.liquid:
			gas = append(gas, r)
		case m.filled(r):
			later = append(later, r)
		default:
			liquid = append(liquid, r)
		}
	}
	for len(later) > 0 {
		i := max(0, slices.IndexFunc(later, func(r *run) bool { return !fills(later, r.source) }))
		liquid, later = append(liquid, later[i]), slices.Delete(later, i, i+1)
	}
	return gas, liquid
}

// filled says whether another run of liquid fills the source.
func (m *Model) filled(r *run) bool { return r.source != nil && fills(m.runs, r.source) }

func fills(runs []*run, v *vessel) bool {
	return slices.ContainsFunc(runs, func(r *run) bool { return r.liquid && r.to == v })
}

func (s *Sequence) bonds(liquid []*run) {
	var done []string
	for _, r := range liquid {
		for _, v := range []*vessel{r.to, r.source} {
			if v != nil && r.to != nil && r.to.flammable && !slices.Contains(done, v.id) {
				s.add(Step{Do: "bond", Item: v.id, Text: "connect to earth, away from any opening"})
				done = append(done, v.id)
			}
		}
	}
}

func (s *Sequence) each(r *run, kind, do string) {
	for _, p := range r.r.Parts {
		if p.Sheet.Kind.V == kind {
			s.add(Step{Do: do, Item: p.ID})
		}
	}
}
