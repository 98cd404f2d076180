package facts_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"lineworthy/check/facts"
)

// steamed is the base line with its liquid run steamed out, as edits.
func steamed(steam string, more ...string) []string {
	return append([]string{
		"vessels:\n  tote", "  cleaner: {fluid: steam, role: flush" + steam + "}\nvessels:\n  tote",
		"carries: [product, pad]", "carries: [product, pad, cleaner]",
	}, more...)
}

// Steam tables (recalled): 3 bar(g) is 143.8 °C; 144 °C is 3.03 bar(g).
func TestSteamOutBySupply(t *testing.T) {
	f := build(t, steamed(", vapour_pressure: 3 bar(g), temperature: {highest: 144 °C}")...)
	assert.Len(t, f.Steams, 1)
	s := f.Steams[0]
	assert.True(t, s.Cleaning)
	assert.Equal(t, facts.Know(300), s.KPa)
	assert.InDelta(t, 41691, float64(s.SaturatedCK.V), 6)
	assert.Equal(t, facts.Know(41715), s.StatedCK)
	c := capacity(t, f, "H1 inlet in steam-out")
	assert.Equal(t, facts.Know(300), c.DemandKPa)
	assert.Equal(t, "steam-out", c.Case)
	assert.Equal(t, facts.Know(41715), c.TempCK)
	assert.Less(t, c.RatedKPa.V, capacity(t, f, "H1 inlet").RatedKPa.V, "a flange holds less at the heat of the steam")
	k := find(t, f.Cases, "liquid/steam-out/", func(c facts.Case) string { return c.ID })
	assert.Equal(t, facts.Know(300), k.KPa)
}

// Steam that is blown into a closed vessel stands in it, as far as its relief device lets it.
func TestSteamInTheVessel(t *testing.T) {
	said := ", vapour_pressure: 3 bar(g), temperature: {highest: 144 °C}"
	id := "tank vessel in steam-out of liquid"
	assert.NotContains(t, capacityIDs(build(t, steamed(said)...)), id, "open to the air")
	f := build(t, steamed(said, closed...)...)
	assert.Equal(t, facts.Know(300), capacity(t, f, id).DemandKPa)
	assert.False(t, find(t, f.Limits, "tank vessel", func(l facts.Limit) string { return l.ID }).HighestCK.Known, "the plate is asked for")
	relieved := []string{closed[0], "    relief: {set: 0.5 bar(g)}\n" + closed[1]}
	assert.Equal(t, facts.Know(55), capacity(t, build(t, steamed(said, relieved...)...), id).DemandKPa)
}

// Steam that is the product, or has no product beside it, is what the run is used for: its heat is that of use.
func TestSteamInUseIsNotCleaning(t *testing.T) {
	for _, edit := range [][2]string{{"role: flush", "role: product"}, {"carries: [product, pad, cleaner]", "carries: [pad, cleaner]"}} {
		edits := append(steamed(", temperature: {highest: 144 °C}"), edit[0], edit[1])
		f := build(t, edits...)
		assert.False(t, f.Steams[0].Cleaning, edit[1])
		assert.Equal(t, facts.Know(41715), capacity(t, f, "H1 inlet").TempCK, edit[1])
		for _, id := range capacityIDs(f) {
			assert.NotContains(t, id, "steam-out", edit[1])
		}
	}
}

func TestSteamOutByHeat(t *testing.T) {
	s := build(t, steamed(", temperature: {highest: 144 °C}")...).Steams[0]
	assert.InDelta(t, 303, float64(s.KPa.V), 3)
	assert.InDelta(t, 41715, float64(s.SaturatedCK.V), 2)
}

// A supply hotter than the sheet says counts as hot as it is.
func TestSteamOutHotterThanStated(t *testing.T) {
	f := build(t, steamed(", vapour_pressure: 6 bar(g), temperature: {highest: 144 °C}")...)
	assert.Greater(t, f.Steams[0].SaturatedCK.V, f.Steams[0].StatedCK.V+100)
	assert.Greater(t, capacity(t, f, "H1 inlet in steam-out").TempCK.V, int64(43700))
}

func TestSteamOutUnknown(t *testing.T) {
	for _, said := range []string{"", ", temperature: {highest: 90 °C}", ", temperature: {highest: 400 °C}"} {
		f := build(t, steamed(said)...)
		assert.False(t, f.Steams[0].KPa.Known, said)
		assert.NotEmpty(t, why(f, "cleaner in liquid", "steams.pressure_kpa"), said)
		assert.False(t, capacity(t, f, "H1 hose in steam-out, steam-out not known").DemandKPa.Known, said)
	}
}

// The steam is a case of its own: the pressure of use is judged at the heat of use, the temperature limits at that of the
// steam, and a line without steam is as it was.
func TestSteamOutIsNotAddedToUse(t *testing.T) {
	plain, f := build(t), build(t, steamed(", temperature: {highest: 144 °C}")...)
	for _, id := range []string{"H1 inlet", "H1 hose", "tote vessel"} {
		assert.Equal(t, capacity(t, plain, id), capacity(t, f, id))
	}
	for _, l := range f.Limits {
		if l.Part == "H1" {
			assert.Equal(t, facts.Know(41715), l.HottestCK, l.ID)
		}
	}
	for _, id := range capacityIDs(plain) {
		assert.NotContains(t, id, "steam-out")
	}
}
