package check_test

import (
	"context"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/check/report"
	"lineworthy/check/sheet"
)

// TestSummaryAgreesWithCheck: what a register is told of a line is what the whole verdict says.
func TestSummaryAgreesWithCheck(t *testing.T) {
	e, err := shared()
	require.NoError(t, err)
	paths, err := filepath.Glob("../testdata/lines/*/line.yaml")
	require.NoError(t, err)
	require.NotEmpty(t, paths)
	for _, path := range paths {
		t.Run(filepath.Base(filepath.Dir(path)), func(t *testing.T) {
			line, err := sheet.Read(path)
			require.NoError(t, err)
			whole, err := e.Check(context.Background(), line)
			require.NoError(t, err)
			var covered []string
			for _, j := range whole.Judged {
				covered = append(covered, j.Rule)
			}
			brief, err := e.Summary(context.Background(), line, covered...)
			require.NoError(t, err)
			assert.Equal(t, []any{whole.Word, whole.Reason, whole.AsOf, whole.Line, whole.Confirm, whole.Digests.Catalog},
				[]any{brief.Word, brief.Reason, brief.AsOf, brief.Line, brief.Confirm, brief.Digests.Catalog})
			assert.Equal(t, said(whole), said(brief))
			for i, j := range whole.Judged {
				assert.ElementsMatch(t, j.Judged, brief.Judged[i].Judged, j.Rule)
			}
		})
	}
}

// said is every finding and every missing fact, without places and rules that wait.
func said(v *report.Verdict) (out []string) {
	for _, f := range v.Findings {
		out = append(out, f.Severity, f.Rule, f.Subject, f.Message)
	}
	for _, u := range v.Unjudged {
		out = append(out, u.Subject, u.Fact, u.Why, u.Ask)
	}
	return out
}
