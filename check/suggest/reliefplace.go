package suggest

import (
	"slices"

	"lineworthy/check/facts"
	"lineworthy/check/resolve"
)

// behindRegulator is the device that a run of gas lacks behind its last regulator. A regulator itself protects nothing.
func (s *search) behindRegulator(r *resolve.Run) *device {
	at := -1
	for i, p := range r.Parts {
		if p.Sheet.Kind.V == "regulator" {
			at = i
		}
	}
	if at < 0 || s.liquid(r) || relieved(r.Parts[at:]) {
		return nil
	}
	reg := r.Parts[at]
	d := &device{run: r, why: "relief valve behind " + reg.ID, forFlow: true, bounds: s.boundsOf(s.from(r), "regulator-failed-open")}
	for _, j := range r.Joints {
		if j.A == reg.Outlet && copied(j) {
			d.gaps = append(d.gaps, j)
		}
	}
	return d
}

func (s *search) liquid(r *resolve.Run) bool {
	return slices.ContainsFunc(r.Fluids, func(f *resolve.Fluid) bool {
		return !slices.Contains([]string{"compressed-gas", "dissolved-gas", "vapour"}, f.Cat.Form)
	})
}

func relieved(ps []*resolve.Part) bool {
	return slices.ContainsFunc(ps, func(p *resolve.Part) bool { return p.Sheet.Kind.V == "relief" })
}

// between is the device that lets off liquid shut in between two parts that close.
func (s *search) between(r *resolve.Run, sec facts.Section) *device {
	from, _ := s.part(sec.From)
	to, _ := s.part(sec.To)
	if from == nil || to == nil {
		return nil
	}
	names := map[string]bool{}
	d := &device{run: r, section: sec.ID, why: "relief device for liquid shut in between " + sec.From + " and " + sec.To}
	for _, p := range r.Parts[from.Index : to.Index+1] {
		names[p.ID] = true
	}
	for _, j := range r.Joints {
		if j.A.Part == nil || j.B.Part == nil || !names[j.A.Owner] || !names[j.B.Owner] {
			continue
		}
		names[j.ID] = true
		if copied(j) && !j.B.Part.Branch {
			d.gaps = append(d.gaps, j)
		}
	}
	d.bounds = s.boundsOf(names, "")
	if sec.WeakestKPa.Known {
		d.bounds.weakestKPa = min(d.bounds.weakestKPa, sec.WeakestKPa.V)
	} else {
		d.bounds.unknown = true
	}
	// Couplings are made to be parted, and a tee belongs where nobody parts it.
	slices.SortStableFunc(d.gaps, func(a, b *resolve.Joint) int { return parted(a) - parted(b) })
	d.gaps = d.gaps[:min(len(d.gaps), 2)]
	return d
}

func parted(j *resolve.Joint) int {
	if j.A.Family.Kind == "coupling" {
		return 1
	}
	return 0
}

// copied says whether a tee can take its ends from the joint: both are written, and of one standard.
func copied(j *resolve.Joint) bool {
	return j.A.Sheet != nil && j.B.Sheet != nil && j.A.Family != nil && j.A.Family == j.B.Family && j.A.Path != "" && j.B.Path != ""
}

// onVessel is the device that a closed vessel lacks, set for the vessel and all that it feeds.
func (s *search) onVessel(v *resolve.Vessel) *device {
	if v.Sheet.Relief != nil || v.Sheet.Vent.V == "open" || !v.Sheet.Rated.Set {
		return nil
	}
	d := &device{id: v.Key, vessel: v, why: "relief device on " + v.Key, forFlow: true}
	names := map[string]bool{v.Key: true}
	for _, r := range s.line.Runs {
		if r.Source == v {
			d.run = r
			s.feed(r, names)
		}
		if r.Target == v && d.run == nil {
			d.run = r
		}
	}
	if d.run == nil {
		return nil
	}
	d.bounds = s.boundsOf(names, "heated-vessel")
	if rated := int64(v.Sheet.Rated.V.Gauge(s.line.Ambient)) / 1000; d.bounds.weakestKPa == 0 || rated < d.bounds.weakestKPa {
		d.bounds.weakestKPa = rated
	}
	return d
}
