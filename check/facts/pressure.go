package facts

import (
	"fmt"

	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

// push is one way the line can come under pressure: a named case, how high it goes, and what brings it about.
// An unknown push has no pressure, but says why and who can supply it.
type push struct {
	name  string
	p     units.GaugePressure
	known bool
	cause string
	why   string
	ask   string
	from  string // part behind which it holds
}

// passage is the pressure along one run: what pushes at the inlet of each part, and what is left at the far end.
type passage struct {
	in  [][]push // by part
	end []push
}

func (b *builder) allCases() {
	b.f.Cases = []Case{}
	for _, r := range b.l.Runs {
		b.passage(r)
		seen := map[string]bool{}
		for i := range r.Parts {
			b.report(r, b.stages[r].in[i], r.Parts[i].ID, seen)
		}
		b.report(r, b.stages[r].end, "destination", seen)
	}
}

// report lists each push once per run, at the first part it reaches.
func (b *builder) report(r *resolve.Run, ps []push, part string, seen map[string]bool) {
	for _, p := range ps {
		id := fmt.Sprintf("%s/%s/%s", r.Key, p.name, p.from)
		if seen[id] {
			continue
		}
		seen[id] = true
		c := Case{ID: id, Run: r.Key, Part: part, Case: p.name, Cause: p.cause, TempCK: b.hot(b.hottest(r))}
		if p.known {
			c.KPa = b.kpaUp(p.p)
		} else {
			b.unknown(id, "cases.pressure_kpa", p.why, p.ask)
		}
		b.f.Cases = append(b.f.Cases, c)
	}
}

// passage walks the run from its source; it is worked out once, and a line that feeds itself in a ring is cut there.
func (b *builder) passage(r *resolve.Run) *passage {
	if done := b.stages[r]; done != nil {
		return done
	}
	pass := &passage{}
	b.stages[r] = pass
	now := b.source(r)
	for i, p := range r.Parts {
		pass.in = append(pass.in, now)
		switch p.Sheet.Kind.V {
		case "regulator":
			now = b.regulated(r, i, now)
		case "pump":
			now = pumped(p, now)
		}
	}
	pass.end = now
	return pass
}

// at is what pushes on part i: a relief device that stays in open contact with the part limits a failed regulator.
func (b *builder) at(r *resolve.Run, i int) []push {
	return b.relieved(r, i, b.passage(r).in[i])
}

// behind is what pushes on the outlet side of part i.
func (b *builder) behind(r *resolve.Run, i int) []push {
	pass := b.passage(r)
	if i+1 < len(pass.in) {
		return b.relieved(r, i, pass.in[i+1])
	}
	return b.relieved(r, i, pass.end)
}

// hottest is the highest temperature the parts of a run can reach: of its fluids, and of the place.
func (b *builder) hottest(r *resolve.Run) *units.Temperature {
	var top *units.Temperature
	for _, f := range r.Fluids {
		if f.Hottest == nil {
			return nil
		}
		top = higher(top, f.Hottest)
	}
	if s := &b.l.Sheet.Site.Highest; s.Set {
		top = higher(top, &s.V)
	}
	return top
}

func (b *builder) coldest(r *resolve.Run) *units.Temperature {
	var low *units.Temperature
	for _, f := range r.Fluids {
		if f.Lowest == nil {
			return nil
		}
		low = lower(low, f.Lowest)
	}
	if s := &b.l.Sheet.Site.Lowest; s.Set {
		low = lower(low, &s.V)
	}
	return low
}

func higher(a, b *units.Temperature) *units.Temperature {
	if a == nil || *b > *a {
		return b
	}
	return a
}

func lower(a, b *units.Temperature) *units.Temperature {
	if a == nil || *b < *a {
		return b
	}
	return a
}
