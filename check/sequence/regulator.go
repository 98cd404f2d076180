package sequence

import "fmt"

// calm are the regulators no source presses on, and which stand set above what is behind them.
func (r *run) calm() (out []int) {
	for i, d := range r.devices {
		if d.kind == "regulator" && !r.cells[i].live && r.cells[i+1].kpa < d.setKPa {
			out = append(out, i)
		}
	}
	return out
}

// struck finds those that the pressure of a cylinder, or any oxygen, came to all at once. A main is at a pressure that its
// regulator is left set for.
func (p *play) struck(r *run, calm []int) {
	if !r.oxygen && !r.cylinder() {
		return
	}
	for _, i := range calm {
		if d := r.devices[i]; r.cells[i].live && r.driven(i) {
			p.fault(SetEarly, d.id, fmt.Sprintf("%s stands at %d kPa when %d kPa come to it", d.id, d.setKPa, r.cells[i].kpa))
		}
	}
}

func (r *run) cylinder() bool { return r.r.Sheet.Source.Cylinder.Set }

// flowsFree says whether what passes a device meets nothing that stops it: a regulator does, whatever is open behind it.
func (r *run) flowsFree(i int) bool {
	for _, d := range r.devices[i+1:] {
		if d.kind == "regulator" {
			return false
		}
	}
	return r.reachesTarget && r.to != nil && r.to.open
}

// leftGas finds gas that stands shut in at the end where a hose or a regulator is taken off next.
func (p *play) leftGas(r *run) {
	for i, c := range r.cells {
		if _, _, _, target := r.joined(i); c.live || c.liquid || c.kpa == 0 || target || !r.takenOff(i) {
			continue
		}
		p.fault(GasLeft, p.stretch(r, i), fmt.Sprintf("%d kPa still stand in %s at the end", c.kpa, p.stretch(r, i)))
	}
}

func (r *run) takenOff(i int) bool {
	if r.hoseOf(i) != "" {
		return r.parted(r.cells[i]) == ""
	}
	if i == len(r.devices) {
		return false
	}
	d := r.devices[i]
	return r.cylinder() && d.kind == "regulator" && d.stated
}

// heldBy is the regulator that alone keeps an open source from a cell.
func (r *run) heldBy(i int) (regulator string) {
	for _, d := range r.devices[:i] {
		switch {
		case d.kind == "regulator" && !d.passes():
			regulator = d.id
		case !d.open:
			return ""
		}
	}
	return regulator
}
