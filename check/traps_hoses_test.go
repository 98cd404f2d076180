package check_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"lineworthy/check/report"
)

const (
	lowBurst   = "pressure/burst_ratio_below_standard"
	notAllowed = "service/kept_out_by_class"
	behind     = "material/reinforcement_attacked_through_liner"
)

// TestHoseTraps are the known traps of hoses, each as a shipped line with one thing changed.
func TestHoseTraps(t *testing.T) {
	line := func(name string, oldNew ...string) string { return variant(t, name, oldNew...) }
	braid := func(material, verified string) string {
		return line("nitrogen-inerting", "fluid: nitrogen", "fluid: chlorine", "class: iso-10380-s31603", "class: en-16643-c",
			"edition: \"2012\"", "edition: \"2016\"", "{liner: S31603, reinforcement: BRAID-AUS, verified: X-ray fluorescence}",
			"{liner: PTFE, reinforcement: "+material+verified+"}")
	}
	metal := func(shutoff string) string {
		return line("cip-dairy", "highest: 80 °C", "highest: 50 °C", "class: en-16643-se", "class: iso-10380-s31603", "edition: \"2016\"", "edition: \"2012\"",
			"{liner: PTFE, reinforcement: BRAID-AUS, cover: VMQ}", "{liner: S31603, reinforcement: BRAID-AUS}", "shutoff: 3 bar(g)", "shutoff: "+shutoff)
	}
	acetylene := func(class, set string) string {
		return line("oxygen-furnace", "fluid: oxygen, role", "fluid: acetylene, role", "class: iso-3821-normal", "class: "+class, "set: 3 bar(g)", "set: "+set)
	}
	water := func(burst string) string {
		return line("cip-dairy", "highest: 80 °C", "highest: 60 °C", "class: en-16643-se", "class: iso-1403-2", "edition: \"2016\"", "edition: \"2019\"",
			"{liner: PTFE, reinforcement: BRAID-AUS, cover: VMQ}", "{liner: EPDM, reinforcement: PET-FIBRE, cover: EPDM}", "burst: 40 bar(g)", "burst: "+burst)
	}
	chemical := func(oldNew ...string) string {
		return line("acetone-pump", append([]string{"rated: 10 bar(g)", "rated: 25 bar(g)"}, oldNew...)...)
	}
	steamed := []string{"\nvessels:", "\n  steam: {fluid: steam, role: flush, temperature: {lowest: 100 °C, normal: 105 °C, highest: 110 °C}}\nvessels:", "carries: [product]", "carries: [product, steam]"}
	tryTraps(t, []trap{
		{"02 edition changes the rating and is not stated", "SAE J517 100R2AT, lower before 2006 (published), figures (recalled)", "record/hose_edition_not_stated",
			line("hydraulic-rig", "class: en-856-4sp", "class: sae-100r2at", "        edition: \"2015\"\n", ""),
			line("hydraulic-rig", "class: en-856-4sp", "class: sae-100r2at", "edition: \"2015\"", "edition: \"2010\"")},
		{"03 EN 12115 is 10 bar where nothing is printed", "EN 12115 scope (published)", tooWeak,
			chemical("shutoff: 3 bar(g)", "shutoff: 12 bar(g)", "        rated: 16 bar(g)\n        burst", "        burst"), chemical("shutoff: 3 bar(g)", "shutoff: 12 bar(g)")},
		{"03 EN 12115 above 65 C", "EN 12115 scope (published)", tooHot,
			chemical("highest: 35 °C}}", "highest: 66 °C}}"), chemical("highest: 35 °C}}", "highest: 65 °C}}")},
		{"03 a hose that steam sucks flat when it condenses", "EN 12115 vacuum of types D and SD (restated), steam in a hose (practice)", "pressure/vacuum_beyond_hose",
			line("steam-sterilise", "vacuum: -1 bar(g)\n        burst", "vacuum: -0.9 bar(g)\n        burst"), line("steam-sterilise")},
		{"04 EN 13765 type 1 is for vapour", "EN 13765 scope, 2018 (published)", notAllowed,
			chemical("class: en-12115-sd", "class: en-13765-1"), chemical("class: en-12115-sd", "class: en-13765-2")},
		{"06 burst ratio of steam hose is 10", "RMA IP-2 p. 50 (published), ISO 6134 (recalled)", lowBurst,
			line("steam-sterilise", "burst: 60 bar(g)", "burst: 59 bar(g)"), line("steam-sterilise")},
		{"06 burst ratio of water hose is 3", "RMA IP-2 p. 50 (published)", lowBurst, water("29 bar(g)"), water("30 bar(g)")},
		{"06 burst ratio of ammonia hose is 5", "ISO 5771 Table 1, 125 over 25 (computed)", lowBurst,
			line("ammonia-nurse", "burst: 125 bar(g)", "burst: 124 bar(g)"), line("ammonia-nurse")},
		{"06 burst ratio of LPG hose is 4", "EN 1762 (recalled)", lowBurst,
			line("lpg-bobtail", "burst: 100 bar(g)", "burst: 99 bar(g)"), line("lpg-bobtail")},
		{"07 metal hose and its braid hold 0.87 at 50 C", "ISO 10380 Annex A (restated)", tooWeak, metal("8.7 bar(g)"), metal("8.5 bar(g)")},
		{"09 above its range a rubber hose has no rating", "ISO 6134-1, saturation at 6 bar (recalled)", tooHot,
			line("steam-sterilise", "highest: 128 °C", "highest: 165 °C"), line("steam-sterilise")},
		{"10 stainless braid behind PTFE in chlorine", "CSB 2002-04-I-MO (published)", behind, braid("BRAID-AUS", ""), braid("BRAID-N10276", "")},
		{"10 the braid alloy rests on papers", "CSB 2002-04-I-MO (published)", "record/alloy_on_paper_only",
			braid("BRAID-N10276", ""), braid("BRAID-N10276", ", verified: X-ray fluorescence")},
		{"11 acetylene in a welding hose of 20 bar", "ISO 3821 scope, to 1.5 bar (published)", notAllowed,
			acetylene("iso-3821-normal", "0.8 bar(g)"), acetylene("iso-3821-acetylene", "0.8 bar(g)")},
		{"11 acetylene above 15 psig", "29 CFR 1910.253(a)(2) (published)", "service/acetylene_above_15_psig",
			acetylene("iso-3821-acetylene", "1.2 bar(g)"), acetylene("iso-3821-acetylene", "0.8 bar(g)")},
		{"12 resistance above grade Ohm", "EN 12115 grades, 1 Mohm end to end (restated)", "static/resistance_above_grade",
			chemical("resistance: 20 kohm", "resistance: 1.1 Mohm"), chemical("resistance: 20 kohm", "resistance: 1 Mohm")},
		{"12 a hose that does not conduct on a flammable liquid", "practice, no source", "static/hose_not_conductive",
			chemical("electrical: Ohm/T", "electrical: none"), chemical()},
		{"13 steaming out a chemical hose", "EN 12115 range (published), cleaning rule (practice)", notAllowed, chemical(steamed...), chemical()},
		{"14 ammonia hose without a relief", "29 CFR 1910.111(b)(8)(iv) and (b)(9) (published)", "expansion/ammonia_section_without_relief",
			line("ammonia-nurse", "kind: relief\n", "kind: fitting\n", "        set: 325 psig\n        isolatable: no\n", "", "        tested: 2026-03-16\n        test_interval: 12 months\n        bonded: yes\n        mount", "        bonded: yes\n        outlet"),
			line("ammonia-nurse")},
		{"14 ammonia hose without a valve at its outlet", "29 CFR 1910.111(b)(8)(iv) (published)", "isolation/ammonia_hose_without_end_valve",
			line("ammonia-nurse", "id: V2\n        kind: valve", "id: V2\n        kind: fitting", "        closing: 2 s\n        acts_on: hand\n", ""), line("ammonia-nurse")},
		{"15 working pressure equal to the demand is not more than it", "33 CFR 154.500(b) (published)", "pressure/not_above_demand_by_marine_law",
			line("diesel-generator", "regimes: []", "regimes: [33 CFR 154.500]", "rated: 10 bar(g)\n        burst", "rated: 5.13 bar(g)\n        burst"),
			line("diesel-generator", "regimes: []", "regimes: [33 CFR 154.500]", "rated: 10 bar(g)\n        burst", "rated: 5.14 bar(g)\n        burst")},
		{"16 the test is overdue", "CSB 2010-6-I-WV, a change-out lost in software (published)", "inspection/pressure_test_overdue",
			line("steam-sterilise", "tested: 2026-09-14\n        test_interval", "tested: 2026-05-24\n        test_interval"),
			line("steam-sterilise", "tested: 2026-09-14\n        test_interval", "tested: 2026-05-25\n        test_interval")},
		{"17 pin-pricks are no damage, a cut is", "BS 4089 2.2 (published)", "inspection/rejected_condition",
			line("lpg-bobtail", "cover-pricked", "cover-damaged"), line("lpg-bobtail")},
	})
}

// A missing date is not a date in order: CSB 2010-6-I-WV (published).
func TestMissingTestDateIsNeverFit(t *testing.T) {
	v := judgeText(t, variant(t, "steam-sterilise", "        tested: 2026-09-14\n        test_interval", "        test_interval"))
	assert.Equal(t, report.Unproven, v.Word)
}
