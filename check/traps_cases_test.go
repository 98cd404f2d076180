package check_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/check/report"
)

// TestCasesOfTheirOwn are the situations beside the transfer: the pressure test, the steam that cleans, and what was shut
// in warm and cools. Each is a shipped line with one thing changed, and the same put right.
func TestCasesOfTheirOwn(t *testing.T) {
	dairy := func(oldNew ...string) string { return variant(t, "dairy-steamed", oldNew...) }
	gas := []string{"  probe: {fluid: water, role: test, temperature: {lowest: 10 °C, normal: 15 °C, highest: 25 °C}}", "  probe: {fluid: nitrogen, role: test}"}
	gassed := func(oldNew ...string) string {
		return dairy(append(gas, append([]string{"pressure: 12 bar(g)", "pressure: 9 bar(g)", "relief: 13 bar(g)", "relief: 9.9 bar(g)"}, oldNew...)...)...)
	}
	far := []string{"      dried: yes", "      distance: 30 m\n      dried: yes"}
	acetone := func(fluid string) string {
		return variant(t, "acetone-pump", "\nvessels:", "\n  probe: {fluid: "+fluid+", role: test}\nvessels:",
			"    carries: [product]\n", "    carries: [product]\n    test: {fluid: probe, pressure: 5 bar(g)}\n")
	}
	const above = "pressure/test_above_part"
	tryTraps(t, []trap{
		{"a hose tested beyond one and a half times its rating", "RMA IP-2 chapter 9 (published), 9.35 bar at 35 °C by ISO 10380 Annex A (restated)", above, dairy("pressure: 12 bar(g)", "pressure: 14.1 bar(g)"), dairy("pressure: 12 bar(g)", "pressure: 14 bar(g)")},
		{"a hose tested with gas beyond its rating", "ASME B31.3 345.5 (recalled)", above, gassed("pressure: 9 bar(g)", "pressure: 9.4 bar(g)"), gassed()},
		{"a pump left in the test", "common practice", above, dairy("[kitchen, P1, vessel]", "[kitchen, vessel]"), dairy()},
		{"a vessel left in the test", "common practice", above, dairy("[kitchen, P1, vessel]", "[kitchen, P1]"), dairy()},
		{"a liquid test that warms", "API Std 521 5.14.4 (published), ASME B31.3 345.2.1 (recalled)", "relief/test_liquid_warms", dairy("      relief: 13 bar(g)\n", ""), dairy()},
		{"a line for steam, and a supply above what is stated", "IAPWS R7-97 (recalled): 2 bar(g) is 133.7 °C", "temperature/steam_hotter_than_stated",
			variant(t, "steam-sterilise", "supply: 1.5 bar(g)", "supply: 2 bar(g)"), variant(t, "steam-sterilise")},
		{"a vessel not made for the heat of the steam", "the plate", tooHot, dairy("highest: 150 °C\n    relief", "highest: 120 °C\n    relief"), dairy()},
		{"a vessel too weak for the steam", "the plate", tooWeak, dairy("vapour_pressure: 1.5 bar(g)", "vapour_pressure: 4.1 bar(g)", "    relief: {set: 3.5 bar(g), area: 1500 mm2, kdr: 0.7}\n", "", "highest: 128 °C", "highest: 154 °C"),
			dairy("vapour_pressure: 1.5 bar(g)", "vapour_pressure: 3.9 bar(g)", "    relief: {set: 3.5 bar(g), area: 1500 mm2, kdr: 0.7}\n", "", "highest: 128 °C", "highest: 154 °C")},
		{"a gas test that nothing limits", "ASME B31.3 345.5.2 (recalled)", "relief/gas_test_without_relief", gassed("      relief: 9.9 bar(g)\n", ""), gassed()},
		{"a gas test limited too high", "ASME B31.3 345.5.2 (recalled)", "relief/test_relief_too_high", gassed("relief: 9.9 bar(g)", "relief: 9.91 bar(g)"), gassed()},
		{"a gas test with nobody's distance", "ASME PCC-2:2008 Article 5.1 (published)", "pressure/gas_test_distance_not_stated", gassed(), gassed(far...)},
		{"a gas test with people near it", "ASME PCC-2:2008 Article 5.1 (published)", "pressure/gas_test_too_near", gassed(far[0], "      distance: 29 m\n      dried: yes"), gassed(far...)},
		{"a test below the pressure of use", "ASME B31.3 345.4.2 (recalled)", "pressure/test_below_working", dairy("pressure: 12 bar(g)", "pressure: 3 bar(g)", "relief: 13 bar(g)", "relief: 3 bar(g)"), dairy()},
		{"air on what burns", "common practice", "pressure/test_with_air_on_flammable", acetone("air"), acetone("nitrogen")},
		{"water that freezes in the test", "equation of state (computed)", "temperature/test_liquid_freezes", dairy("{lowest: 10 °C, normal: 15 °C, highest: 25 °C}", "{lowest: 0 °C, normal: 15 °C, highest: 25 °C}"), dairy()},
		{"water left where it freezes", "common practice", "temperature/test_liquid_left_in_frost", dairy("site: {lowest: 5 °C", "site: {lowest: -5 °C", "      dried: yes\n", ""), dairy("site: {lowest: 5 °C", "site: {lowest: -5 °C")},
		{"steam hotter than it is stated", "IAPWS R7-97 (recalled): 3 bar(g) is 143.8 °C", "temperature/steam_hotter_than_stated", dairy("vapour_pressure: 1.5 bar(g)", "vapour_pressure: 3 bar(g)"), dairy("vapour_pressure: 1.5 bar(g)", "vapour_pressure: 1.6 bar(g)")},
		{"a seal too weak for the steam", "EPDM to 150 °C (catalog)", "temperature/seal_above_limit",
			dairy("vapour_pressure: 1.5 bar(g)", "vapour_pressure: 5 bar(g)", "highest: 128 °C", "highest: 160 °C"), dairy()},
		{"a part too weak for the steam", "the highest pressure of the supply (computed)", tooWeak,
			dairy("vapour_pressure: 1.5 bar(g)", "vapour_pressure: 10.5 bar(g)", "highest: 128 °C", "highest: 187 °C"), dairy()},
		{"a vessel that steam sucks flat", "common practice", "pressure/vacuum_beyond_vessel", dairy("    vacuum: -1 bar(g)\n    evidence: vessel", "    vacuum: -0.2 bar(g)\n    evidence: vessel"), dairy()},
		{"the same with a vacuum breaker", "common practice", "pressure/vacuum_beyond_vessel", dairy("    vacuum: -1 bar(g)\n    evidence: vessel", "    vacuum: -0.2 bar(g)\n    evidence: vessel"),
			dairy("    vacuum: -1 bar(g)\n    evidence: vessel", "    vacuum: -0.2 bar(g)\n    evidence: vessel", "kdr: 0.7}", "kdr: 0.7, vacuum: -0.2 bar(g)}")},
		{"a hose that steam sucks flat", "common practice", "pressure/vacuum_beyond_hose", dairy("        vacuum: -1 bar(g)\n        burst", "        vacuum: -0.9 bar(g)\n        burst"), dairy()},
	})
}

// What a sheet leaves out about a test or about steam is never a pass.
func TestCasesOfTheirOwnUnknown(t *testing.T) {
	for name, edit := range map[string][2]string{
		"vacuum of the vessel":   {"    vacuum: -1 bar(g)\n    evidence: vessel", "    evidence: vessel"},
		"how hot the steam is":   {"vapour_pressure: 1.5 bar(g), evidence: plate of the reducing station CI-31,\n          temperature: {lowest: 100 °C, normal: 127 °C, highest: 128 °C}", "temperature: {lowest: 100 °C}"},
		"an open vessel in it":   {"[kitchen, P1, vessel]", "[P1, vessel]"},
		"rating of what is in":   {"        rated: 10 bar(g)\n        vacuum", "        vacuum"},
		"where the lines freeze": {"site: {lowest: 5 °C, ", "site: {"},
	} {
		edits := []string{edit[0], edit[1]}
		if name == "where the lines freeze" {
			edits = append(edits, "      dried: yes\n", "")
		}
		v := judgeText(t, variant(t, "dairy-steamed", edits...))
		assert.Contains(t, []report.Word{report.Unproven, report.Unfit}, v.Word, name)
		require.NotEmpty(t, v.Unjudged, name)
	}
}
