package report

import (
	"bytes"
	"flag"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

var update = flag.Bool("update", false, "write the golden files and the schema anew")

func written(t *testing.T, w Writer, v *Verdict, o Options) string {
	t.Helper()
	var b bytes.Buffer
	require.NoError(t, w(&b, v, o))
	return b.String()
}

func golden(t *testing.T, path, got string) {
	t.Helper()
	if *update {
		require.NoError(t, os.WriteFile(path, []byte(got), 0o644))
	}
	want, err := os.ReadFile(path)
	require.NoError(t, err)
	assert.Equal(t, string(want), got, path)
}

var endings = map[string]string{"text": ".txt", "json": ".json", "markdown": ".md", "html": ".html", "sarif": ".sarif", "junit": ".xml"}

// long formats are kept for the two samples that hold the most.
var long = map[string]bool{"html": true, "sarif": true, "junit": true}

func TestReportsAreAsTheyWere(t *testing.T) {
	for name, v := range samples() {
		for _, format := range Formats() {
			if long[format] && name != "unfit" && name != "unproven" {
				continue
			}
			w, err := For(format)
			require.NoError(t, err)
			got := written(t, w, v, Options{})
			golden(t, "testdata/"+name+endings[format], got)
			if format != "json" && !long[format] {
				assert.Less(t, strings.Count(got, "\n"), 120, name+format)
			}
		}
	}
	golden(t, "testdata/unfit-narrow.txt", written(t, Text, unfitLine(), Options{Width: 60}))
	golden(t, "testdata/unproven-full.txt", written(t, Text, unprovenLine(), Options{Full: true}))
	golden(t, "testdata/unproven-full.md", written(t, Markdown, unprovenLine(), Options{Full: true}))
}

func TestSummaryIsAsItWas(t *testing.T) {
	all := []*Verdict{unfitLine(), fitLine(), conditionalLine(), unprovenLine(), fitLine()}
	var b bytes.Buffer
	require.NoError(t, Summary(&b, all, Options{Width: 80}))
	golden(t, "testdata/summary.txt", b.String())
	assertWidth(t, b.String(), 80)
	b.Reset()
	require.NoError(t, Summary(&b, nil, Options{}))
	assert.True(t, strings.HasPrefix(b.String(), "0 lines.\n"), b.String())
}

func TestASummaryWithAnUnsoundVerdictIsNotWritten(t *testing.T) {
	bad := unfitLine()
	bad.Word = Fit
	var b bytes.Buffer
	assert.ErrorContains(t, Summary(&b, []*Verdict{fitLine(), bad, nil}, Options{}), "KD-103")
	assert.Empty(t, b.String())
}
