package facts

import (
	"slices"

	"lineworthy/check/resolve"
)

// rings keeps runs that feed each other, such as a transfer with a vapour return, from being followed for ever.
type rings struct {
	under []*resolve.Run        // runs being worked out, the outermost first
	cut   bool                  // a ring was cut below
	steps int                   // runs worked out since the outermost began
	parts map[*resolve.Run]bool // runs known to be part of a ring
}

// mostSteps is far more than any line has ways round.
const mostSteps = 300

// passage is the pressure along the run. A run that feeds itself is cut where it closes: going round once more brings no
// new source. In a ring each run is worked out anew for each that asks: as part of another it must leave that one out.
func (b *builder) passage(r *resolve.Run) *passage {
	k := &b.rings
	if done := b.stages[r]; done != nil && (len(k.under) == 0 || !k.parts[r]) {
		return done
	}
	if slices.Contains(k.under, r) {
		k.cut = true
		return &passage{run: r}
	}
	if k.steps++; k.steps > mostSteps {
		k.cut = true
		return tangled(r)
	}
	before := k.cut
	k.cut, k.under = false, append(k.under, r)
	pass := b.walk(r)
	k.under = k.under[:len(k.under)-1]
	outermost := len(k.under) == 0
	if !k.cut || outermost {
		b.stages[r] = pass
	}
	if k.parts == nil {
		k.parts = map[*resolve.Run]bool{}
	}
	k.parts[r] = k.parts[r] || k.cut
	k.cut = (k.cut || before) && !outermost
	if outermost {
		k.steps = 0
	}
	return pass
}

// tangled is the passage of a run in a line whose runs feed each other in too many ways.
func tangled(r *resolve.Run) *passage {
	all := []push{missing("duty", "the runs feed each other in more ways than can be followed", "a sheet for each part of the line")}
	pass := &passage{run: r, end: all}
	for range r.Parts {
		pass.in = append(pass.in, all)
	}
	return pass
}

// back is what other runs put into the vessel this run ends in: with the vessel's valve open it stands in the line too, and
// no check valve is counted on to keep it out (practice).
func (b *builder) back(r *resolve.Run) []push {
	v := r.Target
	if v == nil || v.Sheet.Vent.V == "open" {
		return nil
	}
	out := b.standing(v)
	for _, other := range b.l.Runs {
		if other == r || other.Target != v {
			continue
		}
		for _, p := range b.vesselRelieved(v, b.passage(other)) {
			if p.known && p.p <= 0 {
				continue
			}
			p.cause += " (back from " + v.Key + ")"
			out = append(out, p)
		}
	}
	return hardest(b.pushRoom(len(out)), out)
}
