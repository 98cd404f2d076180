package decide

import (
	"context"
	"fmt"
	"strings"
	"sync/atomic"
	"time"

	"github.com/open-policy-agent/opa/v1/ast"

	"lineworthy/check/facts"
	"lineworthy/rules"
)

// site are the rules of a site. Whatever one of them does, the others judge: one that takes too long, fails or reports
// nonsense is cut off, and what it should have judged counts as not judged.
type site struct {
	program *program
	rules   []*siteRule
	places  map[int]bool // in the index
	limit   time.Duration
}

type siteRule struct {
	id    string
	place int
	late  atomic.Int32 // how often it took too long
}

const (
	siteLimit = time.Second // for one rule on one line
	mostLate  = 3           // and then it is not asked again
)

func newSite(c *core, own *rules.Site) (*site, error) {
	if own == nil {
		return nil, nil
	}
	compiler, err := own.Compiler()
	if err != nil {
		return nil, err
	}
	p, err := newProgram(compiler, own.Data())
	if err != nil {
		return nil, err
	}
	s := &site{program: p, places: map[int]bool{}, limit: siteLimit}
	for i, id := range c.order {
		if !strings.HasPrefix(id, "site/") {
			continue
		}
		s.rules, s.places[i] = append(s.rules, &siteRule{id: id, place: i}), true
	}
	return s, nil
}

// HasSite says whether there are rules of a site among the rules.
func (e *Engine) HasSite() bool { return e.site != nil }

// has says whether the rule at a place of the index is one of the site.
func (s *site) has(place int) bool { return s != nil && s.places[place] }

// find puts every rule of the site to its subjects. The error is that of ctx.
func (s *site) find(ctx context.Context, e *Engine, f *facts.Facts) ([]Finding, map[string]string, error) {
	var out []Finding
	var input ast.Value
	cut, scope := map[string]string{}, f.Scope()
	for _, r := range s.rules {
		if len(scope.Judged(e.questions[r.place])) == 0 {
			continue
		}
		if input == nil {
			input = value(f)
		}
		found, err := s.ask(ctx, e, r, input, scope)
		switch {
		case ctx.Err() != nil:
			return nil, nil, ctx.Err()
		case err != nil:
			cut[r.id] = err.Error()
		default:
			out = append(out, found...)
		}
	}
	return out, cut, nil
}

// ask puts one rule. The error is why it is cut off.
func (s *site) ask(ctx context.Context, e *Engine, r *siteRule, input ast.Value, scope *facts.Scope) ([]Finding, error) {
	if r.late.Load() >= mostLate {
		return nil, fmt.Errorf("the rule of the site took longer than %s on %d lines and is not asked again", s.limit, mostLate)
	}
	own, stop := context.WithTimeout(ctx, s.limit)
	defer stop()
	q := e.queries[r.place]
	got, err := s.program.eval(own, ast.Body{q.expr}, input)
	switch {
	case own.Err() != nil:
		r.late.Add(1)
		return nil, fmt.Errorf("the rule of the site took longer than %s and was stopped", s.limit)
	case err != nil:
		return nil, fmt.Errorf("the rule of the site failed: %s", strings.TrimPrefix(err.Error(), "decide: "))
	}
	found, err := e.reports(r.id, got[q.out])
	if err != nil {
		return nil, fmt.Errorf("the rule of the site gave no proper findings: %w", err)
	}
	for _, x := range found {
		if !scope.Judges(e.questions[r.place], x.Subject) {
			return nil, fmt.Errorf("the rule of the site found something on %q, which is not one of the %s it judges", x.Subject, e.rules[r.id].subject)
		}
	}
	return found, nil
}

// refOf is where the engine finds the report of a rule.
func refOf(id string) ast.Ref {
	ref := ast.Ref{ast.DefaultRootDocument}
	if !strings.HasPrefix(id, "site/") {
		ref = append(ref, ast.InternedTerm("rules"))
	}
	for part := range strings.SplitSeq(id, "/") {
		ref = append(ref, ast.StringTerm(part))
	}
	return append(ref, ast.InternedTerm("report"))
}
