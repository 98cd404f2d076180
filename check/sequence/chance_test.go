package sequence_test

import (
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"lineworthy/check/sequence"
)

// TestChance: whatever is done in whatever order, the play ends, and every fault says what to do at a step that is there.
func TestChance(t *testing.T) {
	lines, err := filepath.Glob("../../testdata/*/*/line.yaml")
	require.NoError(t, err)
	require.NotEmpty(t, lines)
	rapid.Check(t, func(r *rapid.T) {
		path := rapid.SampledFrom(lines).Draw(r, "line")
		steps := model(t, path).Derive().Steps
		steps = append(steps, sequence.Step{Do: "transfer", Quantity: "3 m3", Run: lastRun(steps)})
		chosen := rapid.SliceOfN(rapid.SampledFrom(steps), 1, 40).Draw(r, "steps")
		out, err := model(t, path).Play(chosen)
		if err != nil {
			return // a transfer of a line without liquid
		}
		for _, f := range out.Faults {
			if f.Do == "" || f.Source == "" || f.Says == "" || f.Step < 1 || f.Step > len(chosen)+1 {
				r.Fatalf("%s: %+v", path, f)
			}
		}
	})
}

func lastRun(steps []sequence.Step) (run string) {
	for _, s := range steps {
		if s.Do == "transfer" {
			run = s.Run
		}
	}
	return run
}
