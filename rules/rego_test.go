package rules

import (
	"context"
	"flag"
	"fmt"
	"io/fs"
	"os"
	"path"
	"strings"
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/cover"
	"github.com/open-policy-agent/opa/v1/tester"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

var update = flag.Bool("update", false, "rewrite the index and the pages of the rules")

// fewestNotes is below, at, past and unknown.
const fewestNotes = 4

// here is this folder with its tests, which are not embedded.
var here = os.DirFS(".")

// folders are all that hold rules, and the one that gathers them.
func folders(t *testing.T) []string {
	t.Helper()
	modules, err := read(here)
	require.NoError(t, err)
	var out []string
	for _, m := range modules {
		out = append(out, path.Dir(m.Path))
	}
	return out
}

// TestRego runs the tests each rule brings, one Go subtest for each note of a table.
func TestRego(t *testing.T) {
	for _, dir := range folders(t) {
		t.Run(dir, func(t *testing.T) {
			t.Parallel()
			results, _ := runTests(t, here, dir)
			require.NotEmpty(t, results, "%s has no tests: write %s/rule_test.rego with rules named test_...", dir, dir)
			notes := 0
			for _, r := range results {
				notes += show(t, r)
			}
			assert.GreaterOrEqual(t, notes, fewestNotes, "%s: too few notes: below, at, one past the limit, unknown", dir)
		})
	}
}

// TestCoverage wants each rule covered by its own tests alone.
func TestCoverage(t *testing.T) {
	for _, dir := range folders(t) {
		t.Run(dir, func(t *testing.T) {
			t.Parallel()
			_, report := runTests(t, here, dir)
			assert.Empty(t, unreached(report))
		})
	}
}

// unreached are the places of the rules that no test came by.
func unreached(report cover.Report) []string {
	var out []string
	for file, f := range report.Files {
		if strings.HasSuffix(file, "_test.rego") {
			continue
		}
		for _, r := range f.NotCovered {
			out = append(out, fmt.Sprintf("%s:%d-%d: no test of this rule reaches here", file, r.Start.Row, r.End.Row))
		}
		if f.CoveredLines == 0 {
			out = append(out, file+": no test reaches it")
		}
	}
	return out
}

// misnamed are the rules of a test file that are neither tests nor private: they look like tests and are never run.
func misnamed(file string, m *ast.Module) []string {
	var out []string
	for _, r := range m.Rules {
		name := r.Head.Ref()[0].Value.String()
		name = strings.Trim(name, `"`)
		if strings.HasSuffix(file, "_test.rego") && !strings.HasPrefix(name, "test_") && !strings.HasPrefix(name, "_") {
			out = append(out, fmt.Sprintf("%s:%d: %s is never run: name it test_%s or _%s", file, r.Location.Row, name, name, name))
		}
	}
	return out
}

// show makes Go subtests of a result and says how many cases it had.
func show(t *testing.T, r *tester.Result) int {
	t.Run(r.Name, func(t *testing.T) {
		if !r.Pass() && len(r.SubResults) == 0 {
			t.Errorf("%s: %v %s (a test must be true)", r.Location, r.Error, r.Output)
		}
		require.NoError(t, r.Error)
		require.False(t, r.Skip, "skipped: a name must begin with test_")
		for note, sub := range r.SubResults {
			t.Run(note, func(t *testing.T) {
				assert.False(t, sub.Fail, "%s: %q is not what was wanted", r.Location, note)
			})
		}
	})
	return max(1, len(r.SubResults))
}

// runTests compiles the files of one folder and runs what they hold.
func runTests(t *testing.T, fsys fs.FS, dir string) ([]*tester.Result, cover.Report) {
	t.Helper()
	mods := map[string]*ast.Module{}
	paths, err := fs.Glob(fsys, dir+"/*.rego")
	require.NoError(t, err)
	for _, p := range paths {
		text, err := fs.ReadFile(fsys, p)
		require.NoError(t, err)
		mods[p], err = parse(Module{p, string(text)}, false)
		require.NoError(t, err)
		assert.Empty(t, misnamed(p, mods[p]))
	}
	c, trace := ast.NewCompiler().WithStrict(true).WithCapabilities(Capabilities()), cover.New()
	run := tester.NewRunner().SetCompiler(c).SetModules(mods).SetCoverageQueryTracer(trace).RaiseBuiltinErrors(true)
	ch, err := run.RunTests(context.Background(), nil)
	require.NoError(t, err)
	var out []*tester.Result
	for r := range ch {
		out = append(out, r)
	}
	return out, trace.Report(mods)
}
