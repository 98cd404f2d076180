package sequence_test

import (
	"context"
	"path/filepath"
	"sync"
	"testing"

	"github.com/stretchr/testify/require"

	"lineworthy/catalog"
	"lineworthy/check"
	"lineworthy/check/sequence"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

var asOf = units.Date{Days: 20782} // 2026-11-25

var engine = sync.OnceValues(func() (*check.Engine, error) {
	return check.New(context.Background(), check.Options{AsOf: asOf})
})

func model(t *testing.T, path string) *sequence.Model {
	t.Helper()
	s, err := sheet.Read(path)
	require.NoError(t, err)
	e, err := engine()
	require.NoError(t, err)
	f, err := e.Facts(s)
	require.NoError(t, err)
	m, err := sequence.New(s, catalog.Open(), asOf, f)
	require.NoError(t, err)
	return m
}

// TestDerivedShipped: what the program proposes is judged as hard as what a person writes.
func TestDerivedShipped(t *testing.T) {
	all, err := filepath.Glob("../../testdata/lines/*/line.yaml")
	require.NoError(t, err)
	require.NotEmpty(t, all)
	for _, path := range all {
		m := model(t, path)
		s := m.Derive()
		out, err := m.Play(s.Steps)
		require.NoError(t, err, path)
		require.Empty(t, out.Faults, path)
		require.Empty(t, out.Open, path)
	}
}
