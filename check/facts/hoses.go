package facts

import (
	"slices"
	"strings"

	"lineworthy/catalog"
	"lineworthy/check/measure"
	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

func (b *builder) hoses() {
	hoses, services := 0, 0
	for _, r := range b.l.Runs {
		for _, p := range r.Parts {
			if p.Sheet.Kind.V == "hose" {
				hoses, services = hoses+1, services+len(r.Fluids)
			}
		}
	}
	b.f.Hoses, b.f.Services = make([]Hose, 0, hoses), make([]Service, 0, services)
	for _, r := range b.l.Runs {
		for _, p := range r.Parts {
			if p.Sheet.Kind.V == "hose" {
				b.f.Hoses = append(b.f.Hoses, b.hose(p))
				b.services(p)
			}
		}
	}
}

func (b *builder) hose(p *resolve.Part) Hose {
	h := Hose{ID: p.ID, Run: p.Run.Key, Medium: medium(p.Run), Defects: []string{}}
	if p.Hose != nil {
		h.Class = p.Hose.ID
	}
	b.carries(p.Run, &h)
	b.strength(p, &h)
	b.identity(p, &h)
	b.marks(p, &h)
	b.dates(p, &h)
	b.condition(p, &h)
	b.vacuum(p, &h)
	h.Retention, h.BandBarredBy = p.Sheet.Retention.V, b.bandBarred(p)
	h.BandBarred = h.BandBarredBy != ""
	h.TestKind = p.Sheet.TestKind.V
	if l := p.Sheet.Listed; l.Set {
		h.Listed = Yes(l.V != "none")
	}
	b.lowSide(p, &h)
	return h
}

// medium is the hardest thing the run carries, in the terms of burst ratios: liquefied gas, steam, gas, liquid, water.
func medium(r *resolve.Run) string {
	order := []string{"water", "liquid", "gas", "liquefied-gas", "steam"}
	worst := 0
	for _, f := range r.Fluids {
		m := "liquid"
		switch {
		case f.Cat.ID == "steam":
			m = "steam"
		case f.Cat.Form == "liquefied-gas" || f.Cat.Form == "cryogenic-liquid":
			m = "liquefied-gas"
		case isGas(f):
			m = "gas"
		case f.Props.ID == "water":
			m = "water"
		}
		worst = max(worst, slices.Index(order, m))
	}
	return order[worst]
}

func (b *builder) carries(r *resolve.Run, h *Hose) {
	h.Accumulator = Yes(false)
	for _, f := range r.Fluids {
		z := f.Cat.Hazards
		h.Flammable = h.Flammable || resolve.Yes(z.Flammable)
		h.Toxic = h.Toxic || resolve.Yes(z.Toxic)
		h.Ammonia = h.Ammonia || f.Cat.ID == "ammonia"
		h.LPG = h.LPG || slices.Contains(f.Services, "lpg")
		h.LiquefiedGas = h.LiquefiedGas || f.Cat.Form == "liquefied-gas"
		h.Gas = h.Gas || isGas(f)
		h.Oxygen = h.Oxygen || f.Props.ID == "oxygen"
		h.Accumulator = worse(h.Accumulator, b.accumulator(f))
	}
}

// worse joins two answers where yes is the bad one: yes beats unknown, unknown beats no.
func worse(a, c Bool) Bool {
	switch {
	case a.Known && a.V:
		return a
	case c.Known && c.V:
		return c
	case !a.Known || !c.Known:
		return Bool{}
	}
	return a
}

func (b *builder) strength(p *resolve.Part, h *Hose) {
	rated, why, ask := b.hoseRating(p, nil)
	if why != "" {
		b.unknown(p.ID, "hoses.rated_kpa", why, ask)
	} else {
		h.RatedKPa = b.kpaDown(rated)
	}
	if burst, known := b.burst(p, rated); known {
		h.BurstKPa = b.kpaDown(burst)
		if h.RatedKPa.Known && rated > 0 {
			h.RatioPermille = b.keep(units.RoundDown(measure.BurstRatio(burst, rated) * 1000))
		}
	}
	if p.Hose != nil && p.Hose.BurstRatio != nil {
		h.ClassRatio = b.keep(units.RoundDown(p.Hose.BurstRatio.Value * 1000))
	}
	h.TestedAtKPa = b.gauge(p.Sheet.TestedAt)
}

// burst is the stated burst pressure, else the class's figure, else its ratio times the rating; and whether it is known.
func (b *builder) burst(p *resolve.Part, rated units.GaugePressure) (units.GaugePressure, bool) {
	s, c := p.Sheet, p.Hose
	switch {
	case s.Burst.Set && (s.Evidence.Set || !classBurstBelow(c, rated, s.Burst.V.Gauge(b.l.Ambient))):
		b.rests(p.ID+" burst", "burst pressure of "+p.ID+", "+s.Burst.Text, stated(s.Evidence.V), p.ID)
		return s.Burst.V.Gauge(b.l.Ambient), true
	case c != nil && c.BurstBar != nil:
		b.rests(c.ID+" burst", "burst pressure of "+c.Name, c.BurstBar.Origin, p.ID)
		return units.GaugePressure(c.BurstBar.Value * 1e5), true
	case c != nil && c.BurstRatio != nil && rated > 0:
		b.rests(c.ID+" burst ratio", "burst ratio of "+c.Name, c.BurstRatio.Origin, p.ID)
		return units.GaugePressure(float64(rated) * c.BurstRatio.Value), true
	}
	return 0, false
}

// classBurstBelow says whether the class gives less than a figure no document stands behind.
func classBurstBelow(c *catalog.Hose, rated, burst units.GaugePressure) bool {
	switch {
	case c != nil && c.BurstBar != nil:
		return units.GaugePressure(c.BurstBar.Value*1e5) < burst
	case c != nil && c.BurstRatio != nil && rated > 0:
		return units.GaugePressure(float64(rated)*c.BurstRatio.Value) < burst
	}
	return false
}

func (b *builder) identity(p *resolve.Part, h *Hose) {
	s := p.Sheet
	h.AssignedStated = s.Assigned.Set
	if s.Assigned.Set && s.Tag.Set {
		h.TagMatches = Yes(strings.EqualFold(s.Assigned.V, s.Tag.V))
	}
	h.Readable = boolOf(s.Readable)
	if p.Hose != nil {
		h.EditionMatters, h.EditionStated = len(p.Hose.Earlier) > 0, s.Edition.Set
	}
	h.AlloyOnPaper = braidOnPaper(p)
}

// braidOnPaper says whether the reinforcement is an alloy braid that only papers tell from a lesser one.
func braidOnPaper(p *resolve.Part) bool {
	for _, l := range p.Layers {
		if l.Role == "reinforcement" && l.Material != nil && l.Material.ID == "BRAID-N10276" {
			return !p.Sheet.Layers.Verified.Set
		}
	}
	return false
}
