package main

import (
	"fmt"
	"slices"
	"strings"

	"lineworthy/catalog"
)

// families are the groups of the compatibility table, in the order of the fluid files.
var families = []struct{ family, heading string }{
	{"elastomer", "Rubbers"}, {"plastic", "Plastics"}, {"metal", "Metals"}, {"gasket", "Gasket materials"},
	{"reinforcement", "Reinforcements behind a liner"},
}

// compatibility is the table of materials, grouped by family.
func (p *page) compatibility(f *catalog.Fluid) error {
	rows, err := f.AllRows()
	if err != nil {
		return err
	}
	by := map[string][]catalog.Row{}
	for _, r := range rows {
		m, err := p.cat.Material(r.Material)
		if err != nil {
			return err
		}
		by[m.Family] = append(by[m.Family], r)
	}
	if len(rows) > 0 {
		p.section("Compatibility (a material that is not listed is unknown)", func() {
			p.plain("by family", "the row was set for the whole chemical family, not for this fluid alone")
		})
	}
	for _, g := range families {
		p.section(g.heading, func() { p.group(by[g.family]) })
	}
	return nil
}

func (p *page) group(rows []catalog.Row) {
	strengths := slices.ContainsFunc(rows, func(r catalog.Row) bool { return r.Strength != nil })
	if len(rows) > 0 {
		p.cells(strengths, "material", "rating", "temperature", "strength", "how known", "effect")
	}
	for _, r := range rows {
		strength := ""
		if r.Strength != nil {
			strength = strengthText(r.Strength)
		}
		p.cells(strengths, r.Material, r.Rating, reach(r), strength, p.known(r.Origin), effect(r))
	}
}

// cells leaves the column of strengths out where no row has one.
func (p *page) cells(strengths bool, cells ...string) {
	if !strengths {
		cells = slices.Delete(cells, 3, 4)
	}
	fmt.Fprintf(p.tab, "  %s\n", strings.Join(cells, "\t"))
}

func effect(r catalog.Row) string {
	parts := slices.DeleteFunc([]string{r.Effect, r.Note}, func(s string) bool { return s == "" })
	if r.Family {
		parts = append(parts, "by family")
	}
	return strings.Join(parts, "; ")
}

// reach is the span of temperature a row speaks for.
func reach(r catalog.Row) string {
	if r.FromC != 0 {
		return number(r.FromC) + " to " + celsius(r.ToC)
	}
	return "to " + celsius(r.ToC)
}
