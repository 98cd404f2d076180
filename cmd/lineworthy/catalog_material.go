package main

import (
	"strings"

	"lineworthy/catalog"
)

func (p *page) material(m *catalog.Material) error {
	p.title(catalog.Materials, m.ID, m.Name, m.Also)
	p.section("Limits of the material itself (a fluid may lower them)", func() {
		p.plain("family", m.Family)
		p.number1("lowest temperature", m.LowestC, celsius)
		p.number1("highest temperature", m.HighestC, celsius)
		p.number1("highest for a short time", m.Intermit, celsius)
		p.text("storage group, ISO 2230", m.Storage)
		p.text("flange material group", m.FlangeGroup)
	})
	p.section("What it is", func() {
		p.plain("contains", strings.Join(m.Contains, ", "))
		p.number1("highest copper content", m.CopperPct, in("%"))
		p.flag("conducts electricity", m.Conductive)
		p.flag("lets small molecules through", m.Permeable)
		p.plain("strong against", m.Strong)
		p.plain("weak against", m.Weak)
		p.plain("judged as", m.JudgedAs)
		p.plain("remark", m.Remark)
		if h := m.Hansen; h != nil {
			p.value("Hansen sphere, MPa^0.5", number(h.D)+", "+number(h.P)+", "+number(h.H)+", radius "+number(h.R), h.Origin)
		}
	})
	return nil
}
