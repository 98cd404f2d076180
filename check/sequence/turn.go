package sequence

import "fmt"

// turn opens, closes or sets one device and looks at what that does.
func (p *play) turn(s Step) error {
	kinds := []string{"valve", "source"}
	if s.Do == "set" {
		kinds = []string{"regulator"}
	}
	r, i, err := p.device(s, kinds...)
	if err != nil {
		return err
	}
	d := r.devices[i]
	switch s.Do {
	case "open":
		calm := r.calm()
		d.open = true
		p.settle()
		p.struck(r, calm)
		p.opened(s, r, i)
	case "close":
		p.closing(r, i)
		d.open = false
		p.settle()
	default:
		if err := p.set(s, r, d); err != nil {
			return err
		}
	}
	p.look()
	return nil
}

// driven says whether anything at all comes to the cell from the source.
func (r *run) driven(i int) bool { return r.cells[i].live && (r.cells[i].kpa > 0 || r.cells[i].liquid) }

func (p *play) opened(s Step, r *run, i int) {
	d := r.devices[i]
	if !r.driven(i) {
		return
	}
	if r.oxygen && !s.Slowly && r.cells[i].kpa > 0 && !r.flowsFree(i) {
		p.fault(QuickOxygen, name(r, d), fmt.Sprintf("%s lets %s at %d kPa into a stretch that is closed at its end, and the step does not say slowly", name(r, d), p.fluidName(r.product), r.cells[i].kpa))
	}
	for _, next := range r.devices[i+1:] {
		if next.kind == "regulator" && !next.passes() {
			return // that is how a cylinder is opened: the regulator backed off
		}
		if next.kind == "valve" && !next.open {
			p.fault(ReverseOrder, name(r, d), name(r, d)+" is opened towards "+next.id+", which is still closed")
			return
		}
	}
}

func (p *play) closing(r *run, i int) {
	if r.devices[i].kind != "valve" || !r.driven(i) {
		return
	}
	for _, before := range r.devices[:i] {
		if before.kind == "valve" || before.kind == "source" {
			p.fault(ReverseOrder, r.devices[i].id, r.devices[i].id+" is closed while "+name(r, before)+", nearer to the source, is still open")
			return
		}
	}
}

func name(r *run, d *device) string {
	if d.kind == "source" {
		return "the source of " + r.key
	}
	return d.id
}

func (p *play) pump(s Step) error {
	var names []string
	for _, r := range p.runs {
		if _, ok := r.pumps[s.Item]; ok {
			r.pumps[s.Item] = s.Do == "start"
			p.settle()
			p.look()
			return nil
		}
		for _, part := range r.r.Parts {
			if part.Sheet.Kind.V == "pump" {
				names = append(names, part.ID)
			}
		}
	}
	return p.unknown(s, "a pump", names)
}
