package facts

import (
	"slices"

	"lineworthy/check/measure"
	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

// trapping are the kinds of part that can shut liquid in, check valves and couplings that close when parted among them.
var trapping = []string{"valve", "check-valve", "excess-flow", "breakaway", "coupling", "nozzle"}

// sections are the stretches of liquid runs between two devices that can close.
func (b *builder) sections() {
	b.f.Sections = []Section{}
	for _, r := range b.l.Runs {
		if gasOnly(r) {
			continue
		}
		last := -1
		for i, p := range r.Parts {
			if !slices.Contains(trapping, p.Sheet.Kind.V) {
				continue
			}
			if last >= 0 && i > last+1 {
				b.f.Sections = append(b.f.Sections, b.section(r, last, i))
			}
			last = i
		}
	}
}

func (b *builder) section(r *resolve.Run, from, to int) Section {
	s := Section{
		ID: r.Parts[from].ID + " to " + r.Parts[to].ID, Run: r.Key, From: r.Parts[from].ID, To: r.Parts[to].ID,
		Liquid: true, Drained: r.Sheet.Drained.V, HottestCK: b.hot(b.warmest(r, false)), FilledCK: b.cold(b.coldest(r)),
	}
	s.Warmed = !s.FilledCK.Known || !s.HottestCK.Known || s.HottestCK.V > s.FilledCK.V
	for _, f := range liquids(r) {
		s.Ammonia = s.Ammonia || f.Cat.ID == "ammonia"
		s.LPG = s.LPG || slices.Contains(f.Services, "lpg")
	}
	for _, p := range r.Parts[from+1 : to] {
		s.Hose = s.Hose || p.Sheet.Kind.V == "hose"
		if p.Sheet.Kind.V == "relief" {
			s.Relieved, s.ReliefKPa = true, b.demand(p)
		}
	}
	if low, ok := b.weakest(r.Parts[from : to+1]); ok {
		s.WeakestKPa, s.Weakest = b.kpaDown(low.have), low.id
	}
	if !s.Relieved {
		b.blockedIn(r, &s)
	}
	return s
}

// demand is a set pressure as something that must be held, rounded up.
func (b *builder) demand(p *resolve.Part) Int {
	if !p.Sheet.Set.Set {
		return Int{}
	}
	return b.kpaUp(p.Sheet.Set.V.Gauge(b.l.Ambient))
}

// blockedIn is the highest pressure any liquid of the run can bring a full section to. A hose counts as rigid: its give is
// rarely measured.
func (b *builder) blockedIn(r *resolve.Run, s *Section) {
	start, ok := steady(b.passage(r).first())
	hot, cold := b.warmest(r, false), b.coldest(r)
	if !ok || hot == nil || cold == nil {
		b.unknown(s.ID, "sections.blocked_kpa", "the pressure or the temperatures of the run are not known", "the source, and the lowest and highest temperature")
		return
	}
	var worst units.GaugePressure
	for _, f := range liquids(r) {
		l, ok := liquid(f)
		if !ok {
			b.unknown(s.ID, "sections.blocked_kpa", "the catalog does not hold how far "+f.Cat.Name+" expands and gives way", "a relief device in the section, or the liquid's expansion and compressibility")
			return
		}
		p, err := measure.BlockedIn(l, measure.Container{}, start.Absolute(b.l.Ambient), *cold, *hot)
		if err != nil {
			b.unknown(s.ID, "sections.blocked_kpa", err.Error(), "a relief device in the section")
			return
		}
		worst = max(worst, p.Gauge(b.l.Ambient))
	}
	s.BlockedKPa = b.kpaUp(worst)
}
