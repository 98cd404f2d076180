package facts

import "lineworthy/check/resolve"

// ownCases are the situations that are not part of the transfer and stand alone: the steam that cleans the run, and its
// pressure test.
func (b *builder) ownCases(r *resolve.Run) {
	if f := cleaning(r); f != nil {
		p := b.steamPush(r, f)
		b.ownCase(r, p, b.hot(b.steamed(p, f)))
	}
	if r.Test != nil {
		t := push{name: "pressure-test", known: true, cause: "the pressure test with " + r.Test.Cat.Name, p: r.Sheet.Test.Pressure.V.Gauge(b.l.Ambient)}
		b.ownCase(r, t, b.hot(b.warm(r.Test)))
	}
}

func (b *builder) ownCase(r *resolve.Run, p push, hot Int) {
	c := Case{ID: r.Key + "/" + p.name + "/", Run: r.Key, Part: "destination", Case: p.name, Cause: p.cause, TempCK: hot}
	if len(r.Parts) > 0 {
		c.Part = r.Parts[0].ID
	}
	if p.known {
		c.KPa = b.kpaUp(p.p)
	} else {
		b.unknown(c.ID, "cases.pressure_kpa", p.why, p.ask)
	}
	b.f.Cases = append(b.f.Cases, c)
}

// met are the fluids that the materials of a run meet: those it carries, and what it is tested with.
func met(r *resolve.Run) []*resolve.Fluid {
	if r.Test == nil || carries(r, r.Test) {
		return r.Fluids
	}
	return append(r.Fluids[:len(r.Fluids):len(r.Fluids)], r.Test)
}
