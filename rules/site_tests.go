package rules

import (
	"cmp"
	"context"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strings"
	"time"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/cover"
	"github.com/open-policy-agent/opa/v1/storage/inmem"
	"github.com/open-policy-agent/opa/v1/tester"
)

// SiteTest is one case of a test of a rule of a site.
type SiteTest struct {
	Place string // file and row
	Name  string // of the test
	Note  string // of the case, if the test is a table
	Pass  bool
	Why   string // of a test that did not run to its end
}

// SiteTests are all cases, and the places of the rules that no case came by.
type SiteTests struct {
	Cases     []SiteTest
	Unreached []Problem
}

// testTime is the longest that one test may take.
const testTime = 10 * time.Second

// TestSite runs the tests beside the rules of a folder, with its limits. The error is a SiteError if a rule or test could
// not even be loaded.
func (s Set) TestSite(ctx context.Context, dir string) (SiteTests, error) {
	own, err := s.WithSite(dir)
	if err != nil {
		return SiteTests{}, err
	}
	modules, problems, err := own.site.tests(dir)
	if err != nil {
		return SiteTests{}, err
	}
	if len(problems) > 0 {
		return SiteTests{}, &SiteError{problems}
	}
	trace := cover.New()
	c := ast.NewCompiler().WithStrict(true).WithCapabilities(siteCapabilities())
	run := tester.NewRunner().SetCompiler(c).SetModules(modules).SetStore(inmem.NewFromObject(own.site.Data())).
		SetCoverageQueryTracer(trace).RaiseBuiltinErrors(true).SetTimeout(testTime)
	results, err := run.RunTests(ctx, nil)
	if err != nil {
		return SiteTests{}, &SiteError{located(dir, err)}
	}
	var out SiteTests
	for r := range results {
		out.Cases = append(out.Cases, cases(r)...)
	}
	slices.SortFunc(out.Cases, func(a, b SiteTest) int {
		return cmp.Or(cmp.Compare(a.Place, b.Place), cmp.Compare(a.Name, b.Name), cmp.Compare(a.Note, b.Note))
	})
	out.Unreached = unreachedIn(trace.Report(modules))
	return out, ctx.Err()
}

// tests parses the rules of the folder and the tests beside them. A test that would never run is a fault.
func (s *Site) tests(dir string) (map[string]*ast.Module, []Problem, error) {
	out, problems, fsys := map[string]*ast.Module{}, []Problem(nil), os.DirFS(dir)
	add := func(file, text string) {
		m, err := parse(Module{filepath.Join(dir, filepath.FromSlash(file)), text}, false)
		if err != nil {
			problems = append(problems, located(file, err)...)
			return
		}
		out[m.Package.Location.File] = m
		problems = append(problems, neverRun(m)...)
	}
	for _, m := range s.modules {
		file := strings.TrimPrefix(m.Path, sitePrefix)
		if _, err := fs.Stat(fsys, file); err != nil {
			continue // a general rule, which is tested with the program
		}
		add(file, m.Text)
		found, err := fs.Glob(fsys, path.Dir(file)+"/*_test.rego")
		if err != nil {
			return nil, nil, err
		}
		if len(found) == 0 {
			problems = append(problems, Problem{filepath.Join(dir, file), 0, "has no test: write one beside it in rule_test.rego"})
		}
		for _, test := range found {
			text, err := fs.ReadFile(fsys, test)
			if err != nil {
				return nil, nil, err
			}
			add(test, string(text))
		}
	}
	return out, problems, nil
}
