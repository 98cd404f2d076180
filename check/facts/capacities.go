package facts

import (
	"slices"

	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

// item is one thing that holds pressure: what it holds, or why that is not known.
type item struct {
	id, part, what string
	have           units.GaugePressure
	why, ask       string
	hose           bool
	grants         bool // a vessel with a relief device, whose code grants accumulation
	behind         bool // holds what the part lets through, not what stands at its inlet
}

func (b *builder) capacities() {
	b.f.Capacities = b.capacitySpace[:0]
	for _, r := range b.l.Runs {
		top := b.hottest(r)
		for i, p := range r.Parts {
			for _, it := range b.items(p) {
				if it.behind {
					b.hold(it, b.behind(r, i), top)
				} else {
					b.hold(it, b.at(r, i), top)
				}
			}
		}
		b.jointItems(r, top)
		b.steamOut(r)
	}
	for _, v := range b.l.Vessels {
		b.vesselItem(v)
	}
	b.f.Capacities, b.capacitySpace = cut(b.f.Capacities), b.f.Capacities
	for _, c := range b.f.Capacities {
		b.f.Line.Pressurised = b.f.Line.Pressurised || !c.DemandKPa.Known || c.DemandKPa.V > 0
	}
}

// failures are the pushes that an event of its own brings about. They are judged one by one and never added; all others
// are ordinary operation, of which the highest counts.
var failures = []string{"regulator-failed-open", "heated-vessel"}

// hold files the item against the highest push of each event, and once more where a push of the event is not known.
func (b *builder) hold(it item, pushes []push, top *units.Temperature) {
	b.holdEvent(&it, it.id, "", pushes, top)
	for _, event := range failures {
		if occurs(event, pushes) {
			b.holdEvent(&it, it.id+" in "+event, event, pushes, top)
		}
	}
}

func occurs(event string, pushes []push) bool {
	for i := range pushes { // a push is large, so none is copied to be looked at
		if pushes[i].name == event {
			return true
		}
	}
	return false
}

func failure(p *push) bool { return slices.Contains(failures, p.name) }

// of picks the pushes of one event: the highest that is known, and the last that is not. No event is ordinary operation.
func of(event string, pushes []push) (worst, missing *push) {
	for i := range pushes {
		switch p := &pushes[i]; {
		case event == "" && failure(p) || event != "" && p.name != event:
		case !p.known:
			missing = p
		case worst == nil || p.p > worst.p:
			worst = p
		}
	}
	return worst, missing
}

func (b *builder) holdEvent(it *item, id, event string, pushes []push, top *units.Temperature) {
	worst, missing := of(event, pushes)
	if worst != nil {
		c := b.capacity(it, id, top)
		c.Accumulates = it.grants && event != ""
		c.Case, c.DemandKPa = worst.name, b.kpaUp(max(worst.p, 0))
		b.f.Capacities = append(b.f.Capacities, c)
	}
	if missing != nil {
		c := b.capacity(it, id+", "+missing.name+" not known", top)
		c.Case = missing.name
		b.unknown(c.ID, "capacities.demand_kpa", missing.why, missing.ask)
		b.f.Capacities = append(b.f.Capacities, c)
	}
}

func (b *builder) capacity(it *item, id string, top *units.Temperature) Capacity {
	c := Capacity{ID: id, Part: it.part, What: it.what, Hose: it.hose, TempCK: b.hot(top)}
	switch {
	case top == nil:
		b.unknown(id, "capacities.rated_kpa", "how hot the part can get is not stated", "site.highest, or the highest temperature of each fluid")
	case it.why != "":
		b.unknown(id, "capacities.rated_kpa", it.why, it.ask)
	default:
		c.RatedKPa = b.kpaDown(it.have)
	}
	return c
}

// partItems are the body, the ends and, for a gauge, the range of one part.
func (b *builder) partItems(p *resolve.Part, top *units.Temperature) []item {
	from := len(b.itemSpace)
	t := units.Temperature(0)
	if top != nil {
		t = *top
	}
	switch p.Sheet.Kind.V {
	case "weight":
		return nil
	case "hose":
		it := item{id: p.ID + " hose", part: p.ID, what: "hose", hose: true}
		it.have, it.why, it.ask = b.hoseRating(p, &t)
		b.itemSpace = append(b.itemSpace, it)
	case "regulator", "pump": // rated is for the outlet side; a regulator's inlet has its own figure
		it := b.body(p)
		it.behind = true
		b.itemSpace = append(b.itemSpace, it)
	case "gauge":
		it := item{id: p.ID + " range", part: p.ID, what: "gauge", why: "the range of " + p.ID + " is not stated", ask: "range of " + p.ID}
		if p.Sheet.Range.Set {
			it.have, it.why = p.Sheet.Range.V.Gauge(b.l.Ambient), ""
		}
		b.itemSpace = append(b.itemSpace, it)
	default:
		b.itemSpace = append(b.itemSpace, b.body(p))
	}
	for _, e := range []*resolve.End{p.Inlet, p.Outlet} {
		if it, ok := b.endItem(e, t); ok {
			it.behind = e == p.Outlet
			b.itemSpace = append(b.itemSpace, it)
		}
	}
	return b.itemSpace[from:len(b.itemSpace):len(b.itemSpace)]
}

// body is the stamped rating of anything but a hose.
func (b *builder) body(p *resolve.Part) item {
	it := item{id: p.ID + " body", part: p.ID, what: "body"}
	if !p.Sheet.Rated.Set {
		it.why, it.ask = "the working pressure of "+p.ID+" is not stated", "rated of "+p.ID+", with evidence"
		return it
	}
	it.have = p.Sheet.Rated.V.Gauge(b.l.Ambient)
	b.rests(p.ID+" rated", "working pressure of "+p.ID+", "+p.Sheet.Rated.Text, stated(p.Sheet.Evidence.V), p.ID)
	return it
}
