package sequence_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"lineworthy/check/sequence"
)

// filled plays the line with a closed tank, its return shut, changed by the pairs of old and new text.
func filled(t *testing.T, quantity string, changes ...string) *sequence.Outcome {
	t.Helper()
	return opened(t, quantity, sequence.Step{Do: "open", Item: "V1"}, changes...)
}

// opened does so with the last step before the pump starts.
func opened(t *testing.T, quantity string, last sequence.Step, changes ...string) *sequence.Outcome {
	t.Helper()
	text, err := os.ReadFile("../../testdata/sequences/return/line.yaml")
	require.NoError(t, err)
	path := filepath.Join(t.TempDir(), "line.yaml")
	require.NoError(t, os.WriteFile(path, []byte(strings.NewReplacer(changes...).Replace(string(text))), 0o644))
	out, err := model(t, path).Play([]sequence.Step{
		{Do: "connect", Item: "H1"}, {Do: "open", Item: "V2"}, last, {Do: "start", Item: "P1"}, {Do: "transfer", Quantity: quantity},
	})
	require.NoError(t, err)
	return out
}

// TestSqueezed, by Boyle: 1600 L of gas at 101.3 kPa come to 151.3 kPa, 50 above the air, in 1600 x 101.3/151.3 = 1071 L,
// so once 529 L came in; half a kilopascal more takes 532 L. At 0.2 bar(g) to begin with, 315 L do.
func TestSqueezed(t *testing.T) {
	pressed := "rated: 0.5 bar(g), pressure: 0.2 bar(g)"
	relief := "rated: 1 bar(g), relief: {set: 0.5 bar(g)}"
	for _, c := range []struct {
		quantity, state string
		want            bool
	}{
		{"528 L", "", false}, {"534 L", "", true}, {"300 L", pressed, false}, {"325 L", pressed, true},
		{"520 L", relief, false}, {"534 L", relief, true},
	} {
		changes := []string{}
		if c.state != "" {
			changes = []string{"rated: 0.5 bar(g)", c.state}
		}
		out := filled(t, c.quantity, changes...)
		require.Equal(t, c.want, strings.Contains(strings.Join(names(out), " "), sequence.Squeezed), "%+v %+v", c, out.Faults)
		require.Empty(t, out.Open, c)
	}
	out := filled(t, "900 L")
	require.Contains(t, out.Faults[0].Says, "comes to about 130 kPa") // 101.3 x 1600/700 = 231.6
}

// TestStalls: the pump brings 3.5 bar and 1.2 m of water at most, 463 kPa absolute; there the gas has shrunk to 350 L, once
// 1250 L came in. That its container is emptied before is another matter.
func TestStalls(t *testing.T) {
	strong := []string{"rated: 0.5 bar(g)", "rated: 10 bar(g)", "volume: 1000 L", "volume: 2000 L"}
	require.NotContains(t, names(filled(t, "1240 L", strong...)), sequence.Stalls)
	out := filled(t, "1260 L", strong...)
	require.Contains(t, names(out), sequence.Stalls)
	require.Contains(t, out.Faults[0].Says, "362 kPa")
	mains := []string{"rated: 0.5 bar(g)", "rated: 10 bar(g)", "source: {vessel: container, head: 1.2 m}", "source: {supply: 3 bar(g)}", "{id: V1, kind: valve", "{id: F1, kind: fitting", "closing: 2 s, size: DN 50}\n      - {id: P1", "size: DN 50}\n      - {id: P1"}
	out = opened(t, "1590 L", sequence.Step{Do: "open", Item: "source", Run: "liquid"}, mains...)
	require.Contains(t, names(out), sequence.Stalls, "a main drives no harder than it is")
	require.NotContains(t, names(out), sequence.Squeezed)
}

// TestNothingIsSqueezed: an open vent or a liquefied gas, whose vapour turns to liquid; and what nobody stated is asked for.
func TestNothingIsSqueezed(t *testing.T) {
	closed := "rated: 0.5 bar(g), vent: closed"
	require.NotContains(t, names(filled(t, "900 L", closed, "rated: 0.5 bar(g), vent: open")), sequence.Squeezed)
	for key, change := range map[string]string{".vent": "rated: 0.5 bar(g)", ".rated": "vent: closed"} {
		out := filled(t, "900 L", closed, change)
		require.NotContains(t, names(out), sequence.Squeezed, key)
		require.Contains(t, strings.Join(out.Open, "\n"), "vessels.tank"+key)
	}
	for _, name := range []string{"ammonia-nurse", "lpg-bobtail"} {
		m := model(t, "../../testdata/lines/"+name+"/line.yaml")
		out, err := m.Play(m.Derive().Steps)
		require.NoError(t, err)
		require.Empty(t, out.Faults, name)
	}
}
