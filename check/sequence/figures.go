package sequence

import (
	"cmp"
	"fmt"

	"lineworthy/check/units"
)

// Figure is one number of the job, in words.
type Figure struct {
	Run  string `json:"run"`
	What string `json:"what"`
	Says string `json:"says"`
}

// Figures are set pressures, quantity and levels of every run, as they stand before it is played.
func (m *Model) Figures() []Figure {
	out := []Figure{}
	for _, r := range m.runs {
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
		m.levels(r, add)
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

func (m *Model) levels(r *run, add func(what, says string)) {
	if r.to == nil || !r.to.levels {
		add("stop level", "not known: "+unknownLevel(r))
		return
	}
	most := (r.to.allowed - r.to.filled) * r.to.volumeM3
	if r.quantityM3 > 0 {
		add("stop level", fmt.Sprintf("%s from %.0f %% to %.0f %%", r.to.id, 100*r.to.filled, 100*(r.to.filled+r.quantityM3/r.to.volumeM3)))
	}
	add("stop in any case", fmt.Sprintf("%s at %.0f %% (practice; a lower legal filling comes first), reached after %s", r.to.id, 100*r.to.allowed, litres(max(0, most))))
	if s := r.source; s != nil && !s.levels {
		add("source", "not known: vessels."+s.id+s.missing()+" not stated in the sheet: stop before it is empty")
	}
	if s := r.source; s != nil && s.levels && r.quantityM3 > 0 {
		left := s.filled - r.quantityM3/s.volumeM3
		if left < 0 {
			add("source", fmt.Sprintf("%s holds less than the quantity: gas will blow through", s.id))
			return
		}
		add("source", fmt.Sprintf("%s from %.0f %% to %.0f %%", s.id, 100*s.filled, 100*left))
	}
}

func unknownLevel(r *run) string {
	if r.to == nil {
		return "the run ends in no vessel of the sheet"
	}
	return "vessels." + r.to.id + r.to.missing() + " not stated in the sheet"
}
