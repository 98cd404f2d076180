package facts

import (
	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

// vesselItem judges a vessel against all that can push in it. One that is open to the air holds nothing.
func (b *builder) vesselItem(v *resolve.Vessel) {
	pushes := b.vesselPushes(v)
	if v.Sheet.Vent.V == "open" || len(pushes) == 0 {
		return
	}
	b.hold(b.shell(v), pushes, b.vesselHottest(v))
}

// shell is what the vessel itself holds.
func (b *builder) shell(v *resolve.Vessel) item {
	it := item{
		id: v.Key + " vessel", part: v.Key, what: "vessel",
		why: "the working pressure of " + v.Key + " is not stated", ask: "vessels." + v.Key + ".rated, from its nameplate",
	}
	if v.Sheet.Rated.Set {
		it.have, it.why = v.Sheet.Rated.V.Gauge(b.l.Ambient), ""
		b.rests(v.Key+" rated", "working pressure of "+v.Key+", "+v.Sheet.Rated.Text, stated(v.Sheet.Evidence.V), v.Key)
	}
	it.grants = v.Sheet.Relief != nil && (v.Sheet.Code.V == "ASME-VIII" || v.Sheet.Code.V == "PED")
	return it
}

// vesselHottest is the hottest of all runs that meet the vessel, nil when one of them is not known.
func (b *builder) vesselHottest(v *resolve.Vessel) (top *units.Temperature) {
	for _, r := range b.l.Runs {
		if r.Source != v && r.Target != v {
			continue
		}
		hot := b.hottest(r)
		if hot == nil {
			return nil
		}
		top = higher(top, hot)
	}
	return top
}

// vesselPushes are what runs deliver into the vessel and what its own liquid brings.
func (b *builder) vesselPushes(v *resolve.Vessel) []push {
	pushes := b.pushRoom(usualPushes)
	for _, r := range b.l.Runs {
		switch v {
		case r.Target:
			pushes = append(pushes, b.vesselRelieved(v, b.passage(r))...)
		case r.Source:
			if p, ok := b.heated(v, b.padPushes(v)); ok {
				pushes = append(pushes, p)
			}
			for _, f := range r.Fluids {
				if p := b.vapour(f); !isGas(f) && (p.known && p.p > 0 || p.why != "") {
					pushes = append(pushes, p)
				}
			}
		}
	}
	return pushes
}

// padPushes are what gas runs deliver into the vessel.
func (b *builder) padPushes(v *resolve.Vessel) []push {
	out := b.pushRoom(usualPushes)
	for _, r := range b.l.Runs {
		if r.Target == v && gasOnly(r) {
			out = append(out, b.vesselRelieved(v, b.passage(r))...)
		}
	}
	return out
}
