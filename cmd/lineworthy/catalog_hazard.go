package main

import (
	"math"
	"strings"

	"lineworthy/catalog"
)

func (p *page) hazards(f *catalog.Fluid) {
	h := f.Hazards
	p.section("Hazards (what is not listed is unknown, not absent)", func() {
		p.flag("flammable", h.Flammable)
		p.number1("flash point", h.FlashPointC, celsius)
		p.number1("lower flammable limit", h.LowerLimitPct, in("% of volume"))
		p.number1("upper flammable limit", h.UpperLimitPct, in("% of volume"))
		p.number1("ignites by itself at", h.AutoignitionC, celsius)
		p.flag("toxic", h.Toxic)
		p.flag("corrosive", h.Corrosive)
		p.flag("oxidiser", h.Oxidiser)
		p.flag("asphyxiant", h.Asphyxiant)
		p.flag("polymerises", h.Polymerises)
		p.flag("peroxide former", h.PeroxideFormer)
		p.flag("decomposes", h.Decomposes)
		p.list("reaction groups", h.Groups)
	})
	e := f.Electrical
	p.section("Static electricity", func() {
		p.text("conductivity class", e.Class)
		p.number1("conductivity", e.ConductivityPS, in("pS/m"))
		p.number1("relative permittivity", e.Permittivity, number)
	})
	if f.Hansen != nil {
		p.section("Solubility (Hansen, MPa^0.5)", func() {
			p.value("dispersion, polar, hydrogen", number(f.Hansen.D)+", "+number(f.Hansen.P)+", "+number(f.Hansen.H), f.Hansen.Origin)
		})
	}
}

func (p *page) list(label string, l *catalog.List) {
	if l != nil {
		p.value(label, strings.Join(l.Values, ", "), l.Origin)
	}
}

// round1 keeps one decimal, signif four digits: enough to read, no false precision.
func round1(v float64) float64 { return math.Round(v*10) / 10 }

func signif(v float64) float64 {
	if v == 0 {
		return 0
	}
	step := math.Pow(10, math.Floor(math.Log10(math.Abs(v)))-3)
	return math.Round(v/step) * step
}
