package sequence

import (
	"slices"

	"lineworthy/check/resolve"
)

// outlet is where a vent may lead. What is toxic must not meet people, steam that condenses draws a vacuum, and what is left
// of a liquid that does not burn or boil drips.
func (r *run) outlet() string {
	const zero = "; read the gauge at zero"
	switch {
	case r.toxic:
		return "into an absorber or a closed vent, never where people are" + zero
	case r.steams():
		return "to a safe place, away from people; leave the vent open until all is cold, for steam that condenses draws a vacuum" + zero
	case r.liquid && !liquefied(r.r) && (r.to == nil || !r.to.flammable):
		return "at a vent valve, into a closed drain or a container, away from the face" + zero
	}
	return "to a safe place outside, away from people and sources of ignition" + zero
}

func (r *run) leads() string {
	if r.toxic {
		return toClosed
	}
	return ""
}

func (r *run) steams() bool {
	return slices.ContainsFunc(r.r.Fluids, func(f *resolve.Fluid) bool { return f.Cat.Form == "vapour" })
}

// vent empties every stretch with a hose of what is left in it.
func (s *Sequence) vent(r *run) {
	for i, c := range r.cells {
		for _, p := range c.parts {
			if p.Sheet.Kind.V == "hose" && i > 0 {
				s.add(Step{Do: "vent", Item: p.ID, To: r.leads(), Text: r.outlet()})
				break
			}
		}
	}
}

// ventGas vents the vessel that was padded, its gas line with it, backs the regulator off and closes the rest.
func (s *Sequence) ventGas(r *run) {
	if r.to != nil && r.to.own > 0 {
		s.ventBetween(r)
		return
	}
	if r.to != nil && !r.to.open {
		s.add(Step{Do: "vent", Item: r.to.id, To: r.leads(), Text: "slowly, " + r.outlet()})
	}
	if part := r.last(); part != "" {
		s.add(Step{Do: "vent", Item: part, To: r.leads(), Text: r.outlet()})
	}
	s.backOff(r)
	for n := 1; n < r.hands(); n++ {
		s.close(r, n)
	}
}

// ventBetween shuts off a vessel that has pressure by itself and cannot be vented, and then empties what leads to it.
func (s *Sequence) ventBetween(r *run) {
	last := r.hands() - 1
	if last > 0 {
		s.close(r, last)
	}
	s.vent(r)
	s.backOff(r)
	for n := 1; n < last; n++ {
		s.close(r, n)
	}
}

func (s *Sequence) backOff(r *run) {
	for _, d := range r.devices {
		if d.kind == "regulator" {
			s.add(Step{Do: "set", Item: d.id, Pressure: "none"})
		}
	}
}
