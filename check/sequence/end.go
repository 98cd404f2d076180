package sequence

import "fmt"

// end is what must not be left behind.
func (p *play) end() {
	for _, r := range p.runs {
		if !r.moved && r.liquid {
			p.out.Open = append(p.out.Open, "nothing is transferred through "+r.key+", so its level was not judged")
		}
		if len(r.devices) > 0 && r.devices[0].kind != "check-valve" && r.devices[0].passes() {
			p.fault(SourceLeft, name(r, r.devices[0]), name(r, r.devices[0])+" is still open at the end")
		}
		p.leftSet(r)
		p.leftGas(r)
		p.leftWet(r)
		p.shown(r)
	}
	for _, v := range p.line.Vessels {
		if x := p.vessels[v.Key]; x.padded && x.kpa > x.own {
			p.fault(PadLeft, x.id, fmt.Sprintf("%s is closed and still holds %d kPa of the gas pushed in", x.id, x.kpa))
		}
	}
}

func (p *play) leftSet(r *run) {
	for _, d := range r.devices {
		if d.kind == "regulator" && d.setKPa > 0 {
			p.fault(RegulatorLeft, d.id, fmt.Sprintf("%s still stands at %d kPa at the end", d.id, d.setKPa))
		}
	}
}

// leftWet finds hoses that stay on and were never flushed, on a run that the sheet flushes.
func (p *play) leftWet(r *run) {
	for _, c := range r.cells {
		for _, part := range c.parts {
			if on := r.hoses[part.ID]; on && r.unflushed(c) {
				p.fault(NotFlushed, part.ID, part.ID+" is left with "+p.fluidName(r.product)+" in it")
			}
		}
	}
}

// unflushed says whether the product was the last liquid in a stretch of a run that is to be flushed.
func (r *run) unflushed(c *cell) bool {
	return len(r.flushes) > 0 && r.moved && c.wet == r.product && c.blown == ""
}
