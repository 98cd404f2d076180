package facts

import (
	"fmt"

	"lineworthy/catalog"
	"lineworthy/check/measure"
	"lineworthy/check/resolve"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

// regulated is what pushes behind a regulator: its set pressure, its lock-up, and its failure wide open. A regulator is
// not a protective device, and so a second one in series gets no credit against the first (ASME Section VIII Div. 1 UG-125(g) note, as reproduced in Wisconsin SPS 341 Appendix C; published).
func (b *builder) regulated(r *resolve.Run, i int, up []push) []push {
	p := r.Parts[i]
	out := b.pushRoom(len(up) + 2)
	if p.Sheet.Set.Set {
		set := p.Sheet.Set.V.Gauge(b.l.Ambient)
		rise, how := measure.DefaultLockUp, "the usual limit for its kind"
		if p.Sheet.LockUp.Set {
			rise, how = p.Sheet.LockUp.V, "its data sheet"
		}
		out = append(out,
			push{name: "duty", p: set, known: true, cause: p.ID + " at its set pressure", from: p.ID},
			push{name: "lock-up", p: measure.LockUp(set, rise), known: true, from: p.ID,
				cause: fmt.Sprintf("%s with the flow stopped, %.0f %% over set by %s", p.ID, float64(rise)*100, how)})
		b.lockUpRests(p)
	} else {
		out = append(out, push{name: "duty", from: p.ID, why: "the set pressure of " + p.ID + " is not stated", ask: "set of " + p.ID})
	}
	for _, u := range up {
		u.name, u.from, u.cause = "regulator-failed-open", p.ID, p.ID+" stuck open passes "+u.cause
		out = append(out, u)
	}
	return out
}

// pumped adds the pump's own shut-in pressure to what stands at its inlet.
func (b *builder) pumped(p *resolve.Part, up []push) []push {
	out := b.pushRoom(len(up))
	for _, u := range up {
		if failure(&u) {
			out = append(out, u) // passes through; it is not added to a shut outlet, which is another event
			continue
		}
		from := u.from
		u.name, u.from, u.cause = "pump-shut-in", p.ID, fmt.Sprintf("%s against a closed outlet on top of %s", p.ID, u.cause)
		if !p.Sheet.Shutoff.Set {
			u.known, u.why, u.ask = false, "the highest pressure of "+p.ID+" with its outlet closed is not stated", "shutoff of "+p.ID
		}
		u.p = max(u.p, 0) + p.Sheet.Shutoff.V.Gauge(b.l.Ambient)
		u.from = p.ID + from
		out = append(out, u)
	}
	return out
}

func (b *builder) regulators() {
	b.f.Regulators = []Regulator{}
	for _, r := range b.l.Runs {
		for i, p := range r.Parts {
			if p.Sheet.Kind.V == "regulator" {
				b.f.Regulators = append(b.f.Regulators, b.regulator(r, i, p))
			}
		}
	}
}

func (b *builder) regulator(r *resolve.Run, i int, p *resolve.Part) Regulator {
	out := Regulator{ID: p.ID, LockUpStated: p.Sheet.LockUp.Set, ReliefCounted: !b.device(r, i, i+1).none()}
	if top, ok := highest(b.at(r, i)); ok {
		out.SourceKPa = b.kpaUp(top.p)
	} else {
		b.unknown(p.ID, "regulators.source_kpa", top.why, top.ask)
	}
	out.InletRatedKPa = b.gauge(p.Sheet.InletRated)
	out.SetKPa = b.gauge(p.Sheet.Set)
	return out
}

// gauge is a stated pressure as a capacity, rounded down.
func (b *builder) gauge(o sheet.Of[units.Pressure]) Int {
	if !o.Set {
		return Int{}
	}
	return b.kpaDown(o.V.Gauge(b.l.Ambient))
}

// highest is the highest push, and whether all of them are known; if not, the first unknown one.
func highest(ps []push) (push, bool) {
	var top push
	for i, p := range ps {
		if !p.known {
			return p, false
		}
		if i == 0 || p.p > top.p {
			top = p
		}
	}
	return top, len(ps) > 0
}

// lockUpRests records how the rise at no flow is known.
func (b *builder) lockUpRests(p *resolve.Part) {
	what := "rise of " + p.ID + " above its set pressure with the flow stopped"
	if p.Sheet.LockUp.Set {
		b.rests(p.ID+" lock-up", what+", "+p.Sheet.LockUp.Text, stated(p.Sheet.Evidence.V), p.ID)
		return
	}
	b.rests("default lock-up", "rise above set with the flow stopped, 30 % where no data sheet says", catalog.Origin{Source: "iso-2503", Standing: catalog.Recalled}, p.ID)
}
