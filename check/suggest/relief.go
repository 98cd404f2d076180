package suggest

import (
	"fmt"
	"slices"

	"lineworthy/check/resolve"
)

// device is a relief device that the line lacks: where it would go and what it stands between.
type device struct {
	id      string // of the device, or the key of the vessel
	tee     string // of the part it branches from, empty on a vessel
	why     string
	section string // of shut-in liquid that it lets off
	run     *resolve.Run
	vessel  *resolve.Vessel
	gaps    []*resolve.Joint // where it could be put in, the best first
	bounds  bounds
	forFlow bool // its area and coefficient are counted, because a failed regulator blows through it
}

// reliefSpot begins the names of spots that are devices put in.
const reliefSpot = "relief "

// sectionRules say that liquid shut in between two devices has nothing to let it off.
var sectionRules = []string{"expansion/trapped_liquid_above_rating", "expansion/lpg_section_without_relief", "expansion/ammonia_section_without_relief"}

// reliefs tries each relief device that the line lacks on top of those before it: a new part that nothing protects yet
// would only add to what fails. Each is a spot of its own, so that it is put together with other parts like any of them,
// and taken out again where the line does without.
func (s *search) reliefs(parts []*ways) (out []*ways) {
	if s.o.Part != "" || s.o.Stock != nil { // a list of stock names no relief devices
		return nil
	}
	// A device is set for the parts as they would be, so that a hose that is too weak is replaced first.
	as := s.try([][]change{s.set(s.picked(parts))})[0]
	line, known := s.line, s.facts
	defer func() { s.line, s.facts = line, known }()
	if as.err != nil || s.look(as) != nil {
		return nil
	}
	for _, d := range s.lacking(as) {
		sp := &spot{id: reliefSpot + d.id, kind: "relief", run: d.run}
		s.name(sp, d)
		w := &ways{spot: sp, as: as}
		var sets [][]change
		for _, c := range s.devices(sp, d) {
			sets = append(sets, append(slices.Clone(as.changes), c))
		}
		w.tried = len(sets)
		w.best = sound(s.try(sets), at(sp.id))
		w.best = w.best[:min(len(w.best), kept)]
		if out = append(out, w); len(w.best) > 0 && at(sp.id)(w.best[0], as) < 0 {
			as = w.best[0]
		}
	}
	return out
}

// name makes what is found about the new parts and their joints count against the device.
func (s *search) name(sp *spot, d *device) {
	if d.tee == "" {
		s.names["relief of "+d.id] = sp.id
		return
	}
	for _, id := range []string{d.id, d.tee, d.section, d.id + ".mount to " + d.id + ".inlet"} {
		s.names[id] = sp.id
	}
	for _, j := range d.gaps {
		s.names[fmt.Sprintf("%s.%s to %s.inlet", j.A.Owner, j.A.Name, d.tee)] = sp.id
		s.names[fmt.Sprintf("%s.outlet to %s.%s", d.tee, j.B.Owner, j.B.Name)] = sp.id
	}
}

// lacking are the devices whose want the rules have found, where it is known what the weakest part holds.
func (s *search) lacking(as *trial) (out []*device) {
	n := 0
	add := func(d *device) {
		if d == nil || d.vessel == nil && len(d.gaps) == 0 || !d.bounds.known() {
			return
		}
		if d.vessel == nil {
			d.id, d.tee, n = s.free("RV", n), s.free("T", n), n+1
		}
		out = append(out, d)
	}
	for _, r := range s.line.Runs {
		if failed(as, failures[0]) {
			add(s.behindRegulator(r))
		}
	}
	for _, v := range s.line.Vessels {
		if failed(as, failures[0]) || failed(as, failures[1]) {
			add(s.onVessel(v))
		}
	}
	for _, r := range s.line.Runs {
		for _, sec := range s.facts.Sections {
			if sec.Run == r.Key && !sec.Relieved && slices.ContainsFunc(as.faults, func(f fault) bool { return f.subject == sec.ID && slices.Contains(sectionRules, f.rule) }) {
				add(s.between(r, sec))
			}
		}
	}
	return out
}

func failed(t *trial, words string) bool {
	return slices.ContainsFunc(t.faults, func(f fault) bool { return f.finding != nil && failure(f.finding) && f.finding.Case == words })
}

// free is a name that no part has, the n+1st of them.
func (s *search) free(letters string, n int) string {
	for i := 1; ; i++ {
		id := fmt.Sprintf("%s%d", letters, i)
		if p, _ := s.part(id); p != nil {
			continue
		}
		if n == 0 {
			return id
		}
		n--
	}
}
