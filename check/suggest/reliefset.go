package suggest

import (
	"math"
	"strings"

	"lineworthy/check/facts"
	"lineworthy/check/resolve"
)

// bounds are what a set pressure has to lie between: what the line sees in ordinary operation, and what the weakest of
// all that the device stands for holds. Where either is not known there are none.
type bounds struct {
	operatingKPa, weakestKPa int64
	unknown                  bool
}

func (b bounds) known() bool { return !b.unknown && b.weakestKPa > 0 && len(b.sets()) > 0 }

// A device opens fully a tenth above its set pressure (the rule relief/accumulates_above_hose), and leaks when the line
// comes within a tenth below it (practice, no source).
const tenth = 1.1

// sets are set pressures in bar: the middle of the range, then the top of it.
func (b bounds) sets() (out []float64) {
	low := math.Ceil(float64(b.operatingKPa)*tenth/10-1e-9) / 10
	high := math.Floor(float64(b.weakestKPa)/tenth/10+1e-9) / 10
	if b.unknown || high <= 0 || low > high {
		return nil
	}
	middle := math.Floor((low+high)*5+1e-9) / 10
	if middle <= 0 || middle == high {
		return []float64{high}
	}
	return []float64{middle, high}
}

// boundsOf are the bounds for the things that have a name in the set and come under pressure in the case, if one is given.
func (s *search) boundsOf(names map[string]bool, failure string) (b bounds) {
	reached := map[string]bool{}
	for _, c := range s.facts.Capacities {
		if !of(names, c.Part) || failure != "" && c.Case != failure {
			continue
		}
		reached[c.Part] = true
		switch {
		case !c.RatedKPa.Known:
			b.unknown = true
		case b.weakestKPa == 0 || c.RatedKPa.V < b.weakestKPa:
			b.weakestKPa = c.RatedKPa.V
		}
	}
	for _, c := range s.facts.Capacities {
		if reached[c.Part] && ordinary(c) {
			b.unknown = b.unknown || !c.DemandKPa.Known
			b.operatingKPa = max(b.operatingKPa, c.DemandKPa.V)
		}
	}
	return b
}

func ordinary(c facts.Capacity) bool {
	return c.Case != "regulator-failed-open" && c.Case != "heated-vessel"
}

// of says whether the part, or the seal of a joint, belongs to the named things.
func of(names map[string]bool, part string) bool {
	joint, _, _ := strings.Cut(part, " seal ")
	return names[part] || names[joint]
}

// from are the names of all that a run feeds: its parts and joints, the vessel it ends at, and the runs that start there.
func (s *search) from(r *resolve.Run) map[string]bool {
	names := map[string]bool{}
	s.feed(r, names)
	return names
}

func (s *search) feed(r *resolve.Run, names map[string]bool) {
	if names["run "+r.Key] {
		return
	}
	names["run "+r.Key] = true
	for _, p := range r.Parts {
		names[p.ID] = true
	}
	for _, j := range r.Joints {
		names[j.ID] = true
	}
	if r.Target == nil {
		return
	}
	names[r.Target.Key] = true
	for _, next := range s.line.Runs {
		if next.Source == r.Target {
			s.feed(next, names)
		}
	}
}
