package rules

import (
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// ownRule is a sound rule of a site. Each bad example is this rule with one thing changed.
var ownRule = strings.NewReplacer(
	"package rules.pressure.too_weak", "package site.plant.too_weak", "h.rated_kpa < _least", "h.rated_kpa < data.site.limits.least_kpa",
	`"need_kpa": _least`, `"need_kpa": data.site.limits.least_kpa`, "\n_least := 2413\n", "",
	"document: 29 CFR 1910.111", "document: Plant standard 12", `edition: "CFR 2015 annual edition"`, `edition: "3"`,
	`clause: "(b)(8)(i)"`, `clause: ""`, "standing: published", "standing: site",
).Replace(sound)

// folder makes a folder of a site out of the texts of its files.
func folder(t *testing.T, files map[string]string) string {
	t.Helper()
	dir := t.TempDir()
	for name, text := range files {
		path := filepath.Join(dir, filepath.FromSlash(name))
		require.NoError(t, os.MkdirAll(filepath.Dir(path), 0o755))
		require.NoError(t, os.WriteFile(path, []byte(text), 0o644))
	}
	return dir
}

func TestWithSite(t *testing.T) {
	plain, err := Load()
	require.NoError(t, err)
	set, err := plain.WithSite(folder(t, map[string]string{
		"plant/too_weak/rule.rego": ownRule, "plant/too_weak/rule_test.rego": "package site.plant.too_weak_test\n",
		"limits.yaml": "least_kpa: 2000\ntest_interval_days: 180\n",
	}))
	require.NoError(t, err)
	own, ok := set.Rule("site/plant/too_weak")
	require.True(t, ok)
	assert.True(t, own.OfSite())
	assert.Equal(t, "site", own.Basis[0].Standing)
	_, ok = set.Rule("site/inspection/test_older_than_site_allows")
	assert.True(t, ok, "a limit alone brings the general rule that reads it")
	assert.Len(t, set.Index(), len(plain.Index())+2)
	assert.True(t, slices.IsSortedFunc(set.Index(), func(a, b Rule) int { return strings.Compare(a.ID, b.ID) }))
	assert.NotEqual(t, plain.Digest(), set.Digest())
	assert.Equal(t, plain.Modules(), set.Modules(), "the rules of the program stay what they are")
	a, err := plain.Guards()
	require.NoError(t, err)
	b, err := set.Guards()
	require.NoError(t, err)
	assert.Equal(t, a, b)
}

func TestDigestTellsLimits(t *testing.T) {
	plain, err := Load()
	require.NoError(t, err)
	var sums []string
	for _, limits := range []string{"hose_age_days: 2000", "hose_age_days: 2001"} {
		set, err := plain.WithSite(folder(t, map[string]string{"limits.yaml": limits}))
		require.NoError(t, err)
		sums = append(sums, set.Digest())
	}
	assert.NotEqual(t, sums[0], sums[1])
}

// TestSiteIsConfined: what a rule of a site must not do is refused before any line is judged, with its place.
func TestSiteIsConfined(t *testing.T) {
	plain, err := Load()
	require.NoError(t, err)
	const least = "h.rated_kpa < data.site.limits.least_kpa"
	for name, tc := range map[string]struct{ from, to, want string }{
		"no metadata":         {"# METADATA", "# METADATE", "want one METADATA block"},
		"other package":       {"package site.plant.too_weak", "package site.plant.too_strong", "package is site.plant.too_strong: the folder wants site.plant.too_weak"},
		"package of the rest": {"package site.plant.too_weak", "package rules.plant.too_weak", "the folder wants site.plant.too_weak"},
		"package of verdicts": {"package site.plant.too_weak", "package verdict", "the folder wants site.plant.too_weak"},
		"reads other rules":   {least, least + "\n\tcount(data.rules.pressure) > 0", "a rule reads no other rule"},
		"reads all of data":   {least, least + "\n\tcount(data) > 0", "a rule reads no other rule"},
		"reads all limits":    {least, least + "\n\tcount(data.site.limits) > 0", "a rule reads no other rule"},
		"unset limit":         {"data.site.limits.least_kpa", "data.site.limits.leest_kpa", "data.site.limits.leest_kpa is not in limits.yaml"},
		"network":             {least, `h.rated_kpa < http.send({"url": "x", "method": "get"}).n`, ":26: http.send is not permitted"},
		"clock":               {least, "h.rated_kpa < time.now_ns()", "time.now_ns is not permitted"},
		"endless numbers":     {least, "h.rated_kpa in numbers.range(1, 1000000000)", "undefined function numbers.range"},
		"endless shift":       {least, "h.rated_kpa < bits.lsh(1, 100000000000)", "undefined function bits.lsh"},
		"misspelt fact":       {least, "h.rated_kap < data.site.limits.least_kpa", "no fact of hoses or line is called rated_kap"},
		"broken text":         {least, "h.rated_kpa <", "too_weak/rule.rego:2"},
		"calls itself":        {"_by_medium(h) if h.medium", "_by_medium(h) if _by_medium(h)\n\n_by_medium(h) if h.medium", "recursive"},
		"unknown standing":    {"standing: site", "standing: ours", `standing "ours"`},
		"law without clause":  {"standing: site", "standing: published", "has no clause"},
		"print":               {least, least + "\n\tprint(h)", "print is for debugging"},
	} {
		t.Run(name, func(t *testing.T) {
			text := strings.ReplaceAll(ownRule, tc.from, tc.to)
			require.NotEqual(t, ownRule, text, "the example changes nothing")
			dir := folder(t, map[string]string{"plant/too_weak/rule.rego": text, "limits.yaml": "least_kpa: 2000"})
			set, err := plain.WithSite(dir)
			var wrong *SiteError
			require.ErrorAs(t, err, &wrong)
			assert.ErrorContains(t, err, tc.want)
			assert.ErrorContains(t, err, dir, "the place is one that the user can open")
			assert.Empty(t, set.Index())
		})
	}
}

// TestSiteFolder: a file that nobody would run, and a limit that nobody would read, protect nobody.
func TestSiteFolder(t *testing.T) {
	plain, err := Load()
	require.NoError(t, err)
	for name, tc := range map[string]struct {
		files map[string]string
		want  string
	}{
		"empty":              {map[string]string{"readme.txt": ""}, "holds neither"},
		"rule at the top":    {map[string]string{"rule.rego": ownRule}, "rule.rego: is never run"},
		"rule too deep":      {map[string]string{"a/b/c/rule.rego": ownRule}, "is never run"},
		"other file name":    {map[string]string{"plant/too_weak/rules.rego": ownRule}, "is never run"},
		"capital ending":     {map[string]string{"plant/too_weak/rule.REGO": ownRule}, "is never run"},
		"folder with hyphen": {map[string]string{"plant/too-weak/rule.rego": ownRule}, "is never run"},
		"area of limits":     {map[string]string{"limits/too_weak/rule.rego": ownRule}, "choose another area"},
		"limits misread":     {map[string]string{"limits.yaml": "- a"}, "limits.yaml: want lines like"},
		"limit of words":     {map[string]string{"limits.yaml": "hose_age_days: five years"}, "limits.yaml:1: hose_age_days is no whole number"},
		"limit with point":   {map[string]string{"limits.yaml": "hose_age_days: 1826.25"}, "is no whole number"},
		"limit in quotes":    {map[string]string{"limits.yaml": `hose_age_days: "1826"`}, "is no whole number"},
		"limit without unit": {map[string]string{"limits.yaml": "hose_age: 5"}, "end its name in its unit"},
		"limit nobody reads": {map[string]string{"limits.yaml": "\nhose_ages_days: 5"}, "limits.yaml:2: hose_ages_days: no rule of the site reads it"},
		"limit list":         {map[string]string{"limits.yaml": "hose_ages_days: 5"}, "hose_age_days, pressure_margin_permille, temperature_margin_ck, test_interval_days"},
	} {
		t.Run(name, func(t *testing.T) {
			_, err := plain.WithSite(folder(t, tc.files))
			require.ErrorContains(t, err, tc.want)
		})
	}
	_, err = plain.WithSite(filepath.Join(t.TempDir(), "absent"))
	require.ErrorIs(t, err, os.ErrNotExist)
}

// TestGeneralRules holds the general rules to the bar of all rules, each with the limit that it reads.
func TestGeneralRules(t *testing.T) {
	plain, err := Load()
	require.NoError(t, err)
	known, err := generalRules()
	require.NoError(t, err)
	require.Len(t, known, 4)
	for _, m := range known {
		names := generalLimits([]Module{m})
		require.Len(t, names, 1, m.Path)
		set, err := plain.WithSite(folder(t, map[string]string{"limits.yaml": names[0] + ": 100"}))
		require.NoError(t, err)
		id, _ := m.id()
		_, ok := set.Rule(id)
		assert.True(t, ok, "%s: is its METADATA complete?", id)
	}
}
