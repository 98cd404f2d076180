package rules

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/cover"
	"github.com/open-policy-agent/opa/v1/tester"
)

// neverRun are the rules of a test file that are neither tests nor private.
func neverRun(m *ast.Module) []Problem {
	var out []Problem
	for _, r := range m.Rules {
		name := strings.Trim(r.Head.Ref()[0].Value.String(), `"`)
		if strings.HasSuffix(r.Location.File, "_test.rego") && !strings.HasPrefix(name, "test_") && !strings.HasPrefix(name, "_") {
			out = append(out, Problem{r.Location.File, r.Location.Row, fmt.Sprintf("%s is never run: name it test_%s or _%s", name, name, name)})
		}
	}
	return out
}

// cases are those of one result: of a table, one for each note.
func cases(r *tester.Result) []SiteTest {
	place := fmt.Sprintf("%s:%d", r.Location.File, r.Location.Row)
	one := SiteTest{Place: place, Name: r.Name, Pass: r.Pass()}
	if r.Error != nil {
		one.Why = r.Error.Error()
	}
	if len(r.SubResults) == 0 {
		return []SiteTest{one}
	}
	var out []SiteTest
	for note, sub := range r.SubResults {
		out = append(out, SiteTest{Place: place, Name: r.Name, Note: note, Pass: !sub.Fail, Why: one.Why})
	}
	return out
}

// unreachedIn are the places of the rules that no test came by.
func unreachedIn(report cover.Report) []Problem {
	var out []Problem
	for file, f := range report.Files {
		if strings.HasSuffix(file, "_test.rego") {
			continue
		}
		for _, r := range f.NotCovered {
			out = append(out, Problem{file, r.Start.Row, "no test reaches here"})
		}
		if f.CoveredLines == 0 {
			out = append(out, Problem{file, 0, "no test reaches it"})
		}
	}
	slices.SortFunc(out, func(a, b Problem) int { return cmp.Or(cmp.Compare(a.Path, b.Path), cmp.Compare(a.Row, b.Row)) })
	return out
}
