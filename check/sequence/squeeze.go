package sequence

import "fmt"

// squeeze looks at the gas in a closed destination, which has to make room for what comes in: p1 V1 = p0 V0 at a steady
// temperature (Boyle; computed). The level must still be that before. Vapour of a liquefied gas turns to liquid instead.
func (p *play) squeeze(r *run, q float64) {
	v := r.to
	if v == nil || v.open || v.boils || q == 0 || !v.levels || p.relieves(v) || !r.reachesTarget {
		return
	}
	if v.unvented {
		p.open("whether the vent of " + v.id + " is open: write vessels." + v.id + ".vent in the sheet; in a closed vessel the pressure rises while it is filled")
		return
	}
	gas, air := (1-v.filled)*v.volumeM3, float64(p.line.Ambient)/1000
	drive, after := float64(r.deliveredKPa), (float64(v.kpa)+air)*gas/max(gas-q, 1e-9)-air
	if sure := r.source == nil || !r.source.unsure; sure && after > drive {
		room := gas * (1 - (float64(v.kpa)+air)/(drive+air))
		once := "once " + litres(room) + " came in"
		if room <= 0 {
			once = "from the start"
		}
		p.fault(Stalls, r.key, fmt.Sprintf("%s is closed: its gas holds up the %.0f kPa that drive the liquid %s", v.id, drive, once))
		after = drive
	}
	p.held(v, int64(after+0.5))
}

// relieves says whether gas can leave through a run that stands open from the vessel.
func (p *play) relieves(v *vessel) bool {
	for _, g := range p.runs {
		if !g.liquid && g.source == v && g.reachesTarget {
			return true
		}
	}
	return false
}

// held compares what the vessel comes to with what it may.
func (p *play) held(v *vessel, after int64) {
	if after <= v.kpa {
		return
	}
	v.kpa = after
	switch {
	case v.ratedKPa == 0 && v.reliefKPa == 0:
		p.open(fmt.Sprintf("what %s may hold: write vessels.%s.rated in the sheet; it is closed and comes to about %d kPa", v.id, v.id, after))
	case v.ratedKPa > 0 && after > v.ratedKPa:
		p.fault(Squeezed, v.id, fmt.Sprintf("%s is closed and comes to about %d kPa while it is filled; it is rated %d kPa", v.id, after, v.ratedKPa))
	case v.reliefKPa > 0 && after >= v.reliefKPa:
		p.fault(Squeezed, v.id, fmt.Sprintf("%s is closed and comes to about %d kPa while it is filled; its relief device opens at %d kPa", v.id, after, v.reliefKPa))
	}
}
