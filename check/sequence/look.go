package sequence

import "fmt"

// look goes through what must not be at any time.
func (p *play) look() {
	for _, r := range p.runs {
		p.spills(r)
		p.trapped(r)
		p.dead(r)
		p.dry(r)
		p.spillsBack(r)
		p.stale(r)
		unsure := r.source != nil && r.source.unsure
		if !unsure && r.reachesTarget && r.to != nil && !r.to.open && r.to.kpa > r.deliveredKPa && !r.checked() {
			p.fault(Backflow, r.key, fmt.Sprintf("%s holds %d kPa and only %d kPa comes from the source: it runs back", r.to.id, r.to.kpa, r.deliveredKPa))
		}
	}
}

func (r *run) checked() bool {
	for _, d := range r.devices {
		if d.kind == "check-valve" {
			return true
		}
	}
	return false
}

func (p *play) spills(r *run) {
	for i, c := range r.cells {
		if hose := r.parted(c); hose != "" && r.driven(i) {
			p.fault(NotConnected, hose, "the way from the source to "+hose+" is open, and "+hose+" is not connected")
		}
	}
}

// trapped finds liquid that no way, neither back to the source nor on to the destination, lets expand.
func (p *play) trapped(r *run) {
	for i, c := range r.cells {
		if !c.liquid || r.parted(c) != "" {
			continue
		}
		from, to := i, i
		for from > 0 && r.devices[from-1].passesBack() {
			from--
		}
		for to < len(r.devices) && r.devices[to].passes() {
			to++
		}
		if from == 0 || to == len(r.devices) || r.relieved(from, to) {
			continue
		}
		a, b := name(r, r.devices[from-1]), name(r, r.devices[to])
		p.fault(BlockedIn, a+" to "+b, "liquid is shut in between "+a+" and "+b+" with no relief device"+p.warmed(a, b))
	}
}

func (r *run) relieved(from, to int) bool {
	for _, c := range r.cells[from : to+1] {
		if c.relieved {
			return true
		}
	}
	return false
}

// warmed is what the facts say the shut-in stretch comes to.
func (p *play) warmed(a, b string) string {
	for _, s := range p.f.Sections {
		if s.From == a && s.To == b && s.BlockedKPa.Known {
			return fmt.Sprintf("; warmed to the highest temperature it reaches %d kPa", s.BlockedKPa.V)
		}
	}
	return ""
}

func (p *play) dead(r *run) {
	for i, c := range r.cells {
		for _, part := range c.parts {
			if !r.pumps[part.ID] {
				continue
			}
			to := i
			for to < len(r.devices) && r.devices[to].passes() {
				to++
			}
			if to < len(r.devices) {
				p.fault(DeadPump, part.ID, part.ID+" runs against "+name(r, r.devices[to])+", which is closed")
			}
		}
	}
}

// stale finds product that came to what was left of a flush.
func (p *play) stale(r *run) {
	for i, c := range r.cells {
		p.react(r, r.product, c.met)
		if c.mixed {
			p.fault(FlushLeft, r.key, "product comes into "+p.stretch(r, i)+", where the flush still stands")
		}
	}
}
