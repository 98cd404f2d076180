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
		p.joinsLive(r, s.Item)
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

// joinsLive finds a hose that is put on when the vessel behind its valve is under a pad already. Later, between two
// transfers, the pad may stay on.
func (p *play) joinsLive(r *run, hose string) {
	v := r.source
	if v == nil || !r.liquid || !v.padded || v.kpa <= v.own {
		return
	}
	for _, other := range p.runs {
		if other.source == v && other.moved {
			return
		}
	}
	p.fault(NotConnected, hose, fmt.Sprintf("%s is connected when %s is under %d kPa of gas already", hose, v.id, v.kpa))
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
	if held := r.heldBy(i); held != "" {
		p.fault(SourceLeft, name(r, r.devices[0]), name(r, r.devices[0])+" is still open when "+hose+" is taken off: only "+held+", backed off, holds it, which does not shut")
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
	if s.To != "" && s.To != toClosed && s.To != toOpen {
		return fmt.Errorf("%s: to: %q: write closed for an absorber or a closed vent, or open", s.Do, s.To)
	}
	if v := p.vessels[s.Item]; v != nil && s.Do == "vent" {
		p.leads(s, p.toxicVessel(v))
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
	} else if s.Do == "vent" {
		p.vented(s, r, r.cells[from:to+1])
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
