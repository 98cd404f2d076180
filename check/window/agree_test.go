package window_test

import (
	"context"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/catalog"
	"lineworthy/check/report"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
	"lineworthy/check/window"
)

// TestCasesAgree: on no shipped line does the window show a case that is not held where the check finds nothing against it.
func TestCasesAgree(t *testing.T) {
	files, err := filepath.Glob("../../testdata/lines/*/line.yaml")
	require.NoError(t, err)
	require.NotEmpty(t, files)
	e, err := engine()
	require.NoError(t, err)
	for _, file := range files {
		line, err := sheet.Read(file)
		require.NoError(t, err)
		r, err := window.Of(line, catalog.Open(), units.Date{Days: 20782})
		require.NoError(t, err)
		v, err := e.Check(context.Background(), line)
		require.NoError(t, err)
		if v.Word == report.Unfit {
			continue
		}
		for _, s := range r.Scopes {
			for _, p := range s.Points {
				assert.NotEqual(t, "no", p.Held, "%s: %s, %s of %s: %s", file, s.ID, p.Case, p.Run, p.Least)
			}
		}
	}
}
