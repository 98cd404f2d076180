package main

import (
	"strings"

	"lineworthy/catalog"
)

func (p *page) fluid(f *catalog.Fluid) error {
	p.title(catalog.Fluids, f.ID, f.Name, f.Also)
	p.section("Identity", func() {
		p.plain("form", strings.ReplaceAll(f.Form, "-", " "))
		p.plain("formula", f.Formula)
		p.plain("chemical family", f.Family)
		p.plain("hose services", strings.Join(f.Services, ", "))
		p.text("CAS number", f.CAS)
		p.text("UN number", f.UN)
		p.strength("strength", f.Strength)
	})
	if err := p.properties(f); err != nil {
		return err
	}
	p.hazards(f)
	p.section("Pad gases that must not be used", func() { p.reasons(f.ForbidPads) })
	p.section("What it turns into and what then attacks", func() { p.reasons(f.Derived) })
	p.section("Cylinder outlets", func() {
		for _, o := range f.Outlets {
			p.value(o.Family, "number "+o.Number, o.Origin)
		}
	})
	p.section("Legal bars on materials", func() {
		for _, b := range f.Bars {
			p.told(b.Regime, barText(b)+": "+b.Why, b.Origin)
		}
	})
	return p.compatibility(f)
}

func barText(b catalog.Bar) string {
	if len(b.Only) > 0 {
		return "only " + strings.Join(b.Only, ", ")
	}
	return "nothing that contains " + strings.Join(b.Contains, ", ")
}

func (p *page) text(label string, t *catalog.Text) {
	if t != nil {
		p.value(label, t.Value, t.Origin)
	}
}

func (p *page) number1(label string, n *catalog.Number, unit func(float64) string) {
	if n != nil {
		p.value(label, unit(n.Value), n.Origin)
	}
}

func (p *page) flag(label string, f *catalog.Flag) {
	if f != nil {
		p.value(label, yes(f.Value), f.Origin)
	}
}

func (p *page) strength(label string, r *catalog.Range) {
	if r != nil {
		p.value(label, strengthText(r), r.Origin)
	}
}

func strengthText(r *catalog.Range) string {
	if r.From == r.To {
		return strings.TrimSpace(number(r.From) + " % " + r.Of)
	}
	return strings.TrimSpace(number(r.From) + " to " + number(r.To) + " % " + r.Of)
}

func (p *page) reasons(rs []catalog.Reason) {
	for _, r := range rs {
		p.told(strings.ReplaceAll(r.ID, "-", " "), r.Why, r.Origin)
	}
}
