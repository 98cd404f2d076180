package sequence_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"lineworthy/check/sequence"
)

// without is a sheet of the tests with one text taken out of it.
func without(t *testing.T, path, text string) string {
	t.Helper()
	return changed(t, path, text, "")
}

// changed is a sheet of the tests with one text put in the place of another.
func changed(t *testing.T, path, text, by string) string {
	t.Helper()
	all, err := os.ReadFile("../../testdata/sequences/" + path)
	require.NoError(t, err)
	require.Contains(t, string(all), text)
	out := filepath.Join(t.TempDir(), "line.yaml")
	require.NoError(t, os.WriteFile(out, []byte(strings.Replace(string(all), text, by, 1)), 0o644))
	return out
}

// TestSetNotStated: a regulator whose pressure nobody stated is asked for, and no vacuum or lack of drive is made up of it.
func TestSetNotStated(t *testing.T) {
	path := without(t, "pad/line.yaml", ", set: 3 bar(g)")
	m := model(t, path)
	steps := m.Derive().Steps
	out, err := m.Play(steps)
	require.NoError(t, err)
	require.Empty(t, out.Faults)
	require.Len(t, out.Open, 1)
	require.Contains(t, out.Open[0], "the set pressure of PR1: write set under PR1")
	for i := range steps {
		if steps[i].Do == "set" && steps[i].Pressure == "" {
			steps[i].Pressure = "3 bar(g)"
		}
	}
	out, err = model(t, path).Play(steps)
	require.NoError(t, err)
	require.NotContains(t, names(out), sequence.SetTooHigh)
	require.Len(t, out.Open, 1)
}

// TestVentNotStated: whether a vessel breathes is asked for, and not guessed either way.
func TestVentNotStated(t *testing.T) {
	m := model(t, without(t, "pump/line.yaml", ", vent: open"))
	out, err := m.Play(m.Derive().Steps)
	require.NoError(t, err)
	require.NotContains(t, names(out), sequence.Vacuum)
	require.Contains(t, strings.Join(out.Open, ""), "write vessels.container.vent in the sheet")
}
