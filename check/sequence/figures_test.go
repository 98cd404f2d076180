package sequence_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func TestFigures(t *testing.T) {
	said := map[string]string{}
	for _, f := range model(t, "../../testdata/sequences/pad/line.yaml").Figures() {
		said[f.What] = f.Says
	}
	require.Equal(t, "800 L", said["quantity"])
	require.Equal(t, "PR1 at 3.0 bar(g)", said["set pressure"])
	require.Equal(t, "mixer from 50 % to 70 %", said["stop level"])
	require.Contains(t, said["stop in any case"], "mixer at 95 %")
	require.Contains(t, said["stop in any case"], "after 1800 L")
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
