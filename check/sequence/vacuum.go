package sequence

import "fmt"

// draw takes the quantity out of the source and looks at what takes its place.
func (p *play) draw(r *run, q float64) {
	v := r.source
	if v == nil {
		return
	}
	gas := (1 - v.filled) * v.volumeM3 // before
	if v.levels && q > 0 {
		if v.filled -= q / v.volumeM3; v.filled < -1e-9 {
			p.fault(RunDry, v.id, fmt.Sprintf("%s holds %s less than is taken out of it: gas blows through, or the pump runs dry", v.id, litres(-v.filled*v.volumeM3)))
			v.filled = 0
		} else if v.filled < 1e-9 && p.pushed(v) {
			p.fault(RunDry, v.id, v.id+" is emptied to the last: its outlet is bare, and what pushes blows through into the destination")
		}
	}
	if !v.levels && p.pushed(v) {
		p.open("what " + v.id + " holds: write vessels." + v.id + v.missing() + " in the sheet; once it is empty, what pushes blows through into the destination")
	}
	switch {
	case v.open || v.boils || v.unsure || p.fed(v):
	case v.unvented:
		p.open("whether the vent of " + v.id + " is open: write vessels." + v.id + ".vent in the sheet; a closed vessel that is emptied draws a vacuum")
	case v.own > 0:
		p.open("what keeps up the pressure of " + v.id + " while it is emptied: show in the sheet the run of gas that does")
	case !v.levels || q == 0:
		p.hollow(v)
	default:
		p.expand(r, v, gas, q)
	}
}

// pushed says whether a gas or vapour stands above the liquid that would follow it through the line.
func (p *play) pushed(v *vessel) bool { return !v.open && (v.kpa > 0 || v.unsure || p.fed(v)) }

// fed says whether gas follows from a run that stands open to the vessel.
func (p *play) fed(v *vessel) bool {
	for _, g := range p.runs {
		if !g.liquid && g.to == v && g.reachesTarget && g.deliveredKPa > 0 {
			return true
		}
	}
	return false
}

func (p *play) hollow(v *vessel) {
	if v.kpa > 0 {
		p.open(fmt.Sprintf("volume and filling of %s, or the quantity: whether the %d kPa shut in there last is not known", v.id, v.kpa))
		return
	}
	p.fault(Vacuum, v.id, v.id+" is emptied with its vent closed and no gas follows: it draws a vacuum")
}

// slackKPa is what a gauge would not show.
const slackKPa = 1

// expand is the gas above the liquid, which grows by what is taken out: p1 V1 = p0 V0 at a steady temperature (Boyle;
// computed). A vapour can hold it up a little; gravity alone pulls no harder than its head.
func (p *play) expand(r *run, v *vessel, gas, q float64) {
	air := float64(p.line.Ambient) / 1000
	after := (float64(v.kpa) + air) * gas / (gas + q)
	if !r.pumping() {
		after = max(after, air-float64(r.headKPa))
	}
	if after < air-slackKPa {
		p.fault(Vacuum, v.id, fmt.Sprintf("%s is closed and no gas follows the liquid: it falls to about %.0f kPa absolute, against %.0f kPa outside", v.id, after, air))
	}
	v.kpa = max(0, int64(after-air))
}

func (r *run) pumping() bool {
	for _, on := range r.pumps {
		if on {
			return true
		}
	}
	return false
}
