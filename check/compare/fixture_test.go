package compare_test

import (
	"context"
	"fmt"
	"path/filepath"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/require"

	"os"

	"lineworthy/catalog"
	"lineworthy/check"
	"lineworthy/check/compare"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

var engine = sync.OnceValues(func() (*check.Engine, error) {
	return check.New(context.Background(), check.Options{Version: "test", AsOf: units.Date{Days: 20782}}) // 2026-11-25
})

// text is a shipped line with edits: old text, new text and so on. Every old text must be there.
func text(t testing.TB, name string, edits ...string) string {
	t.Helper()
	data, err := os.ReadFile(filepath.Join("..", "..", "testdata", "lines", name, "line.yaml"))
	require.NoError(t, err)
	out := string(data)
	for i := 0; i < len(edits); i += 2 {
		require.Contains(t, out, edits[i])
		out = strings.Replace(out, edits[i], edits[i+1], 1)
	}
	return out
}

func judged(t testing.TB, yaml string) compare.Input {
	t.Helper()
	e, err := engine()
	require.NoError(t, err)
	in := compare.Input{}
	in.Sheet, err = sheet.Parse("line.yaml", []byte(yaml))
	require.NoError(t, err)
	in.Facts, err = e.Facts(in.Sheet)
	require.NoError(t, err)
	in.Verdict, err = e.Check(context.Background(), in.Sheet)
	require.NoError(t, err)
	return in
}

func review(t testing.TB, before, after string) *compare.Review {
	t.Helper()
	return compare.Sheets(judged(t, before), judged(t, after), catalog.Open())
}

// told are the changes in short, those of the design apart from the rest.
func told(r *compare.Review) (design, records []string) {
	for _, c := range r.Changes {
		line := strings.TrimSpace(fmt.Sprintf("%s %s", c.Thing, c.Key))
		switch {
		case c.What != "changed":
			line = c.What + " " + line
		default:
			line += ": " + c.Was + " > " + c.Now
		}
		if c.Design {
			design = append(design, line)
		} else {
			records = append(records, line)
		}
	}
	return design, records
}

// went are the findings by the way they go: way, rule.
func went(r *compare.Review) map[string][]string {
	out := map[string][]string{}
	for _, m := range r.Findings {
		out[m.Way] = append(out[m.Way], m.Rule)
	}
	return out
}
