package facts_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/check/facts"
)

// tested is the base line with the liquid run under a pressure test, as edits.
func tested(test string, more ...string) []string {
	return append([]string{
		"vessels:\n  tote", "  probe: {fluid: water, role: test, temperature: {lowest: 5 °C, highest: 25 °C}}\n  air: {fluid: air, role: test}\n" +
			"  gas: {fluid: nitrogen, role: test}\n  light: {fluid: helium, role: test}\nvessels:\n  tote",
		"    source: {vessel: tote, outlet: liquid, head: 1 m}\n", "    test: {" + test + "}\n    source: {vessel: tote, outlet: liquid, head: 1 m}\n",
	}, more...)
}

const both = "isolated: [tote, tank]"

func theTest(t require.TestingT, edits []string) facts.Test {
	f := build(t, edits...)
	require.Len(t, f.Tests, 1)
	return f.Tests[0]
}

func testItem(t require.TestingT, f *facts.Facts, id string) facts.TestItem {
	return find(t, f.TestItems, id+" in the test of liquid", func(i facts.TestItem) string { return i.ID })
}

func TestNoTestNoFacts(t *testing.T) {
	f := build(t)
	assert.Empty(t, f.Tests)
	assert.Empty(t, f.TestItems)
	assert.Empty(t, f.Steams)
}

// 15 bar over EN 12115 hose of 10 bar (published) with a proof ratio of 1.5 (restated).
func TestItemsOfTheTest(t *testing.T) {
	f := build(t, tested("fluid: probe, pressure: 15 bar(g), "+both)...)
	h := testItem(t, f, "H1 hose")
	assert.Equal(t, []facts.Int{facts.Know(1000), facts.Know(1500), facts.Know(1500), facts.Know(1500)}, []facts.Int{h.RatedKPa, h.TestKPa, h.Ratio, h.Proof})
	assert.False(t, h.Gas)
	for _, i := range f.TestItems {
		assert.NotEqual(t, "vessel", i.What, "both vessels are kept out")
		assert.NotContains(t, i.ID, " to ", "a blank brings a gasket of its own")
	}
	past := testItem(t, build(t, tested("fluid: probe, pressure: 15.01 bar(g), "+both)...), "H1 hose")
	assert.Equal(t, facts.Know(1501), past.Ratio, "rounded up")
}

// What is not kept out is in the test.
func TestVesselsInTheTest(t *testing.T) {
	f := build(t, tested("fluid: probe, pressure: 12 bar(g)")...)
	assert.Equal(t, facts.Know(1000), testItem(t, f, "tote vessel").RatedKPa)
	open := testItem(t, f, "tank vessel")
	assert.False(t, open.Ratio.Known)
	assert.Contains(t, why(f, open.ID, "test_items.test_ratio_permille"), "open to the air")
	plate := []string{"rated: 10 bar(g)\n    evidence: plate\n    vent: closed", "rated: 10 bar(g)\n    test_pressure: 15 bar(g)\n    evidence: plate\n    vent: closed"}
	f = build(t, tested("fluid: probe, pressure: 12 bar(g)", plate...)...)
	assert.Equal(t, facts.Know(1500), testItem(t, f, "tote vessel").RatedKPa, "liquid up to the test pressure of its plate")
	f = build(t, tested("fluid: gas, pressure: 12 bar(g)", plate...)...)
	assert.Equal(t, facts.Know(1000), testItem(t, f, "tote vessel").RatedKPa, "gas up to its rating")
}

// A test stands alone: nothing of the transfer changes for it, and it changes nothing there.
func TestATestIsACaseOfItsOwn(t *testing.T) {
	plain, f := build(t), build(t, tested("fluid: gas, pressure: 9 bar(g), "+both)...)
	assert.Equal(t, plain.Capacities, f.Capacities)
	assert.Equal(t, plain.Hoses, f.Hoses)
	assert.Equal(t, plain.Sections, f.Sections)
	c := find(t, f.Cases, "liquid/pressure-test/", func(c facts.Case) string { return c.ID })
	assert.Equal(t, facts.Know(900), c.KPa)
	assert.Equal(t, "the pressure test with Nitrogen", c.Cause)
	assert.Equal(t, len(plain.Cases)+1, len(f.Cases))
}

func TestReliefInTheTest(t *testing.T) {
	pad := []string{"    source: {cylinder: 200 bar(g)}\n", "    test: {fluid: gas, pressure: 5 bar(g), isolated: [PR1]}\n    source: {cylinder: 200 bar(g)}\n"}
	text := edited(t, "fluid: nitrogen, dryness: dry, oil_free: yes}\n", "fluid: nitrogen, dryness: dry, oil_free: yes}\n  gas: {fluid: nitrogen, role: test}\n", pad[0], pad[1])
	f := of(t, text)
	rv := find(t, f.TestItems, "RV1 set pressure in the test of gas", func(i facts.TestItem) string { return i.ID })
	assert.Equal(t, "relief", rv.What)
	assert.Equal(t, facts.Know(600), rv.RatedKPa)
	assert.False(t, f.Tests[0].Isolated)
	f = of(t, strings.Replace(text, "isolated: [PR1]", "isolated: [PR1, RV1]", 1))
	assert.True(t, f.Tests[0].Isolated)
	assert.Equal(t, "RV1", f.Tests[0].IsolatedWhat)
	for _, i := range f.TestItems {
		assert.NotEqual(t, "RV1", i.Part)
		assert.NotEqual(t, "PR1", i.Part)
	}
}

// 3 m of DN 50 at 10 bar(g): by ASME PCC-2:2008 Appendix II (published) 5.890 L hold 8.0 kJ, and 30 m is the least.
func TestKeepOff(t *testing.T) {
	long := []string{"        size: DN 50\n        layers", "        size: DN 50\n        length: 3 m\n        layers"}
	x := theTest(t, tested("fluid: gas, pressure: 10 bar(g), "+both, long...))
	assert.Equal(t, facts.Know(30000), x.KeepOffMM)
	assert.False(t, theTest(t, tested("fluid: gas, pressure: 10 bar(g), "+both)).KeepOffMM.Known, "the length is not stated")
	assert.False(t, theTest(t, tested("fluid: probe, pressure: 10 bar(g), "+both, long...)).KeepOffMM.Known, "a liquid stores next to nothing")
	f := build(t, tested("fluid: gas, pressure: 10 bar(g), isolated: [tank]", long...)...)
	assert.Contains(t, why(f, "liquid", "tests.keep_off_mm"), "the volume of tote is not stated")
	// 1 m3 of nitrogen at 10 bar(g) and the hose: 1.3625 MJ and 8 kJ, 2 x 0.3212 kg TNT, 20 m/kg^(1/3): 17.3 m, so the 30 m stay;
	// 20 m3 give 46.8 m (V7.1, computed from the published formula).
	big := append([]string{"    filled: 60 %", "    volume: 20 m3\n    filled: 60 %"}, long...)
	x = theTest(t, tested("fluid: gas, pressure: 10 bar(g), isolated: [tank]", big...))
	assert.InDelta(t, 46750, float64(x.KeepOffMM.V), 100)
	other := theTest(t, tested("fluid: light, pressure: 10 bar(g), isolated: [tank]", big...))
	assert.Greater(t, other.KeepOffMM.V, x.KeepOffMM.V, "a gas that is not known counts as worse")
}

func TestFactsOfTheTest(t *testing.T) {
	x := theTest(t, tested("fluid: probe, pressure: 9 bar(g), relief: 9.5 bar(g), distance: 12 m, dried: yes, "+both))
	assert.Equal(t, []facts.Int{facts.Know(900), facts.Know(50), facts.Know(12000), facts.Know(27316), facts.Know(27815), facts.Know(27315)},
		[]facts.Int{x.TestKPa, x.ReliefOver, x.DistanceMM, x.FreezesCK, x.ColdestCK, x.PlaceCK})
	assert.True(t, x.Dried && x.ReliefStated && x.DistanceSaid && x.Flammable && x.DryService)
	assert.Equal(t, "Nitrogen", x.DryBecause, "the pad of the base line is stated dry")
	assert.True(t, x.WorkingKPa.Known)
	assert.True(t, theTest(t, tested("fluid: air, pressure: 9 bar(g), "+both)).Air)
	assert.False(t, theTest(t, tested("fluid: gas, pressure: 9 bar(g), "+both)).Air)
	none := theTest(t, tested("fluid: probe, pressure: 9 bar(g), "+both, "site: {lowest: 0 °C, highest: 40 °C", "site: {highest: 40 °C"))
	assert.False(t, none.PlaceCK.Known)
}

// Water shut in at 9 bar(g) and 5 °C, and warmed to the 40 °C of the shaded place: some hundred bar (vectors V3.1 to V3.10).
func TestTheTestLiquidWarms(t *testing.T) {
	x := theTest(t, tested("fluid: probe, pressure: 9 bar(g), "+both))
	assert.Greater(t, x.WarmedKPa.V, int64(5000))
	assert.False(t, theTest(t, tested("fluid: probe, pressure: 9 bar(g), relief: 9 bar(g), "+both)).WarmedKPa.Known, "a relief device lets it out")
	assert.False(t, theTest(t, tested("fluid: gas, pressure: 9 bar(g), "+both)).WarmedKPa.Known)
	f := build(t, tested("fluid: probe, pressure: 9 bar(g), "+both, "probe: {fluid: water, role: test, temperature: {lowest: 5 °C, highest: 25 °C}}", "probe: {fluid: mineral oil, role: test}")...)
	assert.NotEmpty(t, why(f, "liquid", "tests.warmed_kpa"))
}

// What a line is tested with meets its materials and its fluids, until it is dried.
func TestTheTestLiquidMeetsTheLine(t *testing.T) {
	f := build(t, tested("fluid: probe, pressure: 9 bar(g), "+both)...)
	pair(t, f, "H1 liner PTFE in probe")
	met := func(f *facts.Facts) bool {
		for _, m := range f.Meetings {
			if m.Where == "test" {
				return true
			}
		}
		return false
	}
	assert.True(t, met(f))
	assert.False(t, met(build(t, tested("fluid: probe, pressure: 9 bar(g), dried: yes, "+both)...)))
	assert.False(t, met(build(t)))
}
