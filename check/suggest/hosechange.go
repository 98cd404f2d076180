package suggest

import (
	"fmt"
	"strings"

	"lineworthy/catalog"
	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

// Replacing a hose takes away everything that was true of the old one. What a new hose must bring before the first job is
// written as if it were there, each with a note, and listed among the needs: the sheet is then the order for the hose.
var ofTheOldHose = []string{
	"rated", "burst", "lowest", "highest", "evidence", "least_bend", "edition", "layers", "tag", "assigned", "marks", "specified_for",
	"made", "tested", "test_pressure", "inspected", "life", "condition", "resistance", "resistance_tested", "class", "size",
}

const (
	byCertificate = "to be shown by its certificate"
	byRecord      = "to be recorded on the new hose"
)

// replace is the change of a hose for another build.
func (s *search) replace(sp *spot, b build) change {
	p, h := sp.part, b.class
	path := fmt.Sprintf("runs.%s.parts[%d]", sp.run.Key, p.Index)
	c := change{
		spot: sp.id, kind: "hose", where: p.ID, before: describe(p), after: b.describe(), parts: []string{p.ID},
		uses: []string{"hoses/" + h.ID, "materials/" + b.liner}, cost: 2,
	}
	if p.Hose != nil && p.Hose.ID == h.ID {
		c.cost--
	}
	c.edits = append(drop(path, ofTheOldHose...), put(path, "class", h.ID, ""), put(path, "size", b.size, ""))
	if h.Edition != nil {
		c.edits = append(c.edits, put(path, "edition", h.Edition.Value, byCertificate))
	}
	c.edits = append(c.edits, edit{path, "layers", record("liner", b.liner, "reinforcement", b.braid, "cover", b.cover), byCertificate})
	s.strength(sp, b, path, &c)
	s.records(sp, b, path, &c)
	if strings.HasPrefix(b.braid, "BRAID-N") {
		c.edits = append(c.edits, put(path+".layers", "verified", "alloy read by X-ray fluorescence", byRecord))
		c.needs = append(c.needs, "the braid alloy of "+p.ID+" read by X-ray fluorescence, not off paper")
	}
	return c
}

func describe(p *resolve.Part) string {
	var parts []string
	if p.Hose != nil {
		parts = append(parts, p.Hose.ID)
	} else {
		parts = append(parts, "hose of no stated class")
	}
	for _, l := range p.Layers {
		if l.Material != nil {
			parts = append(parts, l.Role+" "+l.Material.ID)
		}
	}
	if p.Sheet.Rated.Set {
		parts = append(parts, "rated "+p.Sheet.Rated.Text)
	}
	return strings.Join(parts, ", ")
}

func (b build) describe() string {
	parts := []string{b.class.ID + " (" + b.class.Name + ")", b.size, "liner " + b.liner}
	if b.braid != "" {
		parts = append(parts, "reinforcement "+b.braid)
	}
	if b.rated != "" {
		parts = append(parts, "rated at least "+b.rated)
	}
	if b.bend != "" {
		parts = append(parts, "laid to a radius of "+b.bend)
	}
	return strings.Join(parts, ", ")
}

// strength writes pressure, burst, temperatures and bend where the class leaves them to the maker.
func (s *search) strength(sp *spot, b build, path string, c *change) {
	h, id := b.class, sp.part.ID
	if b.rated != "" {
		c.edits = append(c.edits, put(path, "rated", b.rated, byCertificate))
		c.needs = append(c.needs, fmt.Sprintf("the maker's rated pressure of %s, at least %s", id, b.rated))
		c.cost++
	}
	if burst := s.burst(sp, b); burst != "" {
		c.edits = append(c.edits, put(path, "burst", burst, byCertificate))
		c.needs = append(c.needs, fmt.Sprintf("the burst pressure of %s, at least %s", id, burst))
	}
	if b.certificate {
		c.edits = append(c.edits, put(path, "evidence", "certificate of the new hose", "to be obtained"))
	}
	s.temperatures(sp, h.Temperature, path, c)
	if b.leastBend != "" {
		c.edits = append(c.edits, put(path, "least_bend", b.leastBend, "to be stated by its maker"))
		c.needs = append(c.needs, fmt.Sprintf("the maker's smallest bend radius of %s, at most %s", id, b.leastBend))
	}
	if b.bend != "" {
		c.edits = append(c.edits, put(path, "bend", b.bend, "a longer hose, an elbow or a support"))
		c.needs = append(c.needs, fmt.Sprintf("%s laid to a bend radius of at least %s: a longer hose, an elbow or a support", id, b.bend))
	}
}

// burst is what the maker must state where the class has no figure: the ratio the rules want of the medium. A figure that
// goes with a rating kept to the last digit is kept too.
func (s *search) burst(sp *spot, b build) string {
	old := sp.part.Sheet.Burst
	if b.certificate && old.Set && b.rated == sp.part.Sheet.Rated.Text {
		return old.Text
	}
	if b.class.BurstRatio != nil || b.class.BurstBar != nil {
		return ""
	}
	bar, known := classBar(b.class, b.size)
	if b.rated != "" {
		_, _ = fmt.Sscanf(b.rated, "%g", &bar)
		known = true
	}
	if !known {
		return ""
	}
	ratio := 4.0
	for _, f := range sp.run.Fluids {
		switch {
		case f.Cat.ID == "steam":
			ratio = 10
		case f.Cat.Form == "liquefied-gas" || f.Cat.Form == "cryogenic-liquid":
			ratio = max(ratio, 5)
		}
	}
	return fmt.Sprintf("%g bar(g)", bar*ratio)
}

// temperatures asks the maker for the sides that the class leaves open, rounded outward to 5 K.
func (s *search) temperatures(sp *spot, t *catalog.Span, path string, c *change) {
	hot, cold := s.hot(sp.run), s.cold(sp.run)
	if (t == nil || t.HighestC == nil) && hot != nil {
		c.edits = append(c.edits, put(path, "highest", outward(*hot, 1), byCertificate))
		c.needs = append(c.needs, fmt.Sprintf("the maker's highest temperature of %s, at least %s", sp.part.ID, outward(*hot, 1)))
	}
	if (t == nil || t.LowestC == nil) && cold != nil {
		c.edits = append(c.edits, put(path, "lowest", outward(*cold, -1), byCertificate))
		c.needs = append(c.needs, fmt.Sprintf("the maker's lowest temperature of %s, at most %s", sp.part.ID, outward(*cold, -1)))
	}
}

func outward(t units.Temperature, sign int) string {
	c := int(t.Celsius())
	for c%5 != 0 || float64(c*sign) < t.Celsius()*float64(sign)-1e-9 {
		c += sign
	}
	return fmt.Sprintf("%d °C", c)
}

// records are identity, marks, dates and tests of the new hose, none of which is there yet.
func (s *search) records(sp *spot, b build, path string, c *change) {
	day, p := s.line.AsOf.String(), sp.part
	rated := b.rated
	if bar, ok := classBar(b.class, b.size); rated == "" && ok {
		rated = fmt.Sprintf("%g bar(g)", bar)
	}
	add := func(key, value string) { c.edits = append(c.edits, put(path, key, value, byRecord)) }
	add("tag", "new "+p.ID)
	add("assigned", "new "+p.ID)
	c.edits = append(c.edits, edit{path, "marks", list(markList(b.class, rated, day[:4])...), byRecord})
	add("readable", "yes")
	add("made", day[:7])
	add("tested", day)
	if !p.Sheet.TestEvery.Set {
		add("test_interval", "12 months")
	}
	if p.Sheet.TestedAt.Set {
		add("test_pressure", testPressure(rated))
	}
	add("inspected", day)
	c.edits = append(c.edits, edit{path, "condition", list("sound"), byRecord})
	grade := s.grade(p, b.class)
	if grade != "" {
		c.edits = append(c.edits, put(path, "electrical", grade, byCertificate))
		add("resistance", map[bool]string{true: "100 kohm", false: "10 ohm"}[strings.HasPrefix(grade, "Ohm")])
		add("resistance_tested", day)
	}
	names := []string{}
	for _, f := range sp.run.Fluids {
		names = append(names, f.Cat.ID)
	}
	if b.class.For == nil || s.namesWanted(sp.run) {
		c.edits = append(c.edits, edit{path, "specified_for", list(names...), "to be named by the maker's letter"})
		c.needs = append(c.needs, fmt.Sprintf("the maker's letter that names %s for %s", strings.Join(names, ", "), p.ID))
	}
	c.needs = append(c.needs, fmt.Sprintf("%s: certificate, identity entered as the assigned one, readable marks (%s), pressure test, inspection%s, each recorded",
		p.ID, strings.Join(markList(b.class, rated, day[:4]), ", "), map[bool]string{true: ", measured resistance"}[grade != ""]))
}

// namesWanted says whether the law or practice of the service wants the maker to name the fluid.
func (s *search) namesWanted(r *resolve.Run) bool {
	for _, f := range r.Fluids {
		if f.Cat.Form == "liquefied-gas" || strings.HasSuffix(f.Cat.ID, "-oxide") {
			return true
		}
	}
	return false
}

// grade keeps the electrical grade where the class has it, else takes the first the class has.
func (s *search) grade(p *resolve.Part, h *catalog.Hose) string {
	now := p.Sheet.Grade.V
	if h.Electrical == nil || len(h.Electrical.Values) == 0 {
		return now
	}
	for _, g := range h.Electrical.Values {
		if g == now {
			return now
		}
	}
	return h.Electrical.Values[0]
}

// testPressure is one and a half times the rating (ISO 1402 proof practice, recalled).
func testPressure(rated string) string {
	var n float64
	var unit string
	if _, err := fmt.Sscanf(rated, "%g %s", &n, &unit); err != nil {
		return rated
	}
	return fmt.Sprintf("%g %s", n*1.5, unit)
}
