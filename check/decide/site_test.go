package decide

import (
	"context"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/check/facts"
	"lineworthy/rules"
)

const ownHead = `# METADATA
# title: A hose of the site
# description: Made up.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: hoses
#   scope: [carries_ammonia]
#   needs: []
#   message: "{subject}"
#   action: None.
#   basis:
#     - document: Plant standard 12
#       edition: "3"
#       clause: ""
#       standing: site
package site.plant.`

const sound = `

report contains {"subject": h.id} if {
	some h in input.hoses
	h.carries_ammonia
}
`

// siteOf is an engine with the rules of the program and some of a site, by fault.
func siteOf(t *testing.T, limits string, bodies map[string]string) *Engine {
	t.Helper()
	dir := t.TempDir()
	write := func(name, text string) {
		path := filepath.Join(dir, filepath.FromSlash(name))
		require.NoError(t, os.MkdirAll(filepath.Dir(path), 0o755))
		require.NoError(t, os.WriteFile(path, []byte(text), 0o644))
	}
	write("limits.yaml", limits)
	for fault, body := range bodies {
		write("plant/"+fault+"/rule.rego", ownHead+fault+body)
	}
	set, err := rules.Load()
	require.NoError(t, err)
	set, err = set.WithSite(dir)
	require.NoError(t, err)
	e, err := New(context.Background(), set)
	require.NoError(t, err)
	return e
}

func coverageOf(t *testing.T, d Decision, rule string) Coverage {
	t.Helper()
	for _, c := range d.Coverage {
		if c.Rule == rule {
			return c
		}
	}
	require.Fail(t, "no coverage", rule)
	return Coverage{}
}

// TestSiteOnlyAdds: the findings of the program stay as they are, and those of the site come beside them.
func TestSiteOnlyAdds(t *testing.T) {
	plain, _ := builtin(t)
	want, err := plain.Decide(context.Background(), ammonia())
	require.NoError(t, err)
	e := siteOf(t, "", map[string]string{"sound": sound})
	for name, e := range map[string]*Engine{"guards": e, "unguarded": e.Unguarded(), "memory": e.Remembering()} {
		d, err := e.Decide(context.Background(), ammonia())
		require.NoError(t, err, name)
		var own []Finding
		rest := []Finding{}
		for _, f := range d.Findings {
			if strings.HasPrefix(f.Rule, "site/") {
				own = append(own, f)
			} else {
				rest = append(rest, f)
			}
		}
		assert.Equal(t, want.Findings, rest, name)
		require.Len(t, own, 1, name)
		assert.Equal(t, "site/plant/sound", own[0].Rule)
		assert.Equal(t, "H1", own[0].Subject)
		c := coverageOf(t, d, "site/plant/sound")
		assert.Equal(t, []string{"H1"}, c.Judged)
		assert.Equal(t, []string{"H2"}, c.NotApplicable)
	}
}

// TestSiteLimits: below, at and past a limit that is data.
func TestSiteLimits(t *testing.T) {
	e := siteOf(t, "hose_age_days: 2000", nil)
	for age, want := range map[int64]int{1999: 0, 2000: 0, 2001: 1} {
		f := ammonia()
		f.Hoses[0].AgeDays = facts.Know(age)
		d, err := e.Decide(context.Background(), f)
		require.NoError(t, err)
		found := 0
		for _, x := range d.Findings {
			if x.Rule == "site/inspection/hose_older_than_site_allows" {
				found++
				assert.Equal(t, map[string]int64{"have_days": age, "need_days": 2000}, x.Numbers)
			}
		}
		assert.Equal(t, want, found, "%d days", age)
		c := coverageOf(t, d, "site/inspection/hose_older_than_site_allows")
		assert.Equal(t, []string{"H1"}, c.Judged)
		require.Len(t, c.Unjudged, 1, "the age of the other hose is not known")
	}
}

// endless has far more to do than any time allows.
const endless = `

report contains {"subject": h.id} if {
	some h in input.hoses
	h.carries_ammonia
	digits := split("0 1 2 3 4 5 6 7 8 9 0 1 2 3 4 5 6 7 8 9 0 1 2 3 4 5 6 7 8 9", " ")
	some a in digits
	some b in digits
	some c in digits
	some d in digits
	some e in digits
	some f in digits
	some g in digits
	concat("", [a, b, c, d, e, f, g]) == "none"
}
`

// TestSiteRulesAreCutOff: a rule that misbehaves judges nothing, says so for each of its subjects, and the others judge as
// if it were not there.
func TestSiteRulesAreCutOff(t *testing.T) {
	report := func(object string) string {
		return "\n\nreport contains " + object + " if {\n\tsome h in input.hoses\n\th.carries_ammonia\n}\n"
	}
	for name, tc := range map[string]struct{ body, want string }{
		"never ends":     {endless, "took longer than"},
		"out of scope":   {report(`{"subject": "H2"}`), `found something on "H2", which is not one of the hoses`},
		"of nothing":     {report(`{"subject": concat("", ["no", "where"])}`), `"nowhere"`},
		"fraction":       {report(`{"subject": h.id, "x_kpa": max([0, 0.5])}`), "x_kpa is 0.5"},
		"list":           {report(`{"subject": h.id, "x": _any}`) + "\n_any := json.unmarshal(concat(\"\", [\"[1]\"]))\n", "x is [1]"},
		"built-in fails": {report(`{"subject": h.id, "x_kpa": to_number(concat("", ["ma", "ny"]))}`), "to_number"},
	} {
		t.Run(name, func(t *testing.T) {
			e := siteOf(t, "", map[string]string{"bad": tc.body, "sound": sound})
			if name == "never ends" {
				e.site.limit = 300 * time.Millisecond
			}
			start := time.Now()
			d, err := e.Decide(context.Background(), ammonia())
			require.NoError(t, err)
			assert.Less(t, time.Since(start), 10*time.Second)
			bad, good := coverageOf(t, d, "site/plant/bad"), coverageOf(t, d, "site/plant/sound")
			assert.Empty(t, bad.Judged)
			require.Len(t, bad.Unjudged, 1)
			assert.Equal(t, "H1", bad.Unjudged[0].Subject)
			assert.Contains(t, bad.Unjudged[0].Why, tc.want)
			assert.Contains(t, bad.Unjudged[0].Ask, "site/plant/bad")
			assert.Equal(t, []string{"H1"}, good.Judged)
			assert.Empty(t, good.Unjudged)
			b, err := e.Brief(context.Background(), ammonia())
			require.NoError(t, err)
			assert.Contains(t, b.Missing, bad.Unjudged[0])
		})
	}
}

// TestLateRuleIsNotAskedAgain: many lines do not wait many times for one bad rule.
func TestLateRuleIsNotAskedAgain(t *testing.T) {
	e := siteOf(t, "", map[string]string{"bad": endless})
	e.site.limit = 20 * time.Millisecond
	for range mostLate {
		_, err := e.Decide(context.Background(), ammonia())
		require.NoError(t, err)
	}
	start := time.Now()
	for range 100 {
		d, err := e.Decide(context.Background(), ammonia())
		require.NoError(t, err)
		assert.Contains(t, coverageOf(t, d, "site/plant/bad").Unjudged[0].Why, "is not asked again")
	}
	assert.Less(t, time.Since(start), 100*e.site.limit)
}

// TestSiteHeedsTheContext: a line that is given up is no verdict, whoever was at work on it.
func TestSiteHeedsTheContext(t *testing.T) {
	e := siteOf(t, "", map[string]string{"bad": endless})
	e.site.limit = time.Hour
	ctx, stop := context.WithTimeout(context.Background(), 50*time.Millisecond)
	defer stop()
	_, err := e.Decide(ctx, ammonia())
	require.ErrorIs(t, err, context.DeadlineExceeded)
}
