package explain_test

import (
	"context"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/catalog"
	"lineworthy/check"
	"lineworthy/check/explain"
	"lineworthy/check/report"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
	"lineworthy/rules"
)

var engine = sync.OnceValues(func() (*check.Engine, error) {
	return check.New(context.Background(), check.Options{Version: "test", AsOf: units.Date{Days: 20782}}) // 2026-11-25
})

func judged(t testing.TB, path string) explain.Input {
	t.Helper()
	e, err := engine()
	require.NoError(t, err)
	in := explain.Input{Catalog: catalog.Open()}
	in.Sheet, err = sheet.Read(path)
	require.NoError(t, err)
	in.Facts, err = e.Facts(in.Sheet)
	require.NoError(t, err)
	in.Verdict, err = e.Check(context.Background(), in.Sheet)
	require.NoError(t, err)
	in.Rules, err = rules.Load()
	require.NoError(t, err)
	return in
}

func line(name string) string {
	return filepath.Join("..", "..", "testdata", "lines", name, "line.yaml")
}

func about(t testing.TB, in explain.Input, name string) *explain.Answer {
	t.Helper()
	a, err := explain.About(in, name)
	require.NoError(t, err)
	return a
}

// TestEverything: on every shipped line each topic can be explained, in text and in Markdown, and each value of the sheet
// it shows stands on the line it names.
func TestEverything(t *testing.T) {
	paths, err := filepath.Glob(line("*"))
	require.NoError(t, err)
	require.NotEmpty(t, paths)
	for _, path := range paths {
		in := judged(t, path)
		data, err := os.ReadFile(path)
		require.NoError(t, err)
		lines := strings.Split(string(data), "\n")
		for _, topic := range explain.Topics(in) {
			a := about(t, in, topic.Name)
			written := a.Sheet
			for _, c := range a.Chains {
				require.NotEmpty(t, c.Rule.ID)
				require.NotEmpty(t, c.Rule.LooksAt, c.Rule.ID)
				require.NotEmpty(t, c.Basis, c.Rule.ID)
				require.NotEmpty(t, c.Methods, c.Rule.ID)
				written = append(written, c.Sheet...)
			}
			for _, w := range written {
				file, at, _ := strings.Cut(w.Position, ".yaml:")
				require.NotEmpty(t, file)
				n, err := strconv.Atoi(at)
				require.NoError(t, err)
				assert.Contains(t, lines[n-1], w.Text, w.Key)
			}
			for _, md := range []bool{false, true} {
				text := a.Text(report.Options{}, md)
				for _, jargon := range []string{"rego", "Rego", "null", "undefined", "%!", "fact.", "input."} {
					assert.NotContains(t, text, jargon, path+" "+topic.Name)
				}
			}
		}
	}
}

// TestChain: a rating below the demand leads from the shut-in pressure of the pump and the rating of the hose to the rule.
func TestChain(t *testing.T) {
	a := about(t, judged(t, line("caustic-drum")), "pressure/rating_below_demand")
	require.Len(t, a.Chains, 1)
	c := a.Chains[0]
	keys := map[string]string{}
	for _, w := range c.Sheet {
		keys[w.Key] = w.Text
	}
	assert.Equal(t, "10 bar(g)", keys["H2 rated"])
	assert.Equal(t, "12 bar(g)", keys["P1 shutoff"])
	assert.Equal(t, "1.2 m", keys["runs.liquid.source.head"])
	assert.NotContains(t, keys, "H1 rated", "another hose has no part in it")
	assert.Equal(t, []explain.Number{{"have", "10 bar(g)"}, {"need", "12.18 bar(g)"}, {"margin", "-2.18 bar"}}, c.Numbers)
	assert.Equal(t, "the pump's data sheet", c.Methods[0].Source)
	assert.Contains(t, c.Rests, explain.Value{What: "working pressure of H2, 10 bar(g)", Clause: "hose certificate 2302", Standing: "site"})
	assert.Equal(t, "29 CFR 1926.302", c.Basis[0].Document)
}

// TestPair: a material that is not fit leads to the catalog row with its document.
func TestPair(t *testing.T) {
	in := judged(t, line("caustic-drum"))
	a := about(t, in, "material/unsuitable_for_fluid")
	require.NotEmpty(t, a.Chains)
	for _, c := range a.Chains {
		require.NotEmpty(t, c.Rests, c.Subject)
		assert.True(t, strings.HasPrefix(c.Rests[0].Row, "fluids/"), c.Subject)
		assert.Contains(t, c.Rests[0].What, "unsuitable")
		assert.NotEmpty(t, c.Rests[0].Standing)
		assert.Contains(t, in.Verdict.Digests.Catalog, c.Rests[0].Row, "a row the verdict rests on")
	}
	joint := about(t, in, "look_alike_joins").Chains[0]
	assert.Equal(t, "connections/flange-asme-b16-5", joint.Rests[0].Row)
	for _, w := range joint.Sheet {
		assert.Regexp(t, `^(H2 outlet|dosing-tank points\.fill)\.`, w.Key, "the two ends and nothing else")
	}
}

// TestFine: a part nothing stands against shows what it has to spare and what judged it.
func TestFine(t *testing.T) {
	a := about(t, judged(t, line("toluene-yard-corrected")), "H1")
	assert.Equal(t, "nothing stands against it", a.Says)
	assert.Empty(t, a.Beside)
	require.NotEmpty(t, a.Holds)
	for _, h := range a.Holds {
		assert.Equal(t, "+", h.Margin[:1], h.What)
	}
	require.NotEmpty(t, a.Ranges)
	for _, r := range a.Ranges {
		assert.Equal(t, "+", r.Margin[:1], r.What)
	}
	require.NotEmpty(t, a.Pairs)
	for _, p := range a.Pairs {
		assert.Equal(t, "suitable", p.Rating, p)
		assert.NotEmpty(t, p.Known, p)
	}
	assert.Greater(t, len(a.Judged), 15)
	for _, j := range a.Judged {
		assert.False(t, j.Found, j.Rule)
	}
}

// TestNames: a number, a rule, its short name and a part all lead there; anything else gets the list.
func TestNames(t *testing.T) {
	in := judged(t, line("caustic-drum"))
	first := about(t, in, "1").Chains[0].Rule.ID
	_, short, _ := strings.Cut(first, "/")
	assert.Equal(t, about(t, in, first).Chains, about(t, in, short).Chains)
	assert.Equal(t, "H1", about(t, in, "h1").Name)
	_, err := explain.About(in, "H")
	var unknown *explain.Unknown
	require.ErrorAs(t, err, &unknown)
	assert.Len(t, unknown.Topics, len(explain.Topics(in)))
	assert.Contains(t, err.Error(), "dosing-tank")
}

// TestOpenPart: a part with a fact missing is not called fine.
func TestOpenPart(t *testing.T) {
	a := about(t, judged(t, line("caustic-drum")), "P1")
	assert.NotEmpty(t, a.Missing)
	assert.Contains(t, a.Text(report.Options{}, false), "WHAT IS NOT KNOWN OF IT")
}
