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
	}
	for _, r := range liquid {
		s.begin(m, r)
		s.each(r, "pump", "start")
		s.add(Step{Do: "transfer", Run: r.key, Quantity: quantity(r)})
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

// order puts the gas before the liquid it drives.
func (m *Model) order() (gas, liquid []*run) {
	for _, r := range m.runs {
		if r.liquid {
			liquid = append(liquid, r)
		} else {
			gas = append(gas, r)
		}
	}
	return gas, liquid
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

// begin opens a run from its destination. A regulator is set once its source is open.
func (s *Sequence) begin(m *Model, r *run) {
	for _, d := range slices.Backward(r.devices) {
		switch d.kind {
		case "valve":
			s.add(Step{Do: "open", Item: d.id, Slowly: true})
		case "source":
			s.add(Step{Do: "open", Item: d.id, Run: r.key, Slowly: true})
		}
	}
	for _, d := range r.devices {
		if d.kind == "regulator" {
			s.add(Step{Do: "set", Item: d.id, Pressure: m.setting(r, d.id)})
		}
	}
}

// setting is the set pressure as the sheet writes it.
func (m *Model) setting(r *run, id string) string {
	for _, p := range r.r.Parts {
		if p.ID == id && p.Sheet.Set.Set {
			return p.Sheet.Set.V.Gauge(m.line.Ambient).Format(gaugeUnit(p.Sheet.Set.V))
		}
	}
	return "none"
}

func gaugeUnit(p units.Pressure) units.Unit {
	if p.Basis == units.GaugeBasis {
		return p.Unit
	}
	return "bar(g)"
}

func (s *Sequence) shut(gas, liquid []*run) {
	for _, r := range liquid {
		s.each(r, "pump", "stop")
		s.close(r, 0)
	}
	for _, r := range gas {
		s.close(r, 0)
	}
	for _, r := range liquid {
		s.drain(r)
	}
	for _, r := range gas {
		s.ventGas(r)
	}
	for _, r := range liquid {
		s.vent(r)
	}
	for _, r := range slices.Concat(gas, liquid) {
		s.each(r, "hose", "disconnect")
	}
	s.add(Step{Do: "check", Text: "ends capped, hoses looked at, bonding taken off last, record written"})
}

// close closes the n-th thing of the run that can be turned by hand.
func (s *Sequence) close(r *run, n int) {
	for _, d := range r.devices {
		if d.kind != "valve" && d.kind != "source" {
			continue
		}
		if n == 0 {
			step := Step{Do: "close", Item: d.id}
			if d.kind == "source" {
				step.Run = r.key
			}
			s.add(step)
			return
		}
		n--
	}
}

func (r *run) hands() (n int) {
	for _, d := range r.devices {
		if d.kind == "valve" || d.kind == "source" {
			n++
		}
	}
	return n
}

// drain lets each stretch behind the source run empty before the valve at its other end is closed.
func (s *Sequence) drain(r *run) {
	if part := r.last(); part != "" {
		s.add(Step{Do: "drain", Item: part, Text: "let the line run empty into the destination, or into a closed drain"})
	}
	for n := 1; n < r.hands(); n++ {
		s.close(r, n)
	}
}

// last is a part behind the first device, by which the stretch is named.
func (r *run) last() string {
	for i := len(r.cells) - 1; i > 0; i-- {
		for _, p := range r.cells[i].parts {
			if !p.Branch {
				return p.ID
			}
		}
		if d := r.devices[i-1]; i > 1 && d.kind == "valve" {
			return d.id
		}
	}
	return ""
}

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
	for _, d := range r.devices {
		if d.kind == "regulator" {
			s.add(Step{Do: "set", Item: d.id, Pressure: "none"})
		}
	}
	for n := 1; n < r.hands(); n++ {
		s.close(r, n)
	}
}
