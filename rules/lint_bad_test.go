package rules

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// sound is a rule without a problem. Each bad example is this rule with one thing changed.
const sound = `# METADATA
# title: A hose is too weak
# description: It bursts.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: [carries_ammonia, "medium=gas|liquid", "regime=29 CFR 1910.111"]
#   needs: [hoses.rated_kpa]
#   absent: [hoses.readable]
#   message: "{part} holds {have_kpa}, it needs {need_kpa}"
#   action: Fit another.
#   basis:
#     - document: 29 CFR 1910.111
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(8)(i)"
#       standing: published
package rules.pressure.too_weak

report contains {"subject": h.id, "part": h.id, "have_kpa": h.rated_kpa, "need_kpa": _least} if {
	"29 CFR 1910.111" in input.line.regimes
	some h in input.hoses
	h.carries_ammonia
	_by_medium(h)
	h.rated_kpa < _least
	not h.readable
}

_by_medium(h) if h.medium in {"gas", "liquid"}

_least := 2413
`

const soundPath = "pressure/too_weak/rule.rego"

func TestLintPassesASoundRule(t *testing.T) {
	assert.Empty(t, problems([]Module{{soundPath, sound}}))
}

func TestLintCatches(t *testing.T) {
	for name, tc := range map[string]struct{ from, to, want string }{
		"broken text":              {"_least := 2413", "_least := ", ":33: "},
		"format":                   {"\th.carries_ammonia\n", "  h.carries_ammonia\n", ":24: not in the standard format"},
		"long line":                {"# description: It bursts.", "# description: " + strings.Repeat("x", 106), ":3: the line has 121 characters"},
		"other package":            {"package rules.pressure.too_weak", "package rules.pressure.too_week", ":19: package is rules.pressure.too_week"},
		"outside rules":            {"package rules.pressure.too_weak", "package verdict", "package is verdict"},
		"import":                   {"too_weak\n", "too_weak\n\nimport input.hoses\n", ":21: import input.hoses"},
		"second public rule":       {"_least := 2413", "_least := 2413\n\nlimit := 1", "limit is public"},
		"no report":                {"report contains", "_report contains", "no rule report"},
		"report is no set":         {`report contains {"subject": h.id, "part": h.id, "have_kpa": h.rated_kpa, "need_kpa": _least} if`, "report if", "report is a set"},
		"default":                  {"_least := 2413", "default _least := 2413", "default _least"},
		"division":                 {"h.rated_kpa < _least", "h.rated_kpa / 2 < _least", ":26: div"},
		"own description":          {"h.rated_kpa < _least", `h.rated_kpa < _least` + "\n\tcount(rego.metadata.chain()) > 0", "rego.metadata.chain is not permitted"},
		"print":                    {"h.rated_kpa < _least", "h.rated_kpa < _least\n\tprint(h)", "print is for debugging"},
		"clock":                    {"h.rated_kpa < _least", "h.rated_kpa < time.now_ns()", "time.now_ns"},
		"network":                  {"h.rated_kpa < _least", `h.rated_kpa < http.send({"url": "x"}).n`, "http.send"},
		"chance":                   {"h.rated_kpa < _least", `h.rated_kpa < rand.intn("x", 5)`, "rand.intn"},
		"default for missing fact": {"h.rated_kpa < _least", `object.get(h, "rated_kpa", 0) < _least`, "object.get: a default"},
		"other rule":               {"h.rated_kpa < _least", "h.rated_kpa < data.rules.a.b.x", "data.rules.a.b.x: a rule reads no other rule"},
		"differs from an element":  {"h.carries_ammonia\n", "h.carries_ammonia\n\tsome d in h.defects\n\td != \"leaking\"\n", ":26: != inside a loop"},
		"differs from a wildcard":  {"h.carries_ammonia\n", "h.carries_ammonia\n\th.defects[_] != \"leaking\"\n", "!= inside a loop"},
		"no metadata":              {"# METADATA", "# METADATE", "want one METADATA block"},
		"no schema":                {"# schemas:\n#   - input: schema.facts\n", "", "want schemas"},
		"other schema":             {"input: schema.facts", "input: schema.other", "want schemas"},
		"other annotation":         {"# description: It bursts.", "# description: It bursts.\n# organizations: [x]", "METADATA takes"},
		"other custom key":         {"#   severity: stop", "#   severity: stop\n#   colour: red", "colour"},
		"severity missing":         {"#   severity: stop\n", "", "custom lacks severity"},
		"severity unknown":         {"severity: stop", "severity: fatal", `severity "fatal"`},
		"scope missing":            {"#   scope: [carries_ammonia, \"medium=gas|liquid\", \"regime=29 CFR 1910.111\"]\n", "", "custom lacks scope"},
		"title empty":              {"title: A hose is too weak", `title: ""`, "title is empty"},
		"title with a full stop":   {"too weak\n# desc", "too weak.\n# desc", "without a full stop"},
		"action empty":             {"action: Fit another.", `action: ""`, "action is empty"},
		"no basis":                 {sound[strings.Index(sound, "#   basis"):strings.Index(sound, "package")], "#   basis: []\n", "basis is empty"},
		"document empty":           {"document: 29 CFR 1910.111", `document: ""`, "names no document"},
		"standing unknown":         {"standing: published", "standing: seen", `standing "seen"`},
		"edition no text":          {`edition: "CFR 2015 annual edition"`, "edition: 2015", "in quotes"},
		"subject unknown":          {"subject: hoses", "subject: pipes", `"pipes" is not a collection`},
		"scope misspelt":           {"scope: [carries_ammonia", "scope: [carries_amonia", `no fact "carries_amonia"`},
		"scope may be missing":     {"scope: [carries_ammonia", "scope: [readable", `"readable" may be unknown`},
		"scope word impossible":    {"gas|liquid", "gas|fluid", `never "fluid"`},
		"scope never read":         {"\th.carries_ammonia\n", "", "never reads hoses.carries_ammonia"},
		"regime never read":        {"\t\"29 CFR 1910.111\" in input.line.regimes\n", "", "never reads line.regimes"},
		"need misspelt":            {"[hoses.rated_kpa]", "[hoses.rated]", `"hoses.rated" is not a fact`},
		"need of another":          {"[hoses.rated_kpa]", "[joints.size]", "not a fact of hoses or of line"},
		"need always known":        {"[hoses.rated_kpa]", "[hoses.rated_kpa, hoses.medium]", "always known"},
		"need never read":          {"[hoses.rated_kpa]", "[hoses.rated_kpa, hoses.burst_kpa]", "never read"},
		"need not listed":          {"[hoses.rated_kpa]", "[]", ":21: hoses.rated_kpa may be missing"},
		"absent not listed":        {"#   absent: [hoses.readable]\n", "", "not ... h.readable is true when the fact is not known"},
		"absent always known":      {"[hoses.readable]", "[hoses.readable, hoses.medium]", "absent: hoses.medium"},
		"absent and needed":        {"[hoses.rated_kpa]", "[hoses.rated_kpa, hoses.readable]", "absent: hoses.readable"},
		"gap in message":           {"{part} holds", "{hose} holds", "message wants {hose}"},
		"stray brace":              {"{part} holds", "{Part} holds", "a placeholder is {key}"},
		"report without subject":   {`{"subject": h.id, `, `{`, "lacks subject"},
		"report not in the head":   {`{"subject": h.id, "part": h.id, "have_kpa": h.rated_kpa, "need_kpa": _least}`, "h", "in its head"},
		"have without need":        {`"need_kpa": _least`, `"other_kpa": _least`, "have_kpa stands alone"},
		"number without unit":      {`"part": h.id`, `"part": h.id, "age": h.rated_kpa`, "age is a number"},
		"word with unit":           {`"part": h.id`, `"part": h.id, "x_mm": h.id`, "x_mm is a word"},
		"yes or no in a report":    {`"part": h.id`, `"part": h.id, "bad": h.carries_lpg`, "bad is neither"},
		"misspelt fact":            {"h.rated_kpa < _least", "h.rated_kap < _least", `:26: h.rated_kap: no fact of hoses or line is called rated_kap`},
		"misspelt in a function":   {"h.medium in", "h.medum in", "h.medum: no fact"},
		"misspelt collection":      {"in input.hoses", "in input.hose", ":23: undefined ref: input.hose"},
		"impossible word":          {`{"gas", "liquid"}`, `{"gas", "fluid"}`, `hoses.medium is never "fluid"`},
		"impossible single word":   {"h.carries_ammonia\n", "h.carries_ammonia\n\th.medium == \"fluid\"\n", `never "fluid"`},
		"number against word":      {"h.rated_kpa < _least", `h.rated_kpa < "2413"`, `hoses.rated_kpa is never "2413"`},
		"word against number":      {"h.carries_ammonia\n", "h.carries_ammonia\n\th.medium == 3\n", "hoses.medium is never 3"},
		"two units":                {"h.carries_ammonia\n", "h.carries_ammonia\n\th.rated_kpa < h.age_days\n", "in different units"},
	} {
		t.Run(name, func(t *testing.T) {
			bad := strings.Replace(sound, tc.from, tc.to, 1)
			require.NotEqual(t, sound, bad, "the example changes nothing")
			var found []string
			for _, p := range problems([]Module{{soundPath, bad}}) {
				found = append(found, p.String())
			}
			assert.Contains(t, strings.Join(found, "\n"), tc.want)
		})
	}
}

func TestLintOfAreaAndClause(t *testing.T) {
	other := strings.Replace(sound, "rules.pressure.", "rules.colour.", 1)
	assert.Contains(t, problems([]Module{{"colour/too_weak/rule.rego", other}})[0].String(), `"colour" is not an area`)

	bare := strings.Replace(sound, `"(b)(8)(i)"`, `""`, 1)
	assert.Empty(t, problems([]Module{{soundPath, bare}}), "a section of a law may be cited whole")
	standard := strings.Replace(bare, "document: 29 CFR 1910.111", "document: EN 12115", 1)
	assert.Contains(t, problems([]Module{{soundPath, standard}})[0].Text, "has no clause")
	custom := strings.Replace(standard, "standing: published", "standing: practice", 1)
	assert.Empty(t, problems([]Module{{soundPath, custom}}), "practice has no clause")
}
