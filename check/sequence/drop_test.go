package sequence_test

import (
	"fmt"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"

	"lineworthy/check/sequence"
)

// TestDropped: no step that makes the line safe can be left out of a derived sequence unseen. A vent counts once, for the
// vents of one stretch stand in for each other.
func TestDropped(t *testing.T) {
	needed := map[string][]string{
		"pump":   {"connect", "open", "transfer", "stop", "close", "drain"},
		"pad":    {"bond", "connect", "open", "set", "transfer", "close", "drain"},
		"flush":  {"connect", "open", "transfer", "stop", "close", "drain", "flush"},
		"closed": {"connect", "open", "set", "transfer", "close", "drain"},
		"oxygen": {"connect"},
	}
	for line, words := range needed {
		path := "../../testdata/sequences/" + line + "/line.yaml"
		steps := model(t, path).Derive().Steps
		for i, s := range steps {
			if !slices.Contains(words, s.Do) {
				continue
			}
			out, err := model(t, path).Play(slices.Delete(slices.Clone(steps), i, i+1))
			require.NoError(t, err)
			require.NotEmpty(t, append(names(out), out.Open...), "%s without step %d %+v", line, i+1, s)
		}
	}
	path := "../../testdata/sequences/pad/line.yaml"
	steps := slices.DeleteFunc(model(t, path).Derive().Steps, func(s sequence.Step) bool { return s.Do == "vent" })
	out, err := model(t, path).Play(steps)
	require.NoError(t, err)
	require.Contains(t, names(out), sequence.UnderPressure)
	require.Contains(t, names(out), sequence.PadLeft)
}

// TestBackwards: nothing that is played backwards is silent.
func TestBackwards(t *testing.T) {
	for _, line := range []string{"pump", "pad", "oxygen", "flush", "closed"} {
		path := "../../testdata/sequences/" + line + "/line.yaml"
		steps := model(t, path).Derive().Steps
		slices.Reverse(steps)
		out, err := model(t, path).Play(steps)
		require.NoError(t, err)
		require.NotEmpty(t, out.Faults, line)
	}
}

// TestUnknownItem: all faults of the text are told at once.
func TestUnknownItem(t *testing.T) {
	_, err := model(t, "../../testdata/sequences/pad/line.yaml").Play([]sequence.Step{
		{Do: "open", Item: "V7"}, {Do: "set", Item: "PR1", Pressure: "3"}, {Do: "connect", Item: "V1"}, {Do: "start", Item: "H1"},
		{Do: "transfer", Quantity: "many"}, {Do: "bond", Item: "H1"}, {Do: "vent", Item: "nothing"}, {Do: "leap"},
	})
	for n := 1; n <= 8; n++ {
		require.ErrorContains(t, err, fmt.Sprintf("step %d:", n))
	}
}
