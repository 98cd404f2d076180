package sequence_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"lineworthy/check/sequence"
)

// effort finds one that holds time, or gas.
func effort(t *testing.T, all []sequence.Effort, run string, gas bool, nth int) sequence.Effort {
	t.Helper()
	for _, e := range all {
		if e.Run == run && (e.GasL != nil) == gas {
			if nth--; nth < 0 {
				return e
			}
		}
	}
	t.Fatalf("no such effort of %q in %+v", run, all)
	return sequence.Effort{}
}

// TestEffort, by hand: 800 L at 4 m3/h take 12 min. As an ideal gas at 15 °C, 150 L of ullage from 0 to 3 bar take
// 0.15 x 3/1.01325 = 0.444 m3 of free gas, and 800 L at 3 bar take 0.8 x 4.01325/1.01325 = 3.169 m3; nitrogen at these
// pressures packs within 1 % of that (Span et al. 2000, see check/measure). A cylinder of 50 L gives from 200 to 8 bar
// as an ideal gas 0.05 x 192/1.01325 = 9.5 m3, so 3.6 m3 are 0.38 of one, and real nitrogen a little less or more.
func TestEffort(t *testing.T) {
	m := model(t, "../../testdata/sequences/pad/line.yaml")
	s := m.Derive()
	out, err := m.Play(s.Steps)
	require.NoError(t, err)
	moving := effort(t, out.Efforts, "liquid", false, 0)
	require.Equal(t, int64(12), *moving.Minutes)
	require.Equal(t, "transfer", s.Steps[moving.Step-1].Do)
	require.Contains(t, moving.Says, "stop at 70 % in mixer") // 50 % + 800 L of 4 m3
	raising, following := effort(t, out.Efforts, "pad", true, 0), effort(t, out.Efforts, "pad", true, 1)
	require.Equal(t, "set", s.Steps[raising.Step-1].Do)
	require.InEpsilon(t, 444, *raising.GasL, 0.01)
	require.Equal(t, "transfer", s.Steps[following.Step-1].Do)
	require.InEpsilon(t, 3169, *following.GasL, 0.01)
	whole := effort(t, out.Total, "pad", true, 0)
	require.Equal(t, *raising.GasL+*following.GasL, *whole.GasL)
	require.InDelta(t, 380, *whole.Cylinders, 40)
	require.Equal(t, int64(12), *effort(t, out.Total, "", false, 0).Minutes)
}

// TestEffortUnknown: what is not stated is said, and a sum without it is no more than a least.
func TestEffortUnknown(t *testing.T) {
	out, err := model(t, "../../testdata/lines/palm-oil-tanker/line.yaml").Play([]sequence.Step{{Do: "transfer"}, {Do: "transfer", Quantity: "5 m3"}})
	require.NoError(t, err)
	require.Nil(t, out.Total[0].Minutes)
	require.Contains(t, out.Total[0].Says, "runs.liquid.flow is not stated")
}

// TestFlushTime: 30 L at 4 m3/h are under half a minute, which counts as one; 900 L take 14 (13.5 rounded up).
func TestFlushTime(t *testing.T) {
	out := played(t, "flush/not_flushed_corrected")
	require.Equal(t, int64(14+1), *out.Total[0].Minutes)
}
