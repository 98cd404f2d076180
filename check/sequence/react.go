package sequence

import "fmt"

// react looks up in the facts what two fluids of the sheet do to each other where the one finds the other in the line.
func (p *play) react(r *run, there, comes string) {
	if there == "" || comes == "" || there == comes {
		return
	}
	for _, m := range p.f.Meetings {
		if m.ID != there+" and "+comes+" ("+m.Where+")" && m.ID != comes+" and "+there+" ("+m.Where+")" {
			continue
		}
		switch {
		case !m.Hazardous.Known:
			p.open("whether " + m.A + " and " + m.B + " react, which meet in " + r.key + ": ask the safety data sheets of both")
		case m.Hazardous.V:
			p.fault(FlushReacts, r.key, fmt.Sprintf("%s and %s meet in %s: %s", p.fluidName(there), p.fluidName(comes), r.key, m.Product))
		}
	}
}
