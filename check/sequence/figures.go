package sequence

import (
	"fmt"

	"lineworthy/check/facts"
	"lineworthy/check/units"
)

// Figure is one number of the job, in words.
type Figure struct {
	Run  string `json:"run"`
	What string `json:"what"`
	Says string `json:"says"`
}

const unknownTime = "not known: the sheet states no flow or no quantity"

// Figures are quantity, time, gas and levels of every run that moves liquid, as they stand before it is played.
func (m *Model) Figures() []Figure {
	out := []Figure{}
	for _, r := range m.runs {
		if !r.liquid {
			continue
		}
		add := func(what, says string) { out = append(out, Figure{r.key, what, says}) }
		if r.quantityM3 > 0 {
			add("quantity", litres(r.quantityM3))
		} else {
			add("quantity", "not stated in the sheet")
		}
		f := m.flow(r.key)
		add("expected time", minutes(f))
		m.levels(r, add)
		m.gas(r, f, add)
	}
	return out
}

func litres(m3 float64) string { return units.Volume(m3).Format("L") }

func (m *Model) flow(key string) facts.Flow {
	for _, f := range m.f.Flows {
		if f.ID == key {
			return f
		}
	}
	return facts.Flow{}
}

func minutes(f facts.Flow) string {
	if !f.Minutes.Known {
		return unknownTime
	}
	return fmt.Sprintf("about %d min at the planned flow; stop and look if it takes much longer", f.Minutes.V)
}

func (m *Model) levels(r *run, add func(what, says string)) {
	if r.to == nil || !r.to.levels {
		add("stop level", "not known: volume and filling of the destination are not stated")
		return
	}
	most := (r.to.allowed - r.to.filled) * r.to.volumeM3
	if r.quantityM3 > 0 {
		add("stop level", fmt.Sprintf("%s from %.0f %% to %.0f %%", r.to.id, 100*r.to.filled, 100*(r.to.filled+r.quantityM3/r.to.volumeM3)))
	}
	add("stop in any case", fmt.Sprintf("%s at %.0f %% (practice; a lower legal filling comes first), reached after %s", r.to.id, 100*r.to.allowed, litres(max(0, most))))
	if s := r.source; s != nil && s.levels && r.quantityM3 > 0 {
		left := s.filled - r.quantityM3/s.volumeM3
		if left < 0 {
			add("source", fmt.Sprintf("%s holds less than the quantity: gas will blow through", s.id))
			return
		}
		add("source", fmt.Sprintf("%s from %.0f %% to %.0f %%", s.id, 100*s.filled, 100*left))
	}
}

// atmosphereKPa is the standard one, for a volume of free gas.
const atmosphereKPa = 101.325

// gas is what takes the place of the liquid, as an ideal gas at the set pressure (computed).
func (m *Model) gas(r *run, f facts.Flow, add func(what, says string)) {
	for _, g := range m.runs {
		if g.liquid || g.to == nil || g.to != r.source || r.quantityM3 == 0 {
			continue
		}
		for _, d := range g.devices {
			if d.kind != "regulator" {
				continue
			}
			free := r.quantityM3 * (float64(d.sheetKPa) + atmosphereKPa) / atmosphereKPa
			says := fmt.Sprintf("about %.2g m3 of free gas through %s takes the place of the liquid", free, d.id)
			if f.CylindersPermille.Known {
				says += fmt.Sprintf(", %.2f cylinders", float64(f.CylindersPermille.V)/1000)
			}
			add("gas", says)
		}
	}
}
