package main

import (
	"fmt"
	"strings"

	"lineworthy/catalog"
)

func (p *page) seal(s *catalog.Seal) error {
	p.title(catalog.Seals, s.ID, s.Name, s.Also)
	p.section("Limits", func() {
		p.plain("kind", strings.ReplaceAll(s.Kind, "-", " "))
		p.number1("lowest temperature", s.LowestC, celsius)
		p.number1("highest temperature", s.HighestC, celsius)
		p.number1("highest pressure", s.HighestBar, barGauge)
		p.number1("pressure times temperature", s.PressTimesT, in("bar gauge times °C at most"))
		p.flag("used once only", s.SingleUse)
		p.plain("may be made of", strings.Join(s.Materials, ", "))
	})
	p.section("Cautions", func() { p.reasons(s.Cautions) })
	return nil
}

func (p *page) source(s *catalog.Source) error {
	p.title(catalog.Sources, s.ID, s.Document, nil)
	p.section("Document", func() {
		p.plain("edition", s.Edition)
		p.plain("how it was reached", viaWords[s.Via])
		p.plain("remark", s.Remark)
		p.plain("to be looked up", s.Check)
	})
	return nil
}

func (p *page) table(t *catalog.Table) error {
	p.title(tableKind, t.ID, t.Title, nil)
	p.section("Rows", func() {
		fmt.Fprintf(p.tab, "  %s\thow known\n", strings.ReplaceAll(strings.Join(t.Columns, "\t"), "_", " "))
		for _, r := range t.Rows {
			fmt.Fprintf(p.tab, "  %s\t%s\n", strings.Join(r.Cells, "\t"), p.known(r.Origin))
		}
	})
	return nil
}
