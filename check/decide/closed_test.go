package decide

import (
	"context"
	"slices"
	"strings"
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/rego"
	"github.com/open-policy-agent/opa/v1/types"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/check/facts"
	"lineworthy/rules"
)

// panics is a built-in that only this test has.
var panics = &rego.Function{Name: "test.panics", Decl: types.NewFunction(types.Args(types.A), types.A)}

func init() {
	rego.RegisterBuiltin1(panics, func(rego.BuiltinContext, *ast.Term) (*ast.Term, error) { panic("illegal value") })
}

// engineOf is an engine with one rule a/b on hoses, out of the given text, and the verdict given or the program's own.
func engineOf(t *testing.T, text, verdict string) *Engine {
	t.Helper()
	if verdict == "" {
		set, err := rules.Load()
		require.NoError(t, err)
		for _, m := range set.Modules() {
			if m.Path == "verdict/verdict.rego" {
				verdict = m.Text
			}
		}
	}
	caps := &ast.Capabilities{Features: rules.Capabilities().Features}
	caps.Builtins = append(slices.Clone(rules.Capabilities().Builtins), &ast.Builtin{Name: panics.Name, Decl: panics.Decl})
	c := ast.NewCompiler().WithCapabilities(caps)
	mods := map[string]*ast.Module{}
	for name, text := range map[string]string{"rule": text, "verdict": verdict} {
		var err error
		mods[name], err = ast.ParseModuleWithOpts(name, text, ast.ParserOptions{Capabilities: caps, RegoVersion: ast.RegoV1})
		require.NoError(t, err)
	}
	c.Compile(mods)
	require.False(t, c.Failed(), "%v", c.Errors)
	e := newEngine(func([]string) (*ast.Compiler, error) { return c, nil })
	require.NoError(t, e.take([]rules.Rule{
		{ID: "a/b", Severity: "stop", Subject: "hoses", Scope: []string{"carries_ammonia"}, Needs: []string{"hoses.rated_kpa"}},
	}, nil))
	return e
}

// ammonia is one hose in the scope of the rule, and one that is not.
func ammonia() *facts.Facts {
	return &facts.Facts{Schema: facts.Schema, Hoses: []facts.Hose{
		{ID: "H1", Ammonia: true, RatedKPa: facts.Know(1600)}, {ID: "H2", RatedKPa: facts.Know(1600)},
	}}
}

// TestNoVerdictFromBrokenRules: whatever the engine gives that is not a proper set of findings is an error, never a line
// without findings.
func TestNoVerdictFromBrokenRules(t *testing.T) {
	report := func(object string) string { return "package rules.a.b\nreport contains " + object }
	for name, tc := range map[string]struct{ rule, verdict, want string }{
		"panic":               {report(`{"subject": "H1", "x": test.panics(1)}`), "", "panicked: illegal value"},
		"no result":           {"package rules.a.b", "package verdict\nfindings := 1 if false", "no result"},
		"no verdict package":  {report(`{"subject": "H1"}`), "package other", "no result"},
		"not an object":       {"package rules.a.b", "package verdict\nfindings := [1]", "not findings by area"},
		"fault is no set":     {"package rules.a.b\nreport := [1]", "", "not a set"},
		"area is no object":   {"package rules.a.b", `package verdict` + "\n" + `findings := {"a": 1}`, "a is 1"},
		"key is no word":      {"package rules.a.b", `package verdict` + "\n" + `findings := {1: {}}`, "key 1 is not a word"},
		"unknown rule":        {"package rules.a.c\n" + `report contains {"subject": "H1"}`, "", "no rule a/c"},
		"unknown area":        {"package rules.z.b\n" + `report contains {"subject": "H1"}`, "", "no rule z/b"},
		"report is no object": {report(`"H1"`), "", "is not an object"},
		"no subject":          {report(`{"part": "H1"}`), "", "names no subject"},
		"empty subject":       {report(`{"subject": ""}`), "", "names no subject"},
		"subject is a number": {report(`{"subject": 1}`), "", "subject is 1"},
		"part is a number":    {report(`{"subject": "H1", "part": 7}`), "", "part is 7"},
		"fraction":            {report(`{"subject": "H1", "x_kpa": 0.5}`), "", "x_kpa is 0.5"},
		"beyond 64 bits":      {report(`{"subject": "H1", "x_kpa": 9223372036854775808}`), "", "x_kpa is 9223372036854775808"},
		"yes or no":           {report(`{"subject": "H1", "x": true}`), "", "x is true"},
		"null":                {report(`{"subject": "H1", "x": null}`), "", "x is null"},
		"list":                {report(`{"subject": "H1", "x": ["y"]}`), "", `x is ["y"]`},
		"unknown subject":     {report(`{"subject": "H3"}`), "", `"H3"`},
		"out of scope":        {report(`{"subject": "H2"}`), "", `"H2", which is not one of the hoses it judges`},
		"built-in fails":      {report(`{"subject": "H1", "x_kpa": to_number("many")}`), "", "to_number"},
		"two values":          {"package rules.a.b\nreport := {1} if true\nreport := {2} if true", "", "conflict"},
	} {
		t.Run(name, func(t *testing.T) {
			e := engineOf(t, tc.rule, tc.verdict)
			d, err := e.Unguarded().Decide(context.Background(), ammonia())
			require.ErrorContains(t, err, tc.want)
			assert.Empty(t, d)
			if tc.verdict != "" || strings.HasPrefix(name, "unknown ") {
				return // only the query for everything can meet these
			}
			d, err = e.Decide(context.Background(), ammonia())
			require.ErrorContains(t, err, tc.want)
			assert.Empty(t, d)
		})
	}
}

// TestNoVerdictFromAbsentRules: a rule that is in the index and not in the program is a fault too.
func TestNoVerdictFromAbsentRules(t *testing.T) {
	for name, rule := range map[string]string{
		"no such rule": "package rules.a.c",
		"no report":    "package rules.a.b",
		"no value":     "package rules.a.b\nreport := {1} if false",
	} {
		t.Run(name, func(t *testing.T) {
			d, err := engineOf(t, rule, "").Decide(context.Background(), ammonia())
			require.ErrorContains(t, err, "no result")
			assert.Empty(t, d)
		})
	}
}

// TestEdgesOfProperFindings are the twins of the above that must pass.
func TestEdgesOfProperFindings(t *testing.T) {
	for name, object := range map[string]string{
		"subject only":    `{"subject": "H1"}`,
		"largest number":  `{"subject": "H1", "x_kpa": 9223372036854775807}`,
		"smallest number": `{"subject": "H1", "x_kpa": -9223372036854775808}`,
		"arithmetic":      `{"subject": "H1", "x_kpa": 4 * 1034}`,
	} {
		t.Run(name, func(t *testing.T) {
			e := engineOf(t, "package rules.a.b\nreport contains "+object, "")
			for _, e := range []*Engine{e, e.Unguarded()} {
				d, err := e.Decide(context.Background(), ammonia())
				require.NoError(t, err)
				assert.Len(t, d.Findings, 1)
			}
		})
	}
}

// TestCancelledIsNoVerdict: the query itself would end before it looked at the context.
func TestCancelledIsNoVerdict(t *testing.T) {
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	e, _ := builtin(t)
	d, err := e.Decide(ctx, ammonia())
	require.ErrorIs(t, err, context.Canceled)
	assert.Empty(t, d)
}
