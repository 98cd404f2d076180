package sequence_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"lineworthy/check/sequence"
)

// pumped plays the line whose vessel is closed: the gas is let in at a set pressure, shut, and then so much is pumped.
func pumped(t *testing.T, set, quantity string) *sequence.Outcome {
	t.Helper()
	out, err := model(t, "../../testdata/sequences/closed/line.yaml").Play([]sequence.Step{
		{Do: "connect", Item: "H1"}, {Do: "connect", Item: "H2"}, {Do: "open", Item: "source", Run: "pad"}, {Do: "set", Item: "PR1", Pressure: set},
		{Do: "close", Item: "source", Run: "pad"}, {Do: "open", Item: "V2"}, {Do: "open", Item: "V1"}, {Do: "start", Item: "P1"},
		{Do: "transfer", Quantity: quantity},
	})
	require.NoError(t, err)
	return out
}

// TestVacuum, by Boyle: 200 L of gas at 101.3 kPa that grow by 600 L come to 101.3 x 200/800 = 25 kPa absolute. At
// 0.2 bar(g), 121.3 kPa, they come down to 101.3 kPa when they have grown by 200 x 20/101.3 = 39.5 L.
func TestVacuum(t *testing.T) {
	require.Contains(t, played(t, "closed/no_gas").Faults[0].Says, "falls to about 25 kPa absolute, against 101 kPa outside")
	for quantity, fault := range map[string]bool{"39 L": false, "39.5 L": false, "44 L": true, "600 L": true} {
		got := names(pumped(t, "0.2 bar(g)", quantity))
		if fault {
			require.Contains(t, got, sequence.Vacuum, quantity)
		} else {
			require.NotContains(t, got, sequence.Vacuum, quantity)
		}
	}
}

// TestNoVacuum: an open vent, a gas that follows, and a liquefied gas that boils keep the pressure up.
func TestNoVacuum(t *testing.T) {
	for _, path := range []string{"sequences/pump", "sequences/closed", "sequences/pad", "lines/ammonia-nurse", "lines/lpg-bobtail"} {
		m := model(t, "../../testdata/"+path+"/line.yaml")
		out, err := m.Play(m.Derive().Steps)
		require.NoError(t, err)
		require.NotContains(t, names(out), sequence.Vacuum, path)
		require.Empty(t, out.Open, path)
	}
}
