package facts

import "lineworthy/check/resolve"

// vesselItem judges a vessel against all that can push in it. One that is open to the air holds nothing.
func (b *builder) vesselItem(v *resolve.Vessel) {
	pushes, run := b.vesselPushes(v)
	if v.Sheet.Vent.V == "open" || len(pushes) == 0 {
		return
	}
	it := item{
		id: v.Key + " vessel", part: v.Key, what: "vessel",
		why: "the working pressure of " + v.Key + " is not stated", ask: "vessels." + v.Key + ".rated, from its nameplate",
	}
	if v.Sheet.Rated.Set {
		it.have, it.why = v.Sheet.Rated.V.Gauge(b.l.Ambient), ""
		b.rests(v.Key+" rated", "working pressure of "+v.Key+", "+v.Sheet.Rated.Text, stated(v.Sheet.Evidence.V), v.Key)
	}
	b.hold(it, pushes, b.hottest(run))
}

// vesselPushes are what runs deliver into the vessel and what its own liquid brings, and a run to take the temperature from.
func (b *builder) vesselPushes(v *resolve.Vessel) (pushes []push, run *resolve.Run) {
	for _, r := range b.l.Runs {
		switch v {
		case r.Target:
			pushes = append(pushes, b.vesselRelieved(v, b.passage(r))...)
		case r.Source:
			for _, f := range r.Fluids {
				if p := b.vapour(f); !isGas(f) && (p.known && p.p > 0 || p.why != "") {
					pushes = append(pushes, p)
				}
			}
		default:
			continue
		}
		run = r
	}
	return pushes, run
}
