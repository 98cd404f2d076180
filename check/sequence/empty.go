package sequence

import "fmt"

// join connects or disconnects one hose.
func (p *play) join(s Step) error {
	r, i, ok := p.place(s.Item)
	if !ok {
		return p.unknown(s, "a hose", p.hoses())
	}
	if _, hose := r.hoses[s.Item]; !hose {
		return p.unknown(s, "a hose", p.hoses())
	}
	if s.Do == "connect" {
		p.bonds(r, s.Item)
	} else {
		p.parting(r, i, s.Item)
	}
	r.hoses[s.Item] = s.Do == "connect"
	if c := r.cells[i]; s.Do == "disconnect" {
		c.liquid, c.holds, c.kpa = false, "", 0
	}
	p.settle()
	p.look()
	return nil
}

func (p *play) hoses() (names []string) {
	for _, r := range p.line.Runs {
		for _, part := range r.Parts {
			if part.Sheet.Kind.V == "hose" {
				names = append(names, part.ID)
			}
		}
	}
	return names
}

func (p *play) bonds(r *run, hose string) {
	if r.to == nil || !r.liquid || !r.to.flammable {
		return
	}
	if !r.to.bonded || r.source != nil && !r.source.bonded {
		p.fault(ConnectedUnbound, hose, hose+" is connected before both vessels are bonded")
	}
}

func (p *play) parting(r *run, i int, hose string) {
	c := r.cells[i]
	from, to, source, target := r.joined(i)
	switch {
	case c.kpa > 0:
		p.fault(UnderPressure, hose, fmt.Sprintf("%s is under %d kPa", hose, c.kpa))
	case source && r.start() > 0, target && r.to != nil && r.to.kpa > 0:
		p.fault(UnderPressure, hose, hose+" stands open to a vessel under pressure")
	}
	for _, d := range r.devices[i:to] {
		if target && r.liquid && d.kind == "valve" {
			p.fault(OpenEnd, hose, d.id+", between "+hose+" and the destination, is still open")
		}
	}
	if r.unflushed(c) {
		p.fault(NotFlushed, hose, hose+" is taken off with "+p.fluidName(c.wet)+" on its walls; the sheet has it flushed with "+r.flushes[0].Cat.Name)
	}
	for _, x := range r.cells[from : to+1] {
		if x.liquid {
			p.fault(WithLiquid, hose, hose+" has not been drained")
			return
		}
	}
}

// empty vents or drains a vessel, or the stretch a part stands in with all that is open to it.
func (p *play) empty(s Step) error {
	if v := p.vessels[s.Item]; v != nil && s.Do == "vent" {
		p.ventVessel(v)
		return nil
	}
	r, i, ok := p.place(s.Item)
	if !ok {
		return p.unknown(s, "a part or vessel", append(p.vesselNames(), p.partNames()...))
	}
	from, to, source, target := r.joined(i)
	if source && r.driven(i) {
		p.fault(VentedLive, s.Item, s.Item+" is still open to its source")
	}
	for _, c := range r.cells[from : to+1] {
		if c.kpa, c.liquid = 0, c.liquid && s.Do == "vent" && !liquefied(r.r); !c.liquid {
			c.holds = ""
		}
	}
	if target && r.to != nil && s.Do == "vent" {
		p.ventVessel(r.to)
	}
	p.settle()
	p.look()
	return nil
}

func (p *play) partNames() (names []string) {
	for _, r := range p.line.Runs {
		for _, part := range r.Parts {
			names = append(names, part.ID)
		}
	}
	return names
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
