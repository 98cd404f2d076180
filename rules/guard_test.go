package rules

import (
	"encoding/json"
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestGuardsAreFresh wants the guards to be those of the texts.
func TestGuardsAreFresh(t *testing.T) {
	modules, err := read(here)
	require.NoError(t, err)
	want, err := json.Marshal(guarded(modules))
	require.NoError(t, err)
	if *update {
		require.NoError(t, os.WriteFile(guardFile, append(want, '\n'), 0o644))
	}
	got, err := os.ReadFile(guardFile)
	require.NoError(t, err)
	assert.True(t, string(want)+"\n" == string(got), "%s is not that of the rules: run go test ./rules -update", guardFile)
}

// guarded works out all guards.
func guarded(modules []Module) guards {
	g := guards{Digest: digest(modules), Rules: map[string]Guard{}}
	for _, l := range inspect(modules) {
		if l.mod != nil {
			g.Rules[l.id] = guardOf(l.mod)
		}
	}
	return g
}
