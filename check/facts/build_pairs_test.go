package facts_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"lineworthy/check/facts"
)

const (
	layers  = "layers: {liner: PTFE, reinforcement: PET-FIBRE, cover: EPDM}"
	butanon = "{fluid: butanone, concentration: 100 %, temperature: {lowest: 10 °C, highest: 40 °C}}"
	pads    = "{fluid: nitrogen, dryness: dry, oil_free: yes}"
)

// permeated are the pairs that reach the reinforcement, by rating; unknown for one without a row.
func permeated(f *facts.Facts) map[string]string {
	out := map[string]string{}
	for rating, list := range map[string][]facts.Pair{"unsuitable": f.Pairs.Unsuitable, "limited": f.Pairs.Limited, "suitable": f.Pairs.Suitable, "unknown": f.Pairs.Unlisted} {
		for _, p := range list {
			if p.Contact == "permeated" && p.Fluid != "Nitrogen" {
				out[p.Material] = rating
			}
		}
	}
	return out
}

// TestPermeation holds the layer behind the liner to what reached it in the accidents: chlorine through PTFE onto stainless
// braid (CSB 2002-04-I-MO), ammonia through rubber onto polyester (NTSB HAZ-12-01), phosgene (CSB 2010-6-I-WV).
func TestPermeation(t *testing.T) {
	for name, tc := range map[string]struct {
		fluid, layers string
		want          map[string]string
	}{
		"chlorine, PTFE, stainless braid":   {"chlorine", "{liner: PTFE, reinforcement: BRAID-AUS}", map[string]string{"BRAID-AUS": "unsuitable"}},
		"chlorine, PTFE, alloy braid":       {"chlorine", "{liner: PTFE, reinforcement: BRAID-N10276}", map[string]string{"BRAID-N10276": "suitable"}},
		"chlorine, metal liner":             {"chlorine", "{liner: N10276, reinforcement: BRAID-AUS}", map[string]string{}},
		"ammonia, rubber, polyester":        {"ammonia", "{liner: EPDM, reinforcement: PET-FIBRE}", map[string]string{"PET-FIBRE": "unsuitable"}},
		"ammonia, liner not stated":         {"ammonia", "{reinforcement: PET-FIBRE}", map[string]string{"PET-FIBRE": "unsuitable"}},
		"phosgene, PTFE, stainless braid":   {"phosgene", "{liner: PTFE, reinforcement: BRAID-AUS}", map[string]string{"BRAID-AUS": "unsuitable"}},
		"ammonia, braid a choice not made":  {"ammonia", "{liner: EPDM}", map[string]string{"not stated": "unknown"}},
		"chlorine, fibre the catalog lacks": {"chlorine", "{liner: PTFE, reinforcement: ARAMID-FIBRE}", map[string]string{"ARAMID-FIBRE": "unknown"}},
		"butanone is not held against it":   {"butanone", "{liner: PTFE, reinforcement: BRAID-AUS}", map[string]string{}},
	} {
		t.Run(name, func(t *testing.T) {
			assert.Equal(t, tc.want, permeated(build(t, butanon, "{fluid: "+tc.fluid+"}", layers, "layers: "+tc.layers)))
		})
	}
	noClass := []string{hoseHead, "        size: DN 50\n", layers, "layers: {liner: EPDM}"}
	assert.Equal(t, map[string]string{"not stated": "unknown"}, permeated(build(t, append(noClass, butanon, "{fluid: ammonia}")...)), "without a class nobody knows what is behind the liner")
	choice := build(t, hoseHead, "        class: iso-10380-s31603\n        size: DN 50\n", layers, "layers: {liner: PTFE}", butanon, "{fluid: hydrochloric-acid, concentration: 30 %}")
	assert.Equal(t, map[string]string{"not stated": "unknown"}, permeated(choice), "one of the braids the class allows is attacked")
}

// TestContacts: nothing that the fluid wets is left out.
func TestContacts(t *testing.T) {
	f := build(t, "        size: DN 50\n", "        size: DN 50\n        material: S30403\n        wetted: [EPDM]\n", "material: S31603, seal: {kind: ptfe-expanded, size: NPS 2, material: PTFE}}\n        outlet", "seal: {kind: ptfe-expanded}}\n        outlet")
	assert.Equal(t, "suitable", pair(t, f, "H1 wetted EPDM in product").Rating, "a seat or ferrule inside a hose")
	assert.Equal(t, "suitable", pair(t, f, "H1 inlet end S30403 in product").Rating, "a hose has no body: its ends count")
	f = build(t, tankPoint, `fill: {standard: flange-asme-b16-5, size: NPS 2, class: "150", facing: RF, material: CR}`)
	assert.Equal(t, "unsuitable", pair(t, f, "tank fill end CR in product").Rating)
	f = build(t, "to: {vessel: tank, inlet: fill}", "to: {end: {standard: thread-g, size: 1 in, gender: male, material: NBR}}")
	assert.Equal(t, "unsuitable", pair(t, f, "destination destination end NBR in product").Rating)
	f = build(t, "material: S31603}\n      - {id: RV1", "}\n      - {id: RV1")
	assert.Contains(t, why(f, "T1 body not stated in pad", "pairs.rating"), "body material of T1 is not stated")
	f = build(t, "source: {cylinder: 200 bar(g)}", "source: {cylinder: 200 bar(g), end: {standard: cylinder-cga-v1, number: \"580\"}}")
	for _, p := range f.Pairs.Unlisted {
		assert.NotEqual(t, "source source", p.Part, "the valve of a cylinder belongs to its filler")
	}
}

// TestConcentration: the entry speaks for a range; outside it, or unstated where the range is not up to pure, nothing is known.
func TestConcentration(t *testing.T) {
	for name, tc := range map[string]struct {
		fluid string
		fits  facts.Bool
	}{
		"in range":                    {"{fluid: sodium-hydroxide, concentration: 50 %}", facts.Yes(true)},
		"at the low end":              {"{fluid: sodium-hydroxide, concentration: 20 %}", facts.Yes(true)},
		"below":                       {"{fluid: sodium-hydroxide, concentration: 19.9 %}", facts.Yes(false)},
		"above":                       {"{fluid: sodium-hydroxide, concentration: 50.1 %}", facts.Yes(false)},
		"not stated":                  {"{fluid: sodium-hydroxide}", facts.Bool{}},
		"up to pure, not stated":      {"{fluid: ethanol}", facts.Yes(true)},
		"up to pure, at its low end":  {"{fluid: ethanol, concentration: 96 %}", facts.Yes(true)},
		"up to pure, below":           {"{fluid: ethanol, concentration: 70 %}", facts.Yes(false)},
		"pure, not stated":            {"{fluid: butanone}", facts.Yes(true)},
		"pure, and diluted":           {"{fluid: butanone, concentration: 50 %}", facts.Yes(false)},
		"pure, written as a fraction": {"{fluid: butanone, concentration: 0.999}", facts.Yes(true)},
	} {
		t.Run(name, func(t *testing.T) {
			f := build(t, butanon, tc.fluid)
			got := find(t, f.Fluids, "product", func(f facts.Fluid) string { return f.ID })
			assert.Equal(t, tc.fits, got.StrengthFits)
			p := pair(t, f, "H1 liner PTFE in product")
			assert.Equal(t, tc.fits == facts.Yes(true), p.Rating != "", "no rating for another strength")
		})
	}
}

// TestRowTemperature: a favourable row ends at its temperature, an adverse one counts hotter too, and the row for hotter
// service says nothing about cooler. Rows of water and butanone, ISO/TR 7620 and ISO/TR 10358 (recalled).
func TestRowTemperature(t *testing.T) {
	at := func(fluid, liner, fluidTop, siteTop string) (string, string) {
		f := build(t, butanon, "{fluid: "+fluid+", temperature: {lowest: 10 °C, highest: "+fluidTop+"}}", layers, "layers: {liner: "+liner+"}", "highest: 40 °C, sun", "highest: "+siteTop+", sun")
		return pair(t, f, "H1 liner "+liner+" in product").Rating, why(f, "H1 liner "+liner+" in product", "pairs.rating")
	}
	for name, tc := range map[string]struct{ fluid, liner, top, site, want string }{
		"at the row":                {"butanone", "PTFE", "40 °C", "20 °C", "suitable"},
		"one past it":               {"butanone", "PTFE", "41 °C", "20 °C", ""},
		"place hotter than fluid":   {"butanone", "PTFE", "30 °C", "41 °C", ""},
		"adverse, hotter":           {"butanone", "NBR", "60 °C", "20 °C", "unsuitable"},
		"cool water in nitrile":     {"water", "NBR", "40 °C", "20 °C", "suitable"},
		"hot water in nitrile":      {"water", "NBR", "41 °C", "20 °C", "unsuitable"},
		"hotter than all, adverse":  {"water", "NBR", "130 °C", "20 °C", "unsuitable"},
		"hotter than all, suitable": {"water", "EPDM", "121 °C", "20 °C", ""},
		"hot water in EPDM":         {"water", "EPDM", "120 °C", "20 °C", "suitable"},
	} {
		t.Run(name, func(t *testing.T) {
			rating, reason := at(tc.fluid, tc.liner, tc.top, tc.site)
			assert.Equal(t, tc.want, rating)
			assert.Equal(t, tc.want == "", reason != "")
		})
	}
	f := build(t, "{lowest: 10 °C, highest: 40 °C}", "{lowest: 10 °C}", "highest: 40 °C, sun", "sun")
	assert.Contains(t, why(f, "H1 liner PTFE in product", "pairs.rating"), "how hot")
}

// TestEvidence: a site's paper beats a recalled row either way, a published one only for the worse, and no legal bar.
func TestEvidence(t *testing.T) {
	rate := func(fluid, liner string, papers ...string) string {
		text := edited(t, butanon, fluid, layers, "layers: {liner: "+liner+"}") + "evidence:\n"
		for _, p := range papers {
			text += "  - {material: " + liner + ", fluid: product, " + p + ", document: letter}\n"
		}
		id := fluid[8:]
		for i, c := range id {
			if c == ',' || c == '}' {
				id = id[:i]
				break
			}
		}
		return pair(t, of(t, replace(text, "fluid: product, rating", "fluid: "+id+", rating")), "H1 liner "+liner+" in product").Rating
	}
	mek, warm := butanon, "{fluid: acetic-acid, temperature: {lowest: 17 °C, highest: 40 °C}}"
	for name, tc := range map[string]struct {
		fluid, liner string
		papers       []string
		want         string
	}{
		"recalled adverse, cleared":         {mek, "NBR", []string{"rating: suitable, highest: 40 °C"}, "suitable"},
		"not reaching the temperature":      {mek, "NBR", []string{"rating: suitable, highest: 39 °C"}, "unsuitable"},
		"recalled good, spoken against":     {mek, "EPDM", []string{"rating: unsuitable, highest: 40 °C"}, "unsuitable"},
		"spoken against when cooler":        {mek, "EPDM", []string{"rating: unsuitable, highest: 20 °C"}, "unsuitable"},
		"no row, cleared":                   {mek, "A96061", []string{"rating: suitable, highest: 40 °C"}, "suitable"},
		"two papers, the worse counts":      {mek, "NBR", []string{"rating: suitable, highest: 50 °C", "rating: limited, highest: 50 °C"}, "limited"},
		"and in the other order":            {mek, "NBR", []string{"rating: limited, highest: 50 °C", "rating: suitable, highest: 50 °C"}, "limited"},
		"published good, stays":             {warm, "S30403", []string{"rating: suitable, highest: 80 °C"}, "suitable"},
		"published good, spoken against":    {warm, "S30403", []string{"rating: limited, highest: 80 °C"}, "limited"},
		"published adverse cannot be waved": {"{fluid: 1-2-dichloroethane}", "C36000", []string{"rating: suitable, highest: 80 °C"}, "unsuitable"},
	} {
		t.Run(name, func(t *testing.T) { assert.Equal(t, tc.want, rate(tc.fluid, tc.liner, tc.papers...)) })
	}
}

// TestBars: copper and ammonia by 29 CFR 1910.111 (b)(7)-(8) (published): barred whatever the evidence; applied where the
// sheet names the law.
func TestBars(t *testing.T) {
	at := func(regime, document string) map[string]bool {
		text := edited(t, "29 CFR 1910.106", regime, butanon, "{fluid: ammonia}", "material: S31603, seal: {kind: ptfe-expanded, size: NPS 2, material: PTFE}}\n        outlet", "material: C36000, seal: {kind: ptfe-expanded}}\n        outlet")
		out := map[string]bool{}
		for _, b := range of(t, text+document).Bars {
			assert.Equal(t, "H1 inlet", b.Part)
			assert.True(t, b.Barred)
			out[b.Regime] = b.Applies
		}
		return out
	}
	paper := "evidence: [{material: C36000, fluid: ammonia, rating: suitable, highest: 60 °C, document: letter}]\n"
	for _, document := range []string{"", paper} {
		got := at("29 CFR 1910.111", document)
		assert.Len(t, got, 3)
		assert.True(t, got["29 CFR 1910.111 (b)(7)-(8)"])
		for regime, applies := range at("33 CFR 154.500", document) {
			assert.False(t, applies, regime)
		}
	}
	assert.Empty(t, build(t).Bars)
}

func TestMeetings(t *testing.T) {
	meet := func(id string, edits ...string) facts.Meeting {
		return find(t, build(t, edits...).Meetings, id, func(m facts.Meeting) string { return m.ID })
	}
	const pad = "pad and product (pad)"
	assert.Equal(t, facts.Yes(false), meet(pad).Hazardous)
	assert.False(t, meet(pad).AirPad || meet(pad).Forbidden)
	for _, order := range []string{"carries: [product, pad]", "carries: [pad, product]", "carries: [product]"} {
		m := meet(pad, "carries: [product, pad]", order, pads, "{fluid: air}")
		assert.True(t, m.AirPad, order)
		assert.False(t, m.Forbidden, "said by its own rule")
	}
	m := meet("gas and product (pad)", gasRun, "", "  pad: "+pads, "  gas: {fluid: air}", "carries: [product, pad]", "carries: [product, gas]")
	assert.True(t, m.AirPad, "whatever the sheet calls it, and though no run brings it")
	assert.True(t, meet(pad, pads, "{fluid: oxygen}").AirPad)

	two := []string{gasRun, "", "  pad: " + pads, "  flush: {fluid: sodium-hypochlorite, concentration: 12 %}", "carries: [product, pad]", "carries: [product, flush]"}
	m = meet("product and flush (flush)", append(two, butanon, "{fluid: hydrochloric-acid, concentration: 30 %}")...)
	assert.Equal(t, facts.Yes(true), m.Hazardous) // chlorine gas: CSB case study, January 2018
	assert.Equal(t, "chlorine gas", m.Product)
}

// TestTwoRunsIntoOneVessel: what two runs bring into one vessel meets there, whichever comes first.
func TestTwoRunsIntoOneVessel(t *testing.T) {
	text := edited(t, gasRun, "", butanon, "{fluid: hydrochloric-acid, concentration: 30 %}", "  pad: "+pads, "  bleach: {fluid: sodium-hypochlorite, concentration: 12 %}", "carries: [product, pad]", "carries: [product]")
	f := of(t, text+"  second:\n    carries: [bleach]\n    source: {supply: 1 bar(g)}\n    to: {vessel: tank, inlet: fill}\n    parts: [{id: F9, kind: fitting}]\n")
	if assert.Len(t, f.Meetings, 1) {
		assert.Equal(t, facts.Yes(true), f.Meetings[0].Hazardous)
	}
}

// TestReactionUnknown: a fluid without reaction groups is not known to be harmless.
func TestReactionUnknown(t *testing.T) {
	for _, id := range cat.IDs("fluids") {
		row, err := cat.Fluid(id)
		assert.NoError(t, err)
		if row.Hazards.Groups != nil {
			continue
		}
		f := build(t, pads, "{fluid: "+id+"}")
		for _, m := range f.Meetings {
			assert.False(t, m.Hazardous.Known, id)
			assert.NotEmpty(t, why(f, m.ID, "meetings.hazardous"))
		}
		return
	}
}

const nearby = `nearby:
  - {vessel: other, point: fill, distance: 1.5 m}
`

// TestPoints: the point meant and those in reach, by what their vessels are for (CSB case study, January 2018).
func TestPoints(t *testing.T) {
	acid := "{fluid: sulfuric-acid-30-50, concentration: 40 %}"
	other := func(contains, point string) *facts.Facts {
		text := edited(t, gasRun, "", butanon, acid, "carries: [product, pad]", "carries: [product]", "runs:\n", "  other:\n    vent: open\n"+contains+"    points:\n      fill: {"+point+"}\nruns:\n")
		return of(t, text+nearby)
	}
	point := func(f *facts.Facts, id string) facts.Point {
		return find(t, f.Points, id, func(p facts.Point) string { return p.ID })
	}
	bleach := "    contains: {fluid: sodium-hypochlorite, concentration: 12 %}\n"
	f := other(bleach, `standard: flange-asme-b16-5, size: NPS 2, class: "150", padlocked: no, marked: bleach`)
	p := point(f, "other/fill")
	assert.Equal(t, []any{facts.Yes(true), "same", facts.Know(1500), facts.Yes(true), facts.Yes(false)}, []any{p.Hazardous, p.Coupling, p.DistanceMM, p.Marked, p.Padlocked})
	assert.Equal(t, "chlorine gas", p.Product)
	assert.True(t, f.Line.HazardInReach)
	assert.False(t, point(f, "tank/fill").SameFluid.Known, "with others in reach the point meant must say what it is for")
	assert.Equal(t, "different", point(other(bleach, "standard: flange-asme-b16-5, size: NPS 3"), "other/fill").Coupling)
	assert.Equal(t, "different", point(other(bleach, "standard: thread-g, size: 2 in"), "other/fill").Coupling)
	assert.Empty(t, point(other(bleach, "standard: flange-asme-b16-5"), "other/fill").Coupling)
	assert.Empty(t, point(other(bleach, "padlocked: yes"), "other/fill").Coupling)
	unsaid := other("", "marked: none")
	assert.False(t, point(unsaid, "other/fill").Hazardous.Known)
	assert.Equal(t, facts.Yes(false), point(unsaid, "other/fill").Marked)
	assert.True(t, unsaid.Line.HazardInReach, "what is not known counts")
	harmless := other("    contains: "+acid+"\n", "keyed: acid")
	assert.Equal(t, facts.Yes(false), point(harmless, "other/fill").Hazardous)
	assert.True(t, point(harmless, "other/fill").Keyed)
	assert.False(t, harmless.Line.HazardInReach)

	target := func(contains string) facts.Point {
		return point(build(t, "    vent: open\n", "    vent: open\n"+contains), "tank/fill")
	}
	assert.Equal(t, facts.Yes(true), target("").SameFluid)
	assert.Equal(t, facts.Yes(true), target("    contains: {fluid: butanone}\n").SameFluid)
	assert.Equal(t, facts.Yes(false), target("    contains: {fluid: acetone}\n").SameFluid)
}
