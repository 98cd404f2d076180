package main

import (
	"slices"
	"strings"

	"lineworthy/catalog"
)

func (p *page) hose(h *catalog.Hose) error {
	p.title(catalog.Hoses, h.ID, h.Name, h.Also)
	p.section("Identity", func() {
		p.plain("standard", h.Standard)
		p.plain("type or class", h.Class)
		p.text("edition", h.Edition)
		p.list("marked on the hose", h.Marks)
	})
	p.section("Pressure and temperature", func() {
		p.rating("highest working pressure", h.Rating)
		for _, e := range h.Earlier {
			p.value("earlier edition "+e.Edition, "", e.Origin)
			p.rating("  working pressure then", e.Rating)
		}
		p.number1("proof over working pressure", h.ProofRatio, number)
		p.number1("burst over working pressure", h.BurstRatio, number)
		p.number1("burst pressure", h.BurstBar, barGauge)
		p.span("fluid temperature", h.Temperature)
		p.derating(h.Derating)
		p.bySize("vacuum", h.Vacuum, "bar gauge")
		p.bySize("length change under pressure", h.LengthPct, "%")
	})
	p.section("Build", func() {
		p.bySize(strings.TrimSpace("smallest bend radius "+h.BendTo), h.Bend, "mm")
		p.list("electrical grades", h.Electrical)
		for _, l := range h.Layers {
			p.value(l.Role, oneOf(l.Materials), l.Origin)
		}
	})
	p.hoseUse(h)
	return nil
}

func (p *page) hoseUse(h *catalog.Hose) {
	p.section("Use", func() {
		p.list("made for", h.For)
		p.exclusions(h.NotFor)
		p.number1("test every", h.TestMonths, in("months"))
		p.number1("service life", h.LifeYears, in("years"))
		p.number1("shelf life", h.ShelfYears, in("years"))
	})
	p.section("Cautions", func() { p.reasons(h.Cautions) })
}

func (p *page) exclusions(list []catalog.Exclusion) {
	for _, e := range list {
		p.told("not for "+e.Service, e.Why, e.Origin)
	}
}

func oneOf(ids []string) string {
	if len(ids) == 1 {
		return ids[0]
	}
	return "one of " + strings.Join(ids, ", ")
}

func (p *page) rating(label string, r *catalog.Rating) {
	switch {
	case r == nil:
	case r.MakerStates:
		p.value(label, "as marked by the maker", r.Origin)
	case len(r.Sizes) == 0:
		p.value(label, barGauge(r.Bar)+", all sizes", r.Origin)
	default:
		p.value(label, "by size", r.Origin)
		for _, s := range r.Sizes {
			burst := ""
			if s.Burst > 0 {
				burst = ", bursts above " + barGauge(s.Burst)
			}
			p.plain("  "+s.Size, barGauge(s.Bar)+burst)
		}
	}
}

func (p *page) span(label string, s *catalog.Span) {
	if s == nil {
		return
	}
	low, high := "not said", "not said"
	if s.LowestC != nil {
		low = celsius(*s.LowestC)
	}
	if s.HighestC != nil {
		high = celsius(*s.HighestC)
	}
	p.value(label, "lowest "+low+", highest "+high, s.Origin)
}

func (p *page) bySize(label string, b *catalog.BySize, unit string) {
	if b == nil {
		return
	}
	if b.All != nil {
		p.value(label, number(*b.All)+" "+unit+", all sizes", b.Origin)
		return
	}
	p.value(label, "by size", b.Origin)
	for _, s := range b.Sizes {
		p.plain("  "+s.Size, number(s.Value)+" "+unit)
	}
}

func (p *page) derating(d *catalog.Derating) {
	if d == nil {
		return
	}
	p.value("factor on the pressure", "by temperature", d.Origin)
	p.plain("  all", curve(d.Points, ""))
	var ids []string
	for id := range d.ByMaterial {
		ids = append(ids, id)
	}
	slices.Sort(ids)
	for _, id := range ids {
		p.plain("  "+id, curve(d.ByMaterial[id], ""))
	}
	if d.ColdC != nil {
		p.plain("  flat down to", celsius(*d.ColdC))
	}
}

// curve prints a table of values against temperature on one line.
func curve(points []catalog.Point, unit string) string {
	var parts []string
	for _, pt := range points {
		parts = append(parts, strings.TrimSpace(number(pt.Value)+" "+unit)+" at "+celsius(pt.C))
	}
	return strings.Join(parts, ", ")
}
