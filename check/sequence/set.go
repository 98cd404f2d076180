package sequence

import (
	"fmt"

	"lineworthy/check/units"
)

// set turns a regulator to a pressure, to that of the sheet when the step names none, or back off.
func (p *play) set(s Step, r *run, d *device) error {
	d.setKPa = 0
	switch s.Pressure {
	case "none":
	case "":
		if d.setKPa = d.sheetKPa; !d.stated {
			p.unset(r, d)
		}
	default:
		v, _, err := units.ParseGauge(s.Pressure)
		if err != nil {
			return fmt.Errorf("set %s: %w (none backs it off)", s.Item, err)
		}
		if v < 0 {
			return fmt.Errorf("set %s: %q is below zero, which no regulator can be set to (none backs it off)", s.Item, s.Pressure)
		}
		d.setKPa = kpa(v)
		if !d.stated {
			p.unset(r, d)
		} else if d.setKPa > d.sheetKPa {
			p.fault(SetTooHigh, d.id, fmt.Sprintf("%s is set to %d kPa; the sheet was judged with %d kPa", d.id, d.setKPa, d.sheetKPa))
		}
	}
	p.settle()
	return nil
}

// unset notes that nobody knows what the gas of the run may bring. What follows from that is not held against the sequence.
func (p *play) unset(r *run, d *device) {
	p.open("the set pressure of " + d.id + ": write set under " + d.id + " in the sheet, e.g. 3 bar(g), and have the line judged")
	if r.to != nil && d.setKPa == 0 {
		r.to.unsure = true
	}
}
