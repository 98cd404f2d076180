package facts_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"

	"lineworthy/check/facts"
)

const hoseHead = "        class: en-12115-sd\n        edition: \"2021\"\n        size: DN 50\n"

// TestHoseRating: EN 12115 gives 10 bar to all sizes (published); a printed figure counts downward, upward with a paper.
func TestHoseRating(t *testing.T) {
	for name, tc := range map[string]struct {
		head string // class, edition, size and printed figures of the hose
		want int64
		why  string
	}{
		"class":                            {hoseHead, 1000, ""},
		"printed higher, no paper":         {hoseHead + "        rated: 16 bar(g)\n", 1000, ""},
		"printed higher, with paper":       {hoseHead + "        rated: 16 bar(g)\n        evidence: e\n", 1600, ""},
		"printed lower, no paper":          {hoseHead + "        rated: 6 bar(g)\n", 600, ""},
		"printed lower, with paper":        {hoseHead + "        rated: 6 bar(g)\n        evidence: e\n", 600, ""},
		"maker states, not printed":        {"        class: en-13765-2\n        size: DN 50\n", 0, "leaves the working pressure of this class to the maker"},
		"maker states, printed":            {"        class: en-13765-2\n        size: DN 50\n        rated: 10 bar(g)\n", 1000, ""},
		"by size":                          {"        class: en-853-1sn\n        size: DN 10\n", 18000, ""}, // EN 853 table, 180 bar
		"by size, other size":              {"        class: en-853-1sn\n        size: DN 6\n", 22500, ""},
		"by size, no such row":             {"        class: en-853-1sn\n        size: DN 300\n", 0, "has no row for DN 300"},
		"by size, size unknown":            {"        class: en-853-1sn\n", 0, "the size of H1 is not stated"},
		"by size, pipe size for a bore":    {"        class: en-853-1sn\n        size: 3/8 in\n", 0, "has no row for 3/8 in"},
		"no class":                         {"        size: DN 50\n", 0, "the class of H1 is not stated"},
		"no class, printed":                {"        size: DN 50\n        rated: 10 bar(g)\n", 1000, ""},
		"350 psig, rounded down":           {hoseHead + "        rated: 350 psig\n        evidence: e\n", 2413, ""},
		"16 bar is 1600 kPa":               {hoseHead + "        rated: 16 bar(g)\n        evidence: e\n", 1600, ""},
		"1.6 MPa":                          {hoseHead + "        rated: 1.6 MPa(g)\n        evidence: e\n", 1600, ""},
		"absolute at sea level":            {hoseHead + "        rated: 17.01325 bar(a)\n        evidence: e\n", 1600, ""},
		"metal hose at its 20 degree mark": {"        class: iso-10380-s31603\n        size: DN 50\n        rated: 100 bar(g)\n        evidence: e\n", 10000, ""},
	} {
		t.Run(name, func(t *testing.T) {
			f := build(t, hoseHead, tc.head)
			got := hose(t, f, "H1").RatedKPa
			if tc.why != "" {
				assert.False(t, got.Known)
				assert.Contains(t, why(f, "H1", "hoses.rated_kpa"), tc.why)
				assert.Contains(t, why(f, "H1 hose", "capacities.rated_kpa"), tc.why)
				return
			}
			assert.Equal(t, facts.Know(tc.want), got)
		})
	}
}

// TestHoseEdition: SAE 100R2AT and 100R16 changed their figures; a hose of an unknown edition gets the lower one.
func TestHoseEdition(t *testing.T) {
	h, err := cat.Hose("sae-100r2at")
	assert.NoError(t, err)
	assert.NotEmpty(t, h.Earlier)
	rated := func(edition string) facts.Int {
		return hose(t, build(t, hoseHead, "        class: sae-100r2at\n"+edition+"        size: \"-16\"\n"), "H1").RatedKPa
	}
	now, unknown, typo := rated("        edition: \""+h.Edition.Value+"\"\n"), rated(""), rated("        edition: \"1066\"\n")
	assert.True(t, now.Known)
	assert.LessOrEqual(t, unknown.V, now.V)
	assert.Equal(t, unknown, typo, "an edition nobody knows could be any")
	assert.True(t, hose(t, build(t, hoseHead, "        class: sae-100r2at\n        size: \"-16\"\n"), "H1").EditionMatters)
}

// TestDerating of a metal hose is by the weaker of tube and braid (ISO 10380 Annex A as restated): S31603 0.88 and the
// austenitic braid 0.87 at 50 °C, linear from 1 at 20 °C, so 0.9133 at 40 °C.
func TestDerating(t *testing.T) {
	metal := "        class: iso-10380-s31603\n        size: DN 50\n        rated: 100 bar(g)\n        evidence: e\n"
	steel := "layers: {liner: S31603, reinforcement: BRAID-AUS}"
	for name, tc := range map[string]struct {
		layers, top string
		want        int64
		why         string
	}{
		"at 20":                     {steel, "20 °C", 10000, ""},
		"at 40":                     {steel, "40 °C", 9133, ""},
		"at 50":                     {steel, "50 °C", 8700, ""},
		"at the last row":           {steel, "550 °C", 4200, ""},
		"one past the last row":     {steel, "551 °C", 0, "is known from"},
		"tube not listed":           {"layers: {liner: R50400, reinforcement: BRAID-AUS}", "40 °C", 0, "no factor for a layer"},
		"braid not listed":          {"layers: {liner: S31603, reinforcement: BRAID-N10276}", "40 °C", 0, "no factor for a layer"},
		"braid a choice not made":   {"layers: {liner: S31603}", "40 °C", 0, "no factor for a layer"},
		"cover does not hold":       {"layers: {liner: S31603, reinforcement: BRAID-AUS, cover: EPDM}", "40 °C", 9133, ""},
		"carbon steel tube, better": {"layers: {liner: CS, reinforcement: BRAID-AUS}", "40 °C", 9133, ""},
	} {
		t.Run(name, func(t *testing.T) {
			f := build(t, hoseHead, metal, "layers: {liner: PTFE, reinforcement: PET-FIBRE, cover: EPDM}", tc.layers,
				"highest: 40 °C, sun", "highest: "+tc.top+", sun", "lowest: 10 °C, highest: 40 °C", "lowest: 10 °C, highest: "+tc.top)
			var got *facts.Capacity
			for i := range f.Capacities {
				if f.Capacities[i].Part == "H1" && f.Capacities[i].Hose {
					got = &f.Capacities[i]
				}
			}
			if tc.why != "" {
				assert.False(t, got.RatedKPa.Known)
				assert.Contains(t, why(f, got.ID, "capacities.rated_kpa"), tc.why)
				return
			}
			assert.Equal(t, facts.Know(tc.want), got.RatedKPa)
		})
	}
}

// TestBurst: the class's figure or ratio; a printed figure counts downward, upward with a paper.
func TestBurst(t *testing.T) {
	for name, tc := range map[string]struct {
		head  string
		burst facts.Int
		ratio facts.Int
	}{
		"by ratio of the class": {hoseHead, facts.Know(4000), facts.Know(4000)},
		"printed higher":        {hoseHead + "        burst: 60 bar(g)\n", facts.Know(4000), facts.Know(4000)},
		"with paper":            {hoseHead + "        burst: 60 bar(g)\n        evidence: e\n", facts.Know(6000), facts.Know(6000)},
		"printed lower":         {hoseHead + "        burst: 39.99 bar(g)\n", facts.Know(3999), facts.Know(3999)},
		"no class, nothing":     {"        size: DN 50\n        rated: 10 bar(g)\n", facts.Int{}, facts.Int{}},
	} {
		t.Run(name, func(t *testing.T) {
			h := hose(t, build(t, hoseHead, tc.head), "H1")
			assert.Equal(t, tc.burst, h.BurstKPa)
			assert.Equal(t, tc.ratio, h.RatioPermille)
		})
	}
}

const flangeEnd = `standard: flange-asme-b16-5, size: NPS 2, class: "150", facing: RF`

// TestEndRating against the worked checks: ASME B16.5 Class 150 group 2.2 at 75 °C between 18.4 and 16.2, group 2.3 at
// 50 °C 15.3 bar (tables 2-2.2 and 2-2.3, restated); EN 14420-7 cast aluminium and DN 100 10 bar (scope, published).
func TestEndRating(t *testing.T) {
	cam := func(size, material string) string {
		return "standard: cam-groove-en-14420-7, size: " + size + ", gender: male, material: " + material
	}
	for name, tc := range map[string]struct {
		end, top string
		want     int64
		why      string
	}{
		"group 2.2 at 75 °C":       {flangeEnd + ", material: S31600", "75 °C", 1730, ""},
		"group 2.3 at 50 °C":       {flangeEnd + ", material: S31603", "50 °C", 1530, ""},
		"group 1.1 at 38 °C":       {flangeEnd + ", material: CS", "38 °C", 1960, ""},
		"group 2.3 past its table": {flangeEnd + ", material: S31603", "451 °C", 0, "is known from"},
		"material not stated":      {flangeEnd, "40 °C", 0, "an unstated material"},
		"material of no group":     {flangeEnd + ", material: PVDF", "40 °C", 0, "has no rating"},
		"class not stated":         {`standard: flange-asme-b16-5, size: NPS 2, facing: RF, material: CS`, "40 °C", 0, "has no rating"},
		"class as Class 150":       {`standard: flange-asme-b16-5, size: NPS 2, class: Class 150, facing: RF, material: CS`, "38 °C", 1960, ""},
		"cam, steel DN 50":         {cam("DN 50", "S31600"), "40 °C", 1600, ""},
		"cam, cast aluminium":      {cam("DN 50", "A03560"), "40 °C", 1000, ""},
		"cam, steel DN 100":        {cam("DN 100", "S31600"), "40 °C", 1000, ""},
		"cam, at the last degree":  {cam("DN 50", "S31600"), "65 °C", 1600, ""},
		"cam, one degree past":     {cam("DN 50", "S31600"), "66 °C", 0, "is known from"},
		"no pressure of its own":   {"standard: thread-g, size: 1 in, gender: male, material: CS", "40 °C", 0, "has no pressure of its own"},
	} {
		t.Run(name, func(t *testing.T) {
			f := build(t, "inlet: {"+flangeEnd+", material: S31603,", "inlet: {"+tc.end+",",
				"highest: 40 °C, sun", "highest: "+tc.top+", sun", "lowest: 10 °C, highest: 40 °C", "lowest: 10 °C, highest: "+tc.top)
			c := capacity(t, f, "H1 inlet")
			if tc.why != "" {
				assert.False(t, c.RatedKPa.Known)
				assert.Contains(t, why(f, "H1 inlet", "capacities.rated_kpa"), tc.why)
				return
			}
			assert.Equal(t, facts.Know(tc.want), c.RatedKPa)
		})
	}
}

// TestLooseEnds: the flange of the tank is as much a part of the line as the one it is bolted to.
func TestLooseEnds(t *testing.T) {
	f := build(t, "fill: {standard: flange-asme-b16-5, size: NPS 2, class: \"150\"", "fill: {standard: flange-en-1092-1, material: CS, size: DN 50, class: PN 6")
	assert.Equal(t, facts.Know(600), capacity(t, f, "tank fill").RatedKPa)
	f = build(t, reliefValve, "      - {id: RV1, kind: relief, set: 6 bar(g), material: S31603, mount: {standard: flange-en-1092-1, size: DN 50, class: PN 6, material: CS}}\n")
	assert.Equal(t, facts.Know(600), capacity(t, f, "RV1 mount").RatedKPa)
	f = build(t, "source: {cylinder: 200 bar(g)}", `source: {cylinder: 200 bar(g), end: {standard: cylinder-cga-v1, number: "580", gender: female}}`)
	assert.Equal(t, facts.Know(20680), capacity(t, f, "source source").RatedKPa, "CGA 580 ends at 3000 psi (recalled)")
	assert.Equal(t, facts.Know(20000), capacity(t, f, "source source").DemandKPa, "as filled, not as hot")
}

// TestSealRating: a gasket's highest pressure and temperature never apply together: rubber sheet 4 bar and bar x °C 496
// (flat gasket reference page, restated).
func TestSealRating(t *testing.T) {
	for name, tc := range map[string]struct {
		seal, top string
		want      int64
	}{
		"cold":                       {"rubber-sheet, size: NPS 2, material: EPDM", "20 °C", 400},
		"hot, P x T judged apart":    {"rubber-sheet, size: NPS 2, material: EPDM", "160 °C", 400},
		"stated lower":               {"rubber-sheet, size: NPS 2, material: EPDM, rated: 2 bar(g)", "20 °C", 200},
		"stated higher, no paper":    {"rubber-sheet, size: NPS 2, material: EPDM, rated: 20 bar(g)", "20 °C", 400},
		"stated higher, with paper":  {"rubber-sheet, size: NPS 2, material: EPDM, rated: 20 bar(g), evidence: e", "20 °C", 2000},
		"no figure, stated no paper": {"spiral-wound-graphite, size: NPS 2, rated: 20 bar(g)", "20 °C", 2000},
		"no figure at all":           {"spiral-wound-graphite, size: NPS 2", "20 °C", 0}, // the joint decides
	} {
		t.Run(name, func(t *testing.T) {
			f := build(t, "inlet: {"+flangeEnd+", material: S31603, seal: {kind: ptfe-expanded, size: NPS 2, material: PTFE}", "inlet: {"+flangeEnd+", material: S31603, seal: {kind: "+tc.seal+"}",
				"highest: 40 °C, sun", "highest: "+tc.top+", sun", "lowest: 10 °C, highest: 40 °C", "lowest: 10 °C, highest: "+tc.top)
			id := "tote.liquid to H1.inlet seal 1"
			if tc.want == 0 {
				assert.NotContains(t, capacityIDs(f), id)
				return
			}
			assert.Equal(t, facts.Know(tc.want), capacity(t, f, id).RatedKPa)
		})
	}
}

// TestUnits: one line typed in bar, psi, kPa and kgf/cm2 is one line.
func TestUnits(t *testing.T) {
	want := build(t).Capacities
	for unit, pascal := range map[string]float64{"kPa(g)": 1e3, "kgf/cm2(g)": 98066.5, "psig": 6894.757293168361, "MPa(g)": 1e6} {
		set := func(bar float64) string { return fmt.Sprintf("set: %.14f %s", bar*1e5/pascal, unit) }
		assert.Equal(t, want, build(t, "set: 3 bar(g)", set(3), "set: 6 bar(g)", set(6)).Capacities, unit)
	}
	assert.Equal(t, want, build(t, "set: 3 bar(g)", "set: 4.01325 bar(a)", "set: 6 bar(g)", "set: 7.01325 bar(a)").Capacities, "at sea level")
	f := build(t, "highest: 40 °C", "highest: 104 °F", "lowest: 0 °C", "lowest: 32 °F")
	assert.Equal(t, want, f.Capacities)
}

// TestRounding at exact limits: a demand goes up to the next kPa, a rating down, and a whole number stays.
func TestRounding(t *testing.T) {
	demand := func(supply string) facts.Int {
		return capacity(t, build(t, "source: {cylinder: 200 bar(g)}", "source: {supply: "+supply+"}", "      - {id: PR1, kind: regulator, set: 3 bar(g), lock_up: 10 %, inlet_rated: 250 bar(g), flow_coefficient: Cv 0.06, rated: 20 bar(g), evidence: e, material: S31603}\n", ""), "T1 body").DemandKPa
	}
	assert.Equal(t, facts.Know(2414), demand("350 psig")) // 2413.17
	assert.Equal(t, facts.Know(1600), demand("16 bar(g)"))
	assert.Equal(t, facts.Know(1601), demand("1600.001 kPa(g)"))
	assert.Equal(t, facts.Know(0), demand("-0.5 bar(g)"), "a vacuum demands no strength against bursting")
}
