package sequence

import "fmt"

// The words of to for a vent: where it leads.
const (
	toClosed = "closed" // an absorber or a closed vent
	toOpen   = "open"
)

// vented looks at what comes out of a stretch that is vented.
func (p *play) vented(s Step, r *run, cells []*cell) {
	toxic := r.toxic && !r.liquid
	for _, c := range cells {
		if c.liquid && (c.kpa > 0 || liquefied(r.r)) {
			p.fault(VentsLiquid, s.Item, s.Item+" still holds "+p.fluidName(c.holds)+" when it is vented")
		}
		toxic = toxic || r.toxic && c.wet == r.product
	}
	p.leads(s, toxic)
}

// leads wants to know where a toxic gas goes.
func (p *play) leads(s Step, toxic bool) {
	switch {
	case !toxic || s.To == toClosed:
	case s.To == toOpen:
		p.fault(VentsToxic, s.Item, s.Item+" lets out what is toxic")
	default:
		p.open(fmt.Sprintf("where the vent of %s leads, which lets out what is toxic: write to: closed in step %d when it is an absorber or a closed vent", s.Item, p.at))
	}
}

// toxicVessel says whether a run that carries something toxic begins or ends there.
func (p *play) toxicVessel(v *vessel) bool {
	for _, r := range p.runs {
		if r.toxic && (r.to == v || r.source == v) {
			return true
		}
	}
	return false
}

func (p *play) ventVessel(v *vessel) {
	if v.open {
		return
	}
	if v.own > 0 {
		p.fault(VentedLive, v.id, fmt.Sprintf("%s has %d kPa by itself and cannot be vented empty: close a valve between", v.id, v.own))
	}
	for _, r := range p.runs {
		if r.to == v && r.reachesTarget && r.deliveredKPa > 0 {
			p.fault(VentedLive, v.id, v.id+" is vented while "+r.key+" still pushes into it")
		}
	}
	v.kpa = v.own
	for _, r := range p.runs { // gas runs that stand open to it empty with it
		if r.to == v {
			from, to, source, _ := r.joined(len(r.cells) - 1)
			for i := from; i <= to && !source; i++ {
				r.cells[i].kpa = v.own
			}
		}
	}
	p.settle()
	p.look()
}
