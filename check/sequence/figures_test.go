package sequence_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// TestFigures: 800 L at 4 m3/h take 12 min; as an ideal gas, 800 L at 3 bar over the atmosphere are
// 0.8 (3 + 1.01325)/1.01325 = 3.17 m3 of free gas (computed by hand).
func TestFigures(t *testing.T) {
	said := map[string]string{}
	for _, f := range model(t, "../../testdata/sequences/pad/line.yaml").Figures() {
		said[f.What] = f.Says
	}
	require.Equal(t, "800 L", said["quantity"])
	require.Contains(t, said["expected time"], "about 12 min")
	require.Contains(t, said["gas"], "about 3.2 m3 of free gas through PR1")
	require.Equal(t, "mixer from 50 % to 90 %", said["stop level"])
	require.Contains(t, said["stop in any case"], "mixer at 95 %")
	require.Contains(t, said["stop in any case"], "after 900 L")
	require.Equal(t, "returnable from 85 % to 5 %", said["source"])
}

// TestLiquefiedGas: a liquefied gas gets more room than a liquid.
func TestLiquefiedGas(t *testing.T) {
	for _, f := range model(t, "../../testdata/lines/ammonia-nurse/line.yaml").Figures() {
		if f.What == "stop in any case" {
			require.Contains(t, f.Says, "trailer at 80 %")
			require.Contains(t, f.Says, "after 2850 L") // (80 % - 5 %) of 3.8 m3
		}
	}
}
