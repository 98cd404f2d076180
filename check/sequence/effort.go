package sequence

import (
	"fmt"

	"lineworthy/check/facts"
	"lineworthy/check/measure"
	"lineworthy/check/units"
)

// Effort is what a step takes, or the whole. What is not known is left out, and Says tells what is missing.
type Effort struct {
	Step      int    `json:"step,omitempty"` // 0 for the whole
	Run       string `json:"run,omitempty"`
	Minutes   *int64 `json:"minutes,omitempty"`            // at the planned flow, rounded up
	GasL      *int64 `json:"gas_l,omitempty"`              // free gas at 1 atm and 15 °C, rounded up
	Cylinders *int64 `json:"cylinders_permille,omitempty"` // of the run's own cylinder, rounded up
	Says      string `json:"says"`

	ofGas bool // tells that the gas is not known
}

// moves writes down the time of a quantity at the planned flow, where to stop, and the gas that takes its place.
func (p *play) moves(r *run, q float64, stop string) {
	e := Effort{Step: p.at, Run: r.key}
	flow := r.r.Sheet.Flow
	switch {
	case q == 0:
		e.Says = "time not known: no quantity is stated"
	case !flow.Set || flow.V == 0:
		e.Says = "time not known: runs." + r.key + ".flow is not stated"
	default:
		n, err := units.RoundUp(float64(measure.TransferTime(units.Volume(q), flow.V)) / 60)
		if err == nil {
			e.Minutes, e.Says = &n, fmt.Sprintf("about %d min at the planned flow; stop and look if it takes much longer", n)
		}
	}
	e.Says += stop
	p.effort(e)
	for _, g := range p.runs {
		if r.source != nil && g.to == r.source && !g.liquid && g.reachesTarget && g.deliveredKPa > 0 && q > 0 {
			p.follows(g, facts.PadUse{At: p.absolute(g.deliveredKPa), Space: units.Volume(q)}, "takes the place of the liquid")
		}
	}
}

// pressures are those of the closed vessels before a step.
func (p *play) pressures() map[*vessel]int64 {
	out := map[*vessel]int64{}
	for _, v := range p.vessels {
		out[v] = v.kpa
	}
	return out
}

// raised writes down the gas that brought a vessel up since.
func (p *play) raised(before map[*vessel]int64) {
	for _, g := range p.runs {
		v := g.to
		if g.liquid || v == nil || v.kpa <= before[v] || !g.reachesTarget {
			continue
		}
		what := fmt.Sprintf("brings %s from %d to %d kPa", v.id, before[v], v.kpa)
		if !v.levels {
			p.effort(Effort{Step: p.at, Run: g.key, ofGas: true, Says: "gas not known, which " + what + ": volume and filling of " + v.id + " are not stated"})
			continue
		}
		u := facts.PadUse{At: p.absolute(v.kpa), Before: p.absolute(before[v]), Space: units.Volume((1 - v.filled) * v.volumeM3)}
		p.follows(g, u, what)
	}
}

func (p *play) absolute(gaugeKPa int64) units.AbsolutePressure {
	return units.GaugePressure(1000 * gaugeKPa).Absolute(p.line.Ambient)
}

func (p *play) effort(e Effort) { p.out.Efforts = append(p.out.Efforts, e) }

// follows is the gas of a run that takes a space.
func (p *play) follows(g *run, u facts.PadUse, what string) {
	free, ok := u.Free(g.r)
	n, err := units.RoundUp(float64(free) * 1000)
	if !ok || err != nil {
		return
	}
	e := Effort{Step: p.at, Run: g.key, GasL: &n}
	if count, ok := facts.PadCylinders(g.r, u, p.line.Ambient); ok {
		if c, err := units.RoundUp(count * 1000); err == nil {
			e.Cylinders = &c
		}
	}
	e.Says = e.gas() + " " + what
	p.effort(e)
}

func (e Effort) gas() string {
	says := fmt.Sprintf("about %.2g m3 of free gas", float64(*e.GasL)/1000)
	if e.Cylinders != nil {
		says += fmt.Sprintf(" (%.2f of a cylinder)", float64(*e.Cylinders)/1000)
	}
	return says
}
