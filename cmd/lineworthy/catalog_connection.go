package main

import (
	"fmt"
	"strings"

	"lineworthy/catalog"
)

func (p *page) connection(c *catalog.Connection) error {
	p.title(catalog.Connections, c.ID, c.Name, c.Also)
	p.section("Identity", func() {
		p.plain("standard", c.Standard)
		p.plain("kind", strings.ReplaceAll(c.Kind, "-", " "))
		p.plain("sized by", c.SizedBy)
		p.plain("sizes", strings.Join(c.Sizes, ", "))
		p.plain("halves", map[bool]string{true: "male and female", false: "two equal halves"}[c.Gendered])
		p.plain("hand", c.Hand)
		p.plain("rated by", c.ClassedBy)
		p.flag("needs locking", c.Locking)
		p.value("seal", sealText(c.Seals), c.Seals.Origin)
		p.span("temperature", c.Temperature)
	})
	p.section("Highest pressure, bar gauge", func() {
		for _, r := range c.Ratings {
			p.value(ratingFor(r), "", r.Origin)
			p.plain("", curve(r.Points, "bar"))
		}
	})
	p.mates(c)
	p.geometry(c)
	p.section("Not for", func() { p.exclusions(c.Excludes) })
	p.section("Cautions", func() { p.reasons(c.Cautions) })
	return nil
}

func sealText(n catalog.SealNeed) string {
	switch {
	case n.Required:
		return "needed: " + strings.Join(n.Kinds, ", ")
	case len(n.Kinds) > 0:
		return "may be: " + strings.Join(n.Kinds, ", ")
	}
	return "metal to metal"
}

// ratingFor says what a rating row is for.
func ratingFor(r catalog.EndRating) string {
	var parts []string
	if r.Class != "" {
		parts = append(parts, r.Class)
	}
	if r.Group != "" {
		parts = append(parts, "material group "+r.Group)
	}
	if len(r.Sizes) > 0 {
		parts = append(parts, "sizes "+strings.Join(r.Sizes, ", "))
	}
	parts = append(parts, r.Material...)
	if len(r.NotFor) > 0 {
		parts = append(parts, "not "+strings.Join(r.NotFor, ", "))
	}
	if len(parts) == 0 {
		return "all"
	}
	return strings.Join(parts, ", ")
}

// verdictWords say what comes of a pair of ends.
var verdictWords = map[string]string{"fits": "fits", "stop": "STOP, joins but must not be used", "no-fit": "does not join"}

func (p *page) mates(c *catalog.Connection) {
	p.section("What it joins (a pair that is not listed is unknown)", func() {
		for _, m := range c.Mates {
			p.told(m.With, verdictWords[m.Verdict]+": "+m.Why, m.Origin)
		}
	})
}

func (p *page) geometry(c *catalog.Connection) {
	p.section("Drilling", func() {
		for _, d := range c.Drilling {
			p.value(d.Size+" "+d.Class, fmt.Sprintf("%d holes of %s mm on a circle of %s mm, bolt %s", d.Holes, number(d.HoleMM), number(d.CircleMM), d.Bolt), d.Origin)
		}
	})
	p.section("Threads", func() {
		for _, t := range c.Threads {
			p.value(strings.TrimSpace(t.Size+" "+t.Class), threadText(t), t.Origin)
		}
	})
	p.section("Cylinder outlets", func() {
		for _, o := range c.Outlets {
			p.value("number "+o.Number, outletText(o), o.Origin)
		}
	})
}

func threadText(t catalog.Thread) string {
	text := t.Thread
	if t.MajorMM > 0 {
		text += ", major diameter " + number(t.MajorMM) + " mm"
	}
	if t.PitchMM > 0 {
		text += ", pitch " + number(t.PitchMM) + " mm"
	}
	if t.AngleDeg > 0 {
		text += ", flank angle " + number(t.AngleDeg) + " degrees"
	}
	if t.Hand != "" {
		text += ", " + t.Hand + " hand"
	}
	return text
}

func outletText(o catalog.OutletNumber) string {
	parts := []string{strings.Join(o.Fluids, ", ")}
	if o.MaxBar != nil {
		parts = append(parts, "to "+barGauge(*o.MaxBar))
	}
	for _, more := range []string{o.Thread, o.Hazard, o.Remarks} {
		if more != "" {
			parts = append(parts, more)
		}
	}
	if o.Hand != "" {
		parts = append(parts, o.Hand+" hand")
	}
	return strings.Join(parts, "; ")
}
