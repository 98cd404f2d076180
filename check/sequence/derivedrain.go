package sequence

import "slices"

// drain lets each stretch behind the source run empty before the valve at its other end is closed.
func (s *Sequence) drain(r *run) {
	if part := r.last(); part != "" {
		s.add(Step{Do: "drain", Item: part, Text: "let the line run empty into the destination, or into a closed drain"})
	}
	last := r.hands()
	if s.flush(r) {
		last--
	}
	for n := 1; n < last; n++ {
		s.close(r, n)
	}
	s.backOff(r)
}

// last is a part behind the first device, by which the stretch is named.
func (r *run) last() string {
	if i := r.lastHose(); i > 0 && r.onlyValves(i) {
		return r.hoseOf(i)
	}
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

// onlyValves says whether what stands behind a cell stands open to it when every valve does.
func (r *run) onlyValves(i int) bool {
	return !slices.ContainsFunc(r.devices[i:], func(d *device) bool { return d.kind != "valve" })
}
