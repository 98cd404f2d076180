package facts_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"lineworthy/check/facts"
)

func vesselOf(t *testing.T, f *facts.Facts, id string) facts.Vessel {
	return find(t, f.Vessels, id, func(v facts.Vessel) string { return v.ID })
}

// hot is the base line with a product of 80 °C that the catalog knows well, in a place of 0 to 40 °C. Saturation of water
// by the steam tables (recalled): 47.4 kPa at 80 °C, 0.611 kPa at 0 °C; density 971.8 and 999.8 kg/m3.
func hot(more ...string) []string {
	return append([]string{"{fluid: butanone, concentration: 100 %, temperature: {lowest: 10 °C, highest: 40 °C}}",
		"{fluid: water, temperature: {lowest: 10 °C, highest: 80 °C}}"}, more...)
}

// closed takes the valveless end of the run away, so that the hose can be shut.
var closed = []string{"    rated: 1 bar(g)\n    evidence: plate\n    vent: open", "    rated: 1 bar(g)\n    evidence: plate\n    vent: closed"}

func TestHoseCools(t *testing.T) {
	h := hose(t, build(t, hot(closed...)...), "H1")
	assert.True(t, h.VacuumLikely)
	assert.Equal(t, "Water, shut in warm, that cools", h.VacuumCause)
	// 101.325 - [(101.325 - 47.4) 273.15/353.15 + 0.611] = 59.0 kPa by Dalton's law.
	assert.InDelta(t, 60, float64(h.VacuumNeedKPa.V), 1)
	assert.False(t, hose(t, build(t, hot()...), "H1").VacuumLikely, "its far end is open to the air")
	assert.False(t, hose(t, build(t, closed...), "H1").VacuumLikely, "no hotter than the place")
	assert.True(t, hose(t, build(t, append(closed, "site: {lowest: 0 °C, highest: 40 °C, ", "site: {lowest: 0 °C, highest: 39 °C, ")...), "H1").VacuumLikely)
}

func TestHoseCoolsToNobodyKnowsWhat(t *testing.T) {
	f := build(t, hot(append(closed, "site: {lowest: 0 °C, ", "site: {")...)...)
	h := hose(t, f, "H1")
	assert.True(t, h.VacuumLikely)
	assert.False(t, h.VacuumNeedKPa.Known)
	assert.Contains(t, why(f, "H1", "hoses.vacuum_need_kpa"), "how cold")
}

// Butane boils at -0.5 °C (handbook value): shut in at 10 °C it is vapour under pressure, and at -15 °C it pulls.
func TestVapourCondensesAsItCools(t *testing.T) {
	butane := append([]string{"fluid: butanone, concentration: 100 %", "fluid: butane", "lowest: 0 °C, highest: 40 °C", "lowest: -15 °C, highest: 40 °C"}, closed...)
	h := hose(t, build(t, butane...), "H1")
	assert.True(t, h.VacuumLikely)
	assert.InDelta(t, 101.3-56.5, float64(h.VacuumNeedKPa.V), 2, "butane at -15 °C: 56.5 kPa by the equation of state")
	warm := append([]string{"fluid: butanone, concentration: 100 %", "fluid: butane"}, closed...)
	assert.False(t, hose(t, build(t, warm...), "H1").VacuumLikely, "at 0 °C it still pushes")
}

// A warm gas follows its temperature: shut in at the air's pressure 101.325 (1 - 273.15/353.15) = 23.0 kPa, at 0.1 bar(g)
// 111.3 x 0.7735 = 86.1 kPa and so 15.2 kPa, and at 3 bar(g) none.
func TestWarmGasCools(t *testing.T) {
	for set, want := range map[string]int64{"0 bar(g)": 23, "0.1 bar(g)": 16} {
		warm := append([]string{"pad: {fluid: nitrogen,", "pad: {fluid: nitrogen, temperature: {highest: 80 °C},", "carries: [product, pad]", "carries: [pad]",
			"source: {vessel: tote, outlet: liquid, head: 1 m}", "source: {supply: " + set + "}"}, closed...)
		h := hose(t, build(t, warm...), "H1")
		assert.Equal(t, facts.Know(want), h.VacuumNeedKPa, set)
		assert.Equal(t, "Nitrogen, shut in warm, that cools", h.VacuumCause)
	}
	f := build(t, append([]string{"pad: {fluid: nitrogen,", "pad: {fluid: nitrogen, temperature: {highest: 80 °C},"}, closed...)...)
	assert.False(t, hose(t, f, "H1").VacuumLikely, "at 3 bar(g)")
}

// By the wall that 80 bar(g) asks for, 0.0235 of its radius: 238 kPa (see the method), more than any vacuum. A plastic
// wall, or a thin one, is for the maker to speak of.
func TestWallStandsVacuum(t *testing.T) {
	thick := []string{"    rated: 1 bar(g)\n    evidence: plate\n    vent: open", "    rated: 80 bar(g)\n    evidence: plate\n    vent: closed"}
	assert.Equal(t, facts.Know(100), vesselOf(t, build(t, hot(thick...)...), "tank").VacuumHaveKPa)
	thin := []string{thick[0], "    rated: 55 bar(g)\n    evidence: plate\n    vent: closed"}
	assert.False(t, vesselOf(t, build(t, hot(thin...)...), "tank").VacuumHaveKPa.Known)
	plastic := append(hot(thick...), "vent: closed\n    material: S31603\n    points:\n      fill", "vent: closed\n    material: PE-HD\n    points:\n      fill")
	assert.False(t, vesselOf(t, build(t, plastic...), "tank").VacuumHaveKPa.Known)
}

func TestVesselCools(t *testing.T) {
	f := build(t, hot(closed...)...)
	assert.False(t, vesselOf(t, f, "tote").VacuumLikely, "its pad of 3 bar stays above the air")
	tank := vesselOf(t, f, "tank")
	assert.True(t, tank.VacuumLikely)
	assert.Equal(t, facts.Know(100), tank.VacuumNeedKPa, "how full it is shut is not stated: only the vapour counts")
	assert.False(t, tank.VacuumHaveKPa.Known)
	assert.False(t, vesselOf(t, build(t, hot()...), "tank").VacuumLikely, "open to the air")
	assert.False(t, vesselOf(t, build(t, closed...), "tank").VacuumLikely, "no hotter than the place")
}

// 20 % filled and 30 % more: half full of water, which shrinks by 2.8 % and gives the gas 1.4 points more room.
// 101.325 - [(101.325 - 47.4) (0.5/0.512) 273.15/353.15 + 0.611] = 60.0 kPa.
func TestVesselShrinksAndCools(t *testing.T) {
	filled := append([]string{"    to: {vessel: tank, inlet: fill}", "    to: {vessel: tank, inlet: fill}\n    quantity: 300 L"},
		"    rated: 1 bar(g)\n    evidence: plate\n    vent: open", "    volume: 1 m3\n    filled: 20 %\n    vacuum: -0.3 bar(g)\n    rated: 1 bar(g)\n    evidence: plate\n    vent: closed")
	tank := vesselOf(t, build(t, hot(filled...)...), "tank")
	assert.InDelta(t, 60.5, float64(tank.VacuumNeedKPa.V), 1)
	assert.Equal(t, facts.Know(30), tank.VacuumHaveKPa)
	breaker := append(filled, "    vacuum: -0.3 bar(g)\n", "    vacuum: -0.3 bar(g)\n    relief: {set: 0.8 bar(g), vacuum: -0.05 bar(g)}\n")
	assert.Equal(t, facts.Know(5), vesselOf(t, build(t, hot(breaker...)...), "tank").VacuumNeedKPa, "a breaker lets air in first")
}

func TestVesselSteamCondenses(t *testing.T) {
	f := build(t, steamed(", temperature: {highest: 144 °C}", closed...)...)
	tank := vesselOf(t, f, "tank")
	assert.True(t, tank.VacuumLikely)
	assert.Equal(t, "steam that condenses in it", tank.VacuumCause)
	assert.Equal(t, facts.Know(100), tank.VacuumNeedKPa)
	assert.False(t, vesselOf(t, build(t, steamed(", temperature: {highest: 144 °C}")...), "tank").VacuumLikely, "open to the air")
	assert.Equal(t, facts.Know(100), hose(t, f, "H1").VacuumNeedKPa, "and the hose")
}
