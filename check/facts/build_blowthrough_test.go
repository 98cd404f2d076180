package facts_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/check/facts"
)

func liquidFlow(t *testing.T, edits ...string) (facts.Flow, *facts.Facts) {
	f := build(t, edits...)
	require.Len(t, f.Flows, 1)
	return f.Flows[0], f
}

// TestBlowThrough, by hand: nitrogen at 3.3 bar(g) and 15 °C, 4.313 bar(a) and 5.04 kg/m3, through 50 mm with the entry, the
// exit and one part, K 2.5. It chokes at 0.441 of that: w/A = sqrt(5.04 x 431300 x 0.805/4.137) = 651 kg/(s m2), 1.28 kg/s,
// at 1.185 kg/m3 1.08 m3/s (Crane TP-410, isothermal flow, restated).
func TestBlowThrough(t *testing.T) {
	x, _ := liquidFlow(t)
	assert.True(t, x.GasFollows)
	assert.False(t, x.VentSaid)
	assert.InEpsilon(t, 1.078e6, x.FollowsMLPS.V, 5e-3)
	long, _ := liquidFlow(t, "        size: DN 50\n", "        size: DN 50\n        length: 20 m\n")
	assert.Less(t, long.FollowsMLPS.V, x.FollowsMLPS.V)
	narrow, _ := liquidFlow(t, "      - id: H1\n", "      - {id: V1, kind: valve, size: DN 25, material: S31603, evidence: e}\n      - id: H1\n")
	assert.Less(t, narrow.FollowsMLPS.V, x.FollowsMLPS.V/3, "a quarter of the bore area")
}

// TestVentCapacity: what the sheet states rounds down, and the verdict rests on the plate.
func TestVentCapacity(t *testing.T) {
	x, f := liquidFlow(t, "    vent: open\n", "    vent: open\n    vent_capacity: 3600.003 m3/h\n")
	assert.True(t, x.VentSaid)
	assert.Equal(t, facts.Know(1_000_000), x.VentMLPS)
	found := false
	for _, v := range f.Values {
		found = found || v.ID == "tank vent" && v.Standing == "site" && assert.Contains(t, v.What, "3600.003 m3/h")
	}
	assert.True(t, found)
}

// TestNothingBlowsThrough: what holds the pressure, what is closed and so held against it, and what no gas pushes.
func TestNothingBlowsThrough(t *testing.T) {
	for name, edits := range map[string][]string{
		"rated for just that": {"rated: 1 bar(g)", "rated: 3.3 bar(g)"},
		"closed":              {"vent: open", "vent: closed"},
		"vent not stated":     {"    vent: open\n", ""},
		"gas goes elsewhere":  {"to: {vessel: tote, inlet: gas}", "to: {vessel: tank, inlet: fill}"},
	} {
		x, _ := liquidFlow(t, edits...)
		assert.False(t, x.GasFollows, name)
		assert.False(t, x.FollowsMLPS.Known, name)
	}
	x, _ := liquidFlow(t, "rated: 1 bar(g)", "rated: 3.29 bar(g)")
	assert.True(t, x.GasFollows, "one past")
	x, _ = liquidFlow(t, "    rated: 1 bar(g)\n", "")
	assert.True(t, x.GasFollows, "no rating is none")
}

func TestBlowThroughNotKnown(t *testing.T) {
	for name, c := range map[string]struct {
		edits []string
		want  string
	}{
		"size":     {[]string{"      - id: H1\n", "      - {id: V1, kind: valve, material: S31603, evidence: e}\n      - id: H1\n"}, "size of V1"},
		"pressure": {[]string{"set: 3 bar(g), ", ""}, "pressure of gas"},
	} {
		x, f := liquidFlow(t, c.edits...)
		assert.True(t, x.GasFollows, name)
		assert.False(t, x.FollowsMLPS.Known, name)
		assert.Contains(t, why(f, "liquid", "flows.gas_follows_mlps"), c.want, name)
	}
}
