package suggest_test

import (
	"context"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/require"

	"lineworthy/catalog"
	"lineworthy/check"
	"lineworthy/check/report"
	"lineworthy/check/sheet"
	"lineworthy/check/suggest"
	"lineworthy/check/units"
)

var today = units.Date{Days: 20782} // 2026-11-25

var engine = sync.OnceValues(func() (*check.Engine, error) {
	return check.New(context.Background(), check.Options{Version: "test", AsOf: today})
})

func linePath(name string) string {
	return filepath.Join("..", "..", "testdata", "lines", name, "line.yaml")
}

func suggestions(t testing.TB, name string, text []byte, o suggest.Options) *suggest.Result {
	e, err := engine()
	require.NoError(t, err)
	if o.AsOf = today; o.Limit == 0 {
		o.Limit = 5
	}
	r, err := suggest.For(context.Background(), e, catalog.Open(), name, text, o)
	require.NoError(t, err)
	return r
}

func forLine(t testing.TB, name string, o suggest.Options) *suggest.Result {
	text, err := os.ReadFile(linePath(name))
	require.NoError(t, err)
	return suggestions(t, linePath(name), text, o)
}

// judged reads a suggested sheet as check would read its file.
func judged(t testing.TB, text []byte) *report.Verdict {
	line, err := sheet.Parse("proposal.yaml", text)
	require.NoError(t, err, "%s", text)
	e, err := engine()
	require.NoError(t, err)
	v, err := e.Check(context.Background(), line)
	require.NoError(t, err)
	return v
}

// TestUnfitLinesAreCured closes the loop: for every unfit line that parts and work on the spot can cure, the written sheet
// is fit or conditional when check reads it, and no stop is left in it.
func TestUnfitLinesAreCured(t *testing.T) {
	for _, name := range []string{"caustic-drum", "ammonia-lpg-hose", "ethyl-acetate-tote", "acid-into-hypochlorite", "toluene-yard"} {
		t.Run(name, func(t *testing.T) {
			r := forLine(t, name, suggest.Options{})
			require.Equal(t, report.Unfit, r.Now)
			require.NotEmpty(t, r.Offers)
			require.True(t, r.AnyCured)
			best := judged(t, r.Offers[0].Text)
			require.Contains(t, []report.Word{report.Fit, report.Conditional}, best.Word)
			for _, f := range best.Findings {
				require.NotEqual(t, "stop", f.Severity, f.Message)
			}
			require.NotEmpty(t, r.Offers[0].Changes)
			require.NotEmpty(t, r.Offers[0].Needs)
		})
	}
}

// TestNoSuggestedPartFails: whatever is offered for any line, check says of the written sheet what the offer says, and
// nothing forbids a part that was put in.
func TestNoSuggestedPartFails(t *testing.T) {
	paths, err := filepath.Glob(linePath("*"))
	require.NoError(t, err)
	require.GreaterOrEqual(t, len(paths), 9)
	offers := 0
	for _, path := range paths {
		name := filepath.Base(filepath.Dir(path))
		t.Run(name, func(t *testing.T) {
			r := forLine(t, name, suggest.Options{})
			for _, o := range r.Offers {
				offers++
				v := judged(t, o.Text)
				require.Equal(t, o.Word, v.Word)
				for _, c := range o.Changes {
					for _, f := range v.Findings {
						about := f.Part == c.Where || f.Subject == c.Where || strings.HasPrefix(f.Subject, c.Where+" ")
						require.Falsef(t, about && f.Severity == "stop", "%s: %s", c.Where, f.Message)
					}
				}
			}
		})
	}
	require.Greater(t, offers, 8)
}

// TestNoPartCures: between what a vessel sees in ordinary operation and what it holds no set pressure fits; then no device
// is offered, nor parts that hold 200 bar, but it is told what is missing.
func TestNoPartCures(t *testing.T) {
	r := suggestions(t, "yard.yaml", yard(t, "rated: 10 bar(g)\n    test_pressure", "rated: 3.7 bar(g)\n    test_pressure"), suggest.Options{})
	require.Empty(t, r.Offers)
	require.False(t, r.AnyCured)
	require.Empty(t, r.Nothing)
	var b strings.Builder
	require.NoError(t, suggest.Text(&b, r))
	require.Contains(t, b.String(), "No change of parts makes the line fitter than it is.")
	require.Contains(t, b.String(), "a regulator stuck open can reach 224.9 bar(g)")
	require.Contains(t, b.String(), "fit a relief device that")
}

// TestWrittenSheetIsReadable: comments and order survive, what is still to be shown carries a note, and the needs stand on
// top.
func TestWrittenSheetIsReadable(t *testing.T) {
	text := string(forLine(t, "caustic-drum", suggest.Options{}).Offers[0].Text)
	require.True(t, strings.HasPrefix(text, "# PROPOSAL 1 for line CS-17: judged conditional, were all of this so."))
	require.Contains(t, text, "\n# An invented line with several faults: caustic soda solution")
	require.Contains(t, text, "pressure test, inspection, measured resistance, each recorded")
	require.Regexp(t, `(?m)^        tested: 2026-11-25 # to be recorded on the new hose$`, text)
	require.Regexp(t, `(?s)- id: H1\n        kind: hose\n        class: \S+\n.*- id: P1`, text)
	require.NotContains(t, text, "hose certificate 2291") // the paper of the old hose speaks for no other
}

// TestOnePartOnly changes nothing but the part asked for and its joints.
func TestOnePartOnly(t *testing.T) {
	r := forLine(t, "caustic-drum", suggest.Options{Part: "H2"})
	require.NotEmpty(t, r.Offers)
	for _, c := range r.Offers[0].Changes {
		require.Contains(t, c.Where, "H2")
	}
	require.Equal(t, report.Unfit, r.Offers[0].Word, "H1 is left as it is")

	text, err := os.ReadFile(linePath("caustic-drum"))
	require.NoError(t, err)
	e, err := engine()
	require.NoError(t, err)
	_, err = suggest.For(context.Background(), e, catalog.Open(), "x.yaml", text, suggest.Options{Part: "H9", AsOf: today})
	require.EqualError(t, err, `the line has no part "H9": it has H1, P1, H2`)
}

// TestStock offers only what the site keeps, and says what a part would have to meet when that is not enough.
func TestStock(t *testing.T) {
	stock := func(text string) *suggest.Stock {
		path := filepath.Join(t.TempDir(), "stock.yaml")
		require.NoError(t, os.WriteFile(path, []byte(text), 0o600))
		s, err := suggest.ReadStock(path, catalog.Open())
		require.NoError(t, err)
		return s
	}
	r := forLine(t, "ammonia-lpg-hose", suggest.Options{Stock: stock("- us-ammonia-350/CR\n- en-12115-sd\n")})
	require.NotEmpty(t, r.Offers)
	for _, o := range r.Offers {
		for _, c := range o.Changes {
			require.Contains(t, c.After, "us-ammonia-350")
			require.Contains(t, c.After, "liner CR")
		}
	}
	require.Equal(t, report.Conditional, r.Offers[0].Word)

	r = forLine(t, "ammonia-lpg-hose", suggest.Options{Stock: stock("- en-12115-sd\n")})
	require.Empty(t, r.Offers)
	require.Len(t, r.Nothing, 1)
	require.Equal(t, "H1", r.Nothing[0].Where)
	require.Contains(t, strings.Join(r.Nothing[0].Wants, "\n"), "not marked for anhydrous ammonia")

	path := filepath.Join(t.TempDir(), "stock.yaml")
	require.NoError(t, os.WriteFile(path, []byte("- en-12115-zz\n- nothing-known\n"), 0o600))
	_, err := suggest.ReadStock(path, catalog.Open())
	require.ErrorContains(t, err, "en-12115-zz")
	require.ErrorContains(t, err, "nothing-known")
}

// TestSameTwice: the same sheet gives the same suggestions, though sheets are judged side by side.
func TestSameTwice(t *testing.T) {
	a, b := forLine(t, "caustic-drum", suggest.Options{}), forLine(t, "caustic-drum", suggest.Options{})
	require.Equal(t, a, b)
}

// TestRanked: never a worse verdict before a better one, nor under one verdict a smaller margin before a larger one.
func TestRanked(t *testing.T) {
	rank := map[report.Word]int{report.Fit: 0, report.Conditional: 1, report.Unproven: 2, report.Unfit: 3}
	for _, name := range []string{"caustic-drum", "ammonia-lpg-hose", "ethyl-acetate-tote"} {
		offers := forLine(t, name, suggest.Options{}).Offers
		for i := 1; i < len(offers); i++ {
			a, b := offers[i-1], offers[i]
			require.LessOrEqual(t, rank[a.Word], rank[b.Word])
			if a.Word == b.Word {
				require.GreaterOrEqual(t, a.Worst.HaveKPa-a.Worst.NeedKPa, b.Worst.HaveKPa-b.Worst.NeedKPa)
			}
		}
	}
}
