package sequence

// outlet is where a vent may lead. What is toxic must not meet people.
func (r *run) outlet() string {
	if r.toxic {
		return "into an absorber or a closed vent, never where people are; read the gauge at zero"
	}
	return "to a safe place outside, away from people and sources of ignition; read the gauge at zero"
}

// vent empties every stretch with a hose of what is left in it.
func (s *Sequence) vent(r *run) {
	for i, c := range r.cells {
		for _, p := range c.parts {
			if p.Sheet.Kind.V == "hose" && i > 0 {
				s.add(Step{Do: "vent", Item: p.ID, Text: r.outlet()})
				break
			}
		}
	}
}

// ventGas vents the vessel that was padded, its gas line with it, backs the regulator off and closes the rest.
func (s *Sequence) ventGas(r *run) {
	if r.to != nil && !r.to.open {
		s.add(Step{Do: "vent", Item: r.to.id, Text: "slowly, " + r.outlet()})
	}
	if part := r.last(); part != "" {
		s.add(Step{Do: "vent", Item: part, Text: r.outlet()})
	}
	s.backOff(r)
	for n := 1; n < r.hands(); n++ {
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
