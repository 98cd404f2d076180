package sequence_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"lineworthy/check/sequence"
)

// holds is what a stretch holds after a step; 0 for the end.
func holds(t *testing.T, o *sequence.Outcome, step int, from string) string {
	t.Helper()
	for i := len(o.Contents) - 1; i >= 0; i-- {
		if c := o.Contents[i]; c.From == from && (step == 0 || c.Step == step) {
			return c.Says
		}
	}
	t.Fatalf("nothing is said of the stretch from %s after step %d", from, step)
	return ""
}

// TestContents: which fluid stands where after the flush, and at the end.
func TestContents(t *testing.T) {
	good := played(t, "flush/not_flushed_corrected")
	require.Equal(t, "Water (flush)", holds(t, good, 10, "V1"))
	require.Equal(t, "empty, wet with Water (flush), H1 off", holds(t, good, 0, "V1"))
	bad := played(t, "flush/not_flushed")
	require.Equal(t, "empty, wet with Phosphoric acid, 75 to 85 %, H1 off", holds(t, bad, 0, "V1"))
}

// TestBlownOut: a gas dries a flush, and leaves a film of product.
func TestBlownOut(t *testing.T) {
	require.Equal(t, "blown out with Nitrogen (flush), a film of Sulfuric acid, 93 to 98 % stays, H1 off", holds(t, played(t, "reacts/water_on_acid_corrected"), 0, "V1"))
	require.Equal(t, "dry, blown out with Nitrogen (flush)", holds(t, played(t, "reacts/acid_on_water_corrected"), 4, "V1"))
}

// TestDerivedFlush: the flush goes to a drain where a valve keeps it out of the destination, else into the destination,
// and is three times what the stretch holds: 5 m of DN 50 hold pi/4 x 0.05^2 x 5 = 9.8 L, so 30 L.
func TestDerivedFlush(t *testing.T) {
	flushes := func(path string) (out []sequence.Step) {
		for _, s := range model(t, path).Derive().Steps {
			if s.Do == "flush" {
				out = append(out, s)
			}
		}
		return out
	}
	got := flushes("../../testdata/sequences/flush/line.yaml")
	require.Len(t, got, 1)
	require.Contains(t, got[0].Text, "behind V1, which stays closed")
	got[0].Text = ""
	require.Equal(t, sequence.Step{Do: "flush", Item: "H1", Fluid: "flush", Quantity: "30 L", To: "drain"}, got[0])
	got = flushes("../../testdata/lines/caustic-ibc/line.yaml") // no valve at the tank
	require.Len(t, got, 1)
	require.Empty(t, got[0].To)
	require.Empty(t, flushes("../../testdata/sequences/pump/line.yaml"))
}

// TestFlushAmount: below, at and past what the stretch holds (9.82 L by hand), and none stated.
func TestFlushAmount(t *testing.T) {
	for quantity, want := range map[string][]string{"9.8 L": {sequence.FlushShort}, "9.82 L": {}, "10 L": {}, "": {}} {
		m := model(t, "../../testdata/sequences/flush/line.yaml")
		out, err := m.Play([]sequence.Step{
			{Do: "connect", Item: "H1"}, {Do: "flush", Item: "H1", Quantity: quantity, To: "drain"}, {Do: "drain", Item: "H1"},
		})
		require.NoError(t, err)
		require.Equal(t, want, names(out), quantity)
		if quantity == "" {
			require.Contains(t, out.Open[0], "write quantity in the step; the stretch holds about 9.817 L")
		}
	}
}

// TestFlushRefused: a flush that the sheet does not show was never judged.
func TestFlushRefused(t *testing.T) {
	_, err := model(t, "../../testdata/sequences/pump/line.yaml").Play([]sequence.Step{{Do: "flush", Item: "H1"}})
	require.ErrorContains(t, err, "add a fluid with role: flush")
	_, err = model(t, "../../testdata/sequences/flush/line.yaml").Play([]sequence.Step{
		{Do: "flush", Item: "H1", Fluid: "product"}, {Do: "flush", Item: "H9"}, {Do: "flush", Item: "H1", To: "tank"}, {Do: "flush", Item: "H1", Quantity: "much"},
	})
	for _, want := range []string{`step 1: flush: fluid: "product" is not a flush`, `step 2: flush: "H9"`, `step 3: flush: to: "tank"`, "step 4:"} {
		require.ErrorContains(t, err, want)
	}
}
