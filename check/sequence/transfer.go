package sequence

import (
	"fmt"

	"lineworthy/check/units"
)

func (p *play) transfer(s Step) error {
	r := p.liquidRun(s)
	if r == nil {
		return fmt.Errorf("transfer: name the run that moves liquid under the key run")
	}
	q, err := amount(s, r.quantityM3)
	if err != nil {
		return err
	}
	p.settle()
	for _, v := range []*vessel{r.source, r.to} {
		if v != nil && v.unfelt {
			p.open("the pressure that stands in " + v.id + " by itself: write " + p.felt(v) + " in the sheet")
		}
	}
	unsure := r.source != nil && r.source.unsure
	driven := r.start() > 0 || r.deliveredKPa > 0
	switch r.moved = true; {
	case unsure || r.reachesTarget && driven:
	case r.reachesTarget && r.headless():
		p.open("what drives the liquid through " + r.key + ": write runs." + r.key + ".source.head in the sheet, e.g. 1 m")
	default:
		p.fault(NoWay, r.key, "nothing can flow through "+r.key+" as the valves, pumps and pressures stand")
	}
	p.goesOn(r)
	p.moves(r, q, r.stopAt(q))
	p.draw(r, q)
	p.squeeze(r, q)
	p.fill(r, q, "runs."+r.key+".quantity")
	p.settle()
	p.look()
	return nil
}

// felt is what the sheet lacks for the vapour pressure of a vessel.
func (p *play) felt(v *vessel) string {
	for _, r := range p.runs {
		for _, u := range p.f.Unknowns {
			if (r.source == v || r.to == v) && u.Fact == "cases.pressure_kpa" && u.Subject == r.key+"/vapour-pressure/" {
				return u.Ask
			}
		}
	}
	return "vessels." + v.id + ".pressure"
}

// goesOn finds another run that liquid still flows through: its level rises with nobody counting.
func (p *play) goesOn(r *run) {
	for _, x := range p.runs {
		if x != r && x.liquid && x.moved && x.reachesTarget && (x.start() > 0 || x.deliveredKPa > 0) {
			p.fault(GoesOn, x.key, x.key+" still stands open from its source when the transfer through "+r.key+" begins")
		}
	}
}

// amount is the quantity of the step, or the one of the sheet; 0 when neither states it.
func amount(s Step, sheet float64) (float64, error) {
	if s.Quantity == "" {
		return sheet, nil
	}
	v, err := units.ParseVolume(s.Quantity)
	if err == nil && v == 0 {
		err = fmt.Errorf("%s: quantity: %q moves nothing: write how much, or leave it away", s.Do, s.Quantity)
	}
	return float64(v), err
}

// stopAt is the level in the destination that ends a transfer.
func (r *run) stopAt(q float64) string {
	if q == 0 || r.to == nil || !r.to.levels {
		return ""
	}
	return fmt.Sprintf("; stop at %.0f %% in %s", 100*(r.to.filled+q/r.to.volumeM3), r.to.id)
}

func (p *play) liquidRun(s Step) (found *run) {
	for _, r := range p.runs {
		if r.liquid && (s.Run == "" || s.Run == r.key) {
			if found != nil {
				return nil
			}
			found = r
		}
	}
	return found
}

// fill raises the level of the destination. The key is where the sheet would state the quantity.
func (p *play) fill(r *run, q float64, key string) {
	if q == 0 {
		p.open("how much goes through " + r.key + ": write " + key + " in the sheet, e.g. 900 L, or quantity in step " + fmt.Sprint(p.at) + "; without it the level reached is not known")
	}
	if r.to == nil {
		p.open("where " + r.key + " ends: without a vessel whether it overfills is not known")
		return
	}
	if !r.to.levels {
		p.open("the level in " + r.to.id + ": write vessels." + r.to.id + r.to.missing() + " in the sheet; without it whether it overfills is not known")
	}
	if q == 0 || !r.to.levels {
		return
	}
	r.to.filled += q / r.to.volumeM3
	if r.to.filled > r.to.allowed+1e-9 {
		p.fault(Overfill, r.to.id, fmt.Sprintf("%s would be %.0f %% full; %.0f %% is the most", r.to.id, 100*r.to.filled, 100*r.to.allowed))
	}
}
