package sequence

// dry finds pumps that run while nothing comes from the source.
func (p *play) dry(r *run) {
	for i, c := range r.cells {
		for _, part := range c.parts {
			if r.pumps[part.ID] && !c.live {
				p.fault(DryPump, part.ID, part.ID+" runs while "+r.shutBefore(i)+" is closed")
			}
		}
	}
}

// shutBefore names what keeps the source from a cell.
func (r *run) shutBefore(i int) string {
	for i--; i > 0 && (r.devices[i].passes() || r.cells[i].live); i-- {
		if hose := r.parted(r.cells[i]); hose != "" {
			return "the way to " + hose
		}
	}
	return name(r, r.devices[max(i, 0)])
}

// spillsBack finds a valve at the destination that stands open to a hose that is off. A destination whose valve the sheet
// does not show is left to the step that disconnects.
func (p *play) spillsBack(r *run) {
	if r.to == nil || r.to.kpa == 0 && (!r.liquid || r.to.levels && r.to.filled == 0) {
		return
	}
	valve := ""
	for i := len(r.cells) - 1; i >= 0; i-- {
		if hose := r.parted(r.cells[i]); hose != "" {
			if valve != "" && !p.told(OpenEnd, hose) {
				p.fault(OpenBack, hose, valve+" stands open from "+r.to.id+" to "+hose+", which is not connected")
			}
			return
		}
		if i == 0 || !r.devices[i-1].passesBack() {
			return
		}
		if d := r.devices[i-1]; d.kind == "valve" {
			valve = d.id
		}
	}
}

func (p *play) told(name, item string) bool {
	for _, f := range p.out.Faults {
		if f.Name == name && f.Item == item {
			return true
		}
	}
	return false
}
