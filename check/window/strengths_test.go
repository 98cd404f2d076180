package window_test

import (
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"lineworthy/catalog"
	"lineworthy/check/facts"
	"lineworthy/check/resolve"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

// TestStrengthsAreTheFacts: what the window takes each thing to hold at the hottest is, to the kilopascal, what the rules
// are told, known or not, and nothing that the rules judge is left out.
func TestStrengthsAreTheFacts(t *testing.T) {
	compared := 0
	allLines(t, func(t *testing.T, name string) {
		line, err := sheet.Read(filepath.Join("..", "..", "testdata", "lines", name, "line.yaml"))
		require.NoError(t, err)
		l, err := resolve.Resolve(line, catalog.Open(), resolve.Options{AsOf: units.Date{Days: 20782}})
		require.NoError(t, err)
		w, err := facts.Windows(l, catalog.Open())
		require.NoError(t, err)
		byID := map[string]facts.Strength{}
		for _, s := range w.Strengths {
			byID[s.ID] = s
		}
		for _, c := range w.Facts.Capacities {
			id, _, _ := strings.Cut(c.ID, ", ")
			id, _, _ = strings.Cut(id, " in ")
			s, ok := byID[id]
			require.True(t, ok, "%s is judged but not in the window", c.ID)
			if s.Hot == nil {
				require.False(t, c.RatedKPa.Known, c.ID)
				continue
			}
			at := *s.Hot
			if c.Case == "steam-out" { // a case of its own, at its own heat
				at = units.Temperature(float64(c.TempCK.V) / 100)
			}
			have, known := s.Known(at)
			require.Equal(t, c.RatedKPa.Known, known, "%s: %s", c.ID, s.Why)
			if known {
				kpa, err := units.KPaDown(have)
				require.NoError(t, err)
				require.Equal(t, c.RatedKPa.V, kpa, c.ID)
				compared++
			}
		}
	})
	require.Greater(t, compared, 200)
}
