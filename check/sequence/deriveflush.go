package sequence

import (
	"math"

	"lineworthy/check/units"
)

// flushTimes is how often the volume of a stretch is sent through it (practice, no source).
const flushTimes = 3

// flush rinses a run from which the product has drained with each flush of the sheet. The flush goes to a drain where a
// valve can keep it out of the destination, else into it. It says whether that valve is closed now.
func (s *Sequence) flush(r *run) (closed bool) {
	hose := r.lastHose()
	if len(r.flushes) == 0 || hose < 1 {
		return false
	}
	to := ""
	if n := r.hands(); n > 1 && r.lastHand() >= hose {
		s.close(r, n-1)
		to = toDrain
	}
	for _, f := range r.flushes {
		step := Step{Do: "flush", Item: r.hoseOf(hose), Fluid: f.Key, Quantity: r.flushQuantity(hose, to), To: to, Text: r.flushEntry()}
		if isGas(f) {
			step.Quantity, step.Text = "", r.gasEntry()
		}
		s.add(step)
		s.add(Step{Do: "drain", Item: step.Item, Text: "let the flush run out the same way"})
	}
	return to == toDrain
}

// flushEntry says where the flush goes in, which a sheet has no place for.
func (r *run) flushEntry() string {
	return "let it in behind " + r.behind() + ", which stays closed; three times what the stretch holds is usual (practice)"
}

func (r *run) behind() string {
	if r.devices[0].kind != "source" {
		return r.devices[0].id
	}
	return r.sourceName()
}

func (r *run) gasEntry() string {
	text := "let it in slowly behind " + r.behind() + ", which stays closed, for as long as the sheet states, until nothing else comes out"
	if r.steams() {
		text += "; keep a vent open while it cools, for steam that condenses draws a vacuum"
	}
	return text
}

// lastHose is the last cell with a hose in it, -1 when there is none.
func (r *run) lastHose() int {
	for i := len(r.cells) - 1; i >= 0; i-- {
		if r.hoseOf(i) != "" {
			return i
		}
	}
	return -1
}

func (r *run) hoseOf(i int) string {
	for _, p := range r.cells[i].parts {
		if p.Sheet.Kind.V == "hose" {
			return p.ID
		}
	}
	return ""
}

// lastHand is the last device that a hand can turn.
func (r *run) lastHand() int {
	for i := len(r.devices) - 1; i >= 0; i-- {
		if k := r.devices[i].kind; k == "valve" || k == "source" {
			return i
		}
	}
	return -1
}

// flushQuantity is in whole litres; empty when the stretch cannot be measured.
func (r *run) flushQuantity(hose int, to string) string {
	last := len(r.cells) - 1
	if to == toDrain {
		last = r.lastHand()
	}
	m3, missing := r.content(min(1, hose), last)
	if missing != "" {
		return ""
	}
	return units.Volume(math.Ceil(m3*1000*flushTimes) / 1000).Format("L")
}
