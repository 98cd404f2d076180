package facts

import (
	"slices"

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
	run *resolve.Run
	in  [][]push // by part
	end []push
}

func (b *builder) allCases() {
	b.f.Cases = make([]Case, 0, 8)
	for _, r := range b.l.Runs {
		b.passage(r)
		clear(b.told)
		for i := range r.Parts {
			b.report(r, b.stages[r].in[i], r.Parts[i].ID)
		}
		b.report(r, b.stages[r].end, "destination")
		b.report(r, b.back(r), "destination")
		b.ownCases(r)
	}
	b.settled = true
}

// report lists each push once per run, at the first part it reaches; of several of one name the highest, or an unknown one.
func (b *builder) report(r *resolve.Run, ps []push, part string) {
	ps = hardest(b.pushRoom(len(ps)), ps)
	slices.SortStableFunc(ps, func(x, y push) int { return unknownFirst(x) - unknownFirst(y) })
	for _, p := range ps {
		text := b.join(r.Key, "/", p.name, "/", p.from)
		if b.told[string(text)] {
			continue
		}
		id := string(text)
		b.told[id] = true
		c := Case{ID: id, Run: r.Key, Part: part, Case: p.name, Cause: p.cause, TempCK: b.hot(b.hottest(r))}
		if p.known {
			c.KPa = b.kpaUp(p.p)
		} else {
			b.unknown(id, "cases.pressure_kpa", p.why, p.ask)
		}
		b.f.Cases = append(b.f.Cases, c)
	}
}

// walk follows the run from its source. What a relief device leaves of a failure is all that the next regulator or pump
// can pass on.
func (b *builder) walk(r *resolve.Run) *passage {
	pass := &passage{run: r, in: make([][]push, 0, len(r.Parts))}
	now := b.source(r)
	for i, p := range r.Parts {
		pass.in = append(pass.in, now)
		switch p.Sheet.Kind.V {
		case "regulator":
			now = b.regulated(r, i, b.relieved(r, i, now))
		case "pump":
			now = b.pumped(p, b.relieved(r, i, now))
		}
	}
	pass.end = now
	return pass
}

// spot is a place in a run: before part at, behind it, or at the far end.
type spot struct {
	r      *resolve.Run
	at     int
	behind bool
}

// settle works out what pushes on a spot once; while the passages are still being walked nothing is kept.
func (b *builder) settle(s spot, work func() []push) []push {
	if got, ok := b.spots[s]; ok {
		return got
	}
	got := work()
	if b.settled {
		b.spots[s] = got
	}
	return got
}

// at is what pushes on part i, from the source and back from the far end: a relief device that stays in open contact
// with the part limits a failed regulator. The result is shared and must not be changed.
func (b *builder) at(r *resolve.Run, i int) []push {
	return b.settle(spot{r, i, false}, func() []push {
		return append(b.relieved(r, i, b.passage(r).in[i]), b.back(r)...)
	})
}

// behind is what pushes on the outlet side of part i.
func (b *builder) behind(r *resolve.Run, i int) []push {
	pass := b.passage(r)
	if i+1 >= len(pass.in) {
		return b.arriving(r)
	}
	return b.settle(spot{r, i, true}, func() []push {
		return append(b.relieved(r, i, pass.in[i+1]), b.back(r)...)
	})
}

// arriving is what pushes on the far end of the run.
func (b *builder) arriving(r *resolve.Run) []push {
	return b.settle(spot{r, len(r.Parts), true}, func() []push {
		return append(b.relieved(r, len(r.Parts), b.passage(r).end), b.back(r)...)
	})
}

// hottest is the highest temperature the parts of a run can reach in use: of its fluids, and of the place. Steam that only
// cleans the run is a case of its own.
func (b *builder) hottest(r *resolve.Run) *units.Temperature {
	var top *units.Temperature
	steam := cleaning(r)
	for _, f := range r.Fluids {
		if f == steam {
			continue
		}
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

// everHottest is the hottest of all, the steam that cleans the run included.
func (b *builder) everHottest(r *resolve.Run) *units.Temperature {
	top := b.hottest(r)
	f := cleaning(r)
	if f == nil || top == nil {
		return top
	}
	if f.Hottest == nil {
		return nil
	}
	return higher(top, f.Hottest)
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

func unknownFirst(p push) int {
	if p.known {
		return 1
	}
	return 0
}

// usualPushes is room enough for what meets in the vessels of most lines; a list may grow beyond.
const usualPushes = 8

// pushRoom is an empty list with room for n pushes, out of one space for the whole line: pushes are many and end with it.
func (b *builder) pushRoom(n int) []push {
	from := len(b.pushSpace)
	if from+n > cap(b.pushSpace) {
		b.pushSpace, from = make([]push, 0, max(n, 2*cap(b.pushSpace), 32)), 0
	}
	b.pushSpace = b.pushSpace[:from+n]
	return b.pushSpace[from : from : from+n]
}

// hardest adds to out, of all pushes with one name and origin, the highest and one that is not known.
func hardest(out, ps []push) []push {
	for _, p := range ps {
		i := slices.IndexFunc(out, func(o push) bool { return o.name == p.name && o.from == p.from && o.known == p.known })
		switch {
		case i < 0:
			out = append(out, p)
		case p.known && p.p > out[i].p:
			out[i] = p
		}
	}
	return out
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

// first is what pushes at the start of the run.
func (p *passage) first() []push {
	if len(p.in) > 0 {
		return p.in[0]
	}
	return p.end
}
