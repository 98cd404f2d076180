package check_test

import (
	"bytes"
	"flag"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"lineworthy/check/report"
)

var update = flag.Bool("update", false, "write the want files anew")

// TestLines holds every shipped line to its whole verdict as a person reads it: testdata/lines/<case>/want.txt.
func TestLines(t *testing.T) {
	paths, err := filepath.Glob(linePath("*"))
	require.NoError(t, err)
	require.GreaterOrEqual(t, len(paths), 9)
	for _, path := range paths {
		t.Run(filepath.Base(filepath.Dir(path)), func(t *testing.T) {
			var got bytes.Buffer
			v := judge(t, path)
			v.Digests.Catalog, v.Tool.Engine = map[string]string{}, "OPA" // a changed remark in a row is no changed verdict
			v.Digests.Rules, v.Digests.Facts = v.Digests.Sheet, v.Digests.Sheet
			require.NoError(t, report.Text(&got, v, report.Options{Width: 100}))
			want := filepath.Join(filepath.Dir(path), "want.txt")
			if *update {
				require.NoError(t, os.WriteFile(want, got.Bytes(), 0o644))
			}
			old, err := os.ReadFile(want)
			require.NoError(t, err)
			require.Equal(t, string(old), got.String(), "run go test ./check -update and read what changed")
		})
	}
}
