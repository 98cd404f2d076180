package sequence

import (
	"cmp"
	"fmt"
	"slices"

	"lineworthy/check/units"
)

// Figure is one number of the job, in words.
type Figure struct {
	Run  string `json:"run"`
	What string `json:"what"`
	Says string `json:"says"`
}

// Figures are set pressures, quantity and levels of every run, in the order in which they are worked through, as they stand
// before the line is played.
func (m *Model) Figures() []Figure {
	out := []Figure{}
	gas, liquid := m.order()
	level := map[*vessel]float64{}
	for _, v := range m.vessels {
		level[v] = v.filled
	}
	for _, r := range slices.Concat(gas, liquid) {
		add := func(what, says string) { out = append(out, Figure{r.key, what, says}) }
		m.pressuresOf(r, add)
		if !r.liquid {
			continue
		}
		if r.quantityM3 > 0 {
			add("quantity", litres(r.quantityM3))
		} else {
			add("quantity", "not known: runs."+r.key+".quantity is not stated in the sheet")
		}
		m.levels(r, level, add)
	}
	return out
}

func (m *Model) pressuresOf(r *run, add func(what, says string)) {
	for _, p := range r.r.Parts {
		switch {
		case p.Sheet.Kind.V == "regulator":
			add("set pressure", p.ID+" at "+cmp.Or(m.setting(r, p.ID), "a pressure that is not stated in the sheet"))
		case p.Sheet.Shutoff.Set:
			add("pump", p.ID+": "+p.Sheet.Shutoff.Text+" against a closed outlet, at most")
		}
	}
}

func litres(m3 float64) string { return units.Volume(m3).Format("L") }

func (m *Model) levels(r *run, level map[*vessel]float64, add func(what, says string)) {
	if v := r.to; v == nil || !v.levels {
		add("stop level", "not known: "+unknownLevel(r))
	} else {
		before := level[v]
		level[v] += r.quantityM3 / v.volumeM3
		if r.quantityM3 > 0 {
			add("stop level", fmt.Sprintf("%s from %.0f %% to %.0f %%", v.id, 100*before, 100*level[v]))
		}
		most := (v.allowed - before) * v.volumeM3
		add("stop in any case", fmt.Sprintf("%s at %.0f %% (practice; a lower legal filling comes first), reached after %s", v.id, 100*v.allowed, litres(max(0, most))))
	}
	drawn(r, level, add)
}

// drawn is what stands in the source.
func drawn(r *run, level map[*vessel]float64, add func(what, says string)) {
	s := r.source
	switch {
	case s == nil:
	case !s.levels:
		add("source", "not known: vessels."+s.id+s.missing()+" not stated in the sheet: stop before it is empty")
	case r.quantityM3 > 0:
		before := level[s]
		if level[s] -= r.quantityM3 / s.volumeM3; level[s] < 0 {
			level[s] = 0
			add("source", fmt.Sprintf("%s holds less than the quantity: gas will blow through", s.id))
			return
		}
		add("source", fmt.Sprintf("%s from %.0f %% to %.0f %%", s.id, 100*before, 100*level[s]))
	}
}

func unknownLevel(r *run) string {
	if r.to == nil {
		return "the run ends in no vessel of the sheet"
	}
	return "vessels." + r.to.id + r.to.missing() + " not stated in the sheet"
}
