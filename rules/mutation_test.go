package rules

import (
	"context"
	"io/fs"
	"os"
	"path"
	"runtime"
	"slices"
	"sync"
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/tester"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gopkg.in/yaml.v3"
)

const (
	survivorsFile = "survivors.yaml"
	wantedPermill = 980 // of all mutants that compile
	sampleStep    = 23  // with -short one mutant in so many is tried; a prime, so that all kinds are met
)

// survivor is a mutant that no test can tell from the rule, and why.
type survivor struct {
	ID  string `yaml:"mutant"`
	Why string `yaml:"why"`
}

// TestMutants changes the rules in every small way and wants their own tests to notice: all changes, or with -short a
// sample. A mutant in the list of survivors must survive, or the list is out of date.
func TestMutants(t *testing.T) {
	all, known := everyMutant(t), survivors(t)
	if testing.Short() {
		all = sample(all)
	}
	killed, stillborn, lived := fates(t, all)
	total := len(all) - stillborn
	t.Logf("%d changes, %d killed, %d survive, %d more do not compile: %.2f %% killed", total, killed, len(lived), stillborn,
		100*float64(killed)/float64(total))
	assert.GreaterOrEqual(t, killed*1000, total*wantedPermill, "too many survive")
	unknown := slices.DeleteFunc(slices.Clone(lived), func(id string) bool { return known[id] != "" })
	assert.Empty(t, unknown, "write the case that kills it, or a reason in "+survivorsFile)
	if testing.Short() {
		return
	}
	for id := range known {
		assert.Contains(t, lived, id, "killed or gone: take it out of "+survivorsFile)
	}
}

// work is one mutant with the tests that should kill it.
type work struct {
	mutant
	file, tests string
}

func everyMutant(t *testing.T) []work {
	t.Helper()
	modules, err := read(here)
	require.NoError(t, err)
	var all []work
	for _, m := range modules {
		id, ok := m.id()
		if !ok {
			continue
		}
		tests, err := fs.ReadFile(here, path.Join(id, "rule_test.rego"))
		require.NoError(t, err)
		changed, err := mutants(m)
		require.NoError(t, err)
		require.NotEmpty(t, changed, id)
		for _, x := range changed {
			all = append(all, work{x, m.Path, string(tests)})
		}
	}
	return all
}

func sample(all []work) []work {
	var out []work
	for i := 0; i < len(all); i += sampleStep {
		out = append(out, all[i])
	}
	return out
}

// fates tries all mutants on all cores. The survivors come sorted.
func fates(t *testing.T, all []work) (killed, stillborn int, lived []string) {
	t.Helper()
	fate := make([]string, len(all))
	var wait sync.WaitGroup
	for w := range runtime.GOMAXPROCS(0) {
		wait.Go(func() {
			for i := w; i < len(all); i += runtime.GOMAXPROCS(0) {
				fate[i] = try(all[i])
			}
		})
	}
	wait.Wait()
	for i, f := range fate {
		switch f {
		case "killed":
			killed++
		case "stillborn":
			stillborn++
		default:
			lived = append(lived, all[i].ID)
		}
	}
	slices.Sort(lived)
	return killed, stillborn, lived
}

// try runs the tests of a rule against one mutant. Not strict: a variable that nothing reads any more is the mutation.
func try(w work) string {
	mods := map[string]*ast.Module{}
	for _, m := range []Module{{w.file, w.Text}, {path.Join(path.Dir(w.file), "rule_test.rego"), w.tests}} {
		parsed, err := parse(m, false)
		if err != nil {
			return "stillborn"
		}
		mods[m.Path] = parsed
	}
	c := ast.NewCompiler().WithCapabilities(Capabilities())
	ch, err := tester.NewRunner().SetCompiler(c).SetModules(mods).RunTests(context.Background(), nil)
	if err != nil {
		return "stillborn"
	}
	out := "lived"
	for r := range ch {
		if !r.Pass() || r.Error != nil {
			out = "killed"
		}
	}
	return out
}

func survivors(t *testing.T) map[string]string {
	t.Helper()
	text, err := os.ReadFile(survivorsFile)
	require.NoError(t, err)
	var list []survivor
	require.NoError(t, yaml.Unmarshal(text, &list))
	out := map[string]string{}
	for _, s := range list {
		require.NotEmpty(t, s.Why, "%s: a survivor needs a reason", s.ID)
		out[s.ID] = s.Why
	}
	return out
}

// TestMutating: each kind of change is made, and a test that cannot fail lets mutants live.
func TestMutating(t *testing.T) {
	rule := Module{"a/b/rule.rego", "package rules.a.b\n\nreport contains {\"subject\": h.id} if {\n\tsome h in input.hoses\n" +
		"\th.age_days > _most\n\th.grade in {\"M\"}\n\tnot h.life_stated\n\th.readable == false\n}\n\n_most := 3\n"}
	made, err := mutants(rule)
	require.NoError(t, err)
	var ids []string
	for _, m := range made {
		ids = append(ids, m.ID)
	}
	for _, want := range []string{
		"a/b:5:13 > became >=", "a/b:5:2 dropped: h.age_days > _most", "a/b:5:2 negated: h.age_days > _most", `a/b:6:14 "M" changed`,
		"a/b:7:2 no longer negated: not h.life_stated", "a/b:8:16 false became true", "a/b:11:10 3 became 4", "a/b:11:10 3 became 2",
		"a/b:3:1 clause taken out", "a/b:8:13 == became !=",
	} {
		assert.Contains(t, ids, want)
	}
	blind := "package rules.a.b_test\n\nimport data.rules.a.b\n\ntest_x if count(b.report) >= 0 with input as {\"hoses\": []}\n"
	killed, stillborn, lived := fates(t, []work{{made[1], rule.Path, blind}, {mutant{"x", "package"}, rule.Path, blind}})
	assert.Equal(t, []int{0, 1, 1}, []int{killed, stillborn, len(lived)})
}
