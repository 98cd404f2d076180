package sequence

import "slices"

func (s *Sequence) shut(gas, liquid []*run) {
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
