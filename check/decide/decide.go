// Package decide puts the facts of a line to the rules and brings back what they found.
//
// It fails closed: whatever is not a complete, well-formed answer of the rules engine is an error, and then there is no
// verdict.
package decide

import (
	"context"
	"fmt"
	"sync"
	"sync/atomic"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/version"

	"lineworthy/check/facts"
	"lineworthy/rules"
)

// Name is the rules engine and its version.
func Name() string { return "OPA " + version.Version }

// Engine judges facts. It is safe for concurrent use: all share what is compiled.
type Engine struct {
	*core
	unguarded bool
	past      *memory // nil for none
}

// core is what engines of one set of rules share.
type core struct {
	rules     map[string]*rule
	order     []string          // ids of the rules as in the index
	questions []*facts.Question // in that order
	guards    []*guard          // in that order; nil for a rule that always runs
	queries   []question        // in that order
	silent    []bool            // in that order: a note, for which no verdict waits
	site      *site             // nil for none

	compile  func(ids []string) (*ast.Compiler, error) // the rules named, or all of them when nil
	compiled atomic.Pointer[[]*program]
	grow     sync.Mutex
	stock    func() (*program, ast.Body, error) // all rules, compiled once
}

// rule is what the engine has to know of a rule to accept its findings.
type rule struct {
	place   int // in the index
	rank    int // of its severity, worst first
	subject string
}

var ranks = map[string]int{"stop": 0, "condition": 1, "note": 2}

// New makes an engine of a set of rules. A rule is compiled when a line first needs it: one line needs few of them. The
// error is a fault of the program, not of a line.
func New(_ context.Context, set rules.Set) (*Engine, error) {
	signs, err := set.Guards()
	if err != nil {
		return nil, err
	}
	e := newEngine(func(ids []string) (*ast.Compiler, error) {
		if ids == nil {
			return set.Compiler()
		}
		return set.CompilerOf(ids)
	})
	if err := e.take(set.Index(), signs); err != nil {
		return nil, err
	}
	e.site, err = newSite(e.core, set.Site())
	return e, err
}

func newEngine(compile func(ids []string) (*ast.Compiler, error)) *Engine {
	e := &Engine{core: &core{rules: map[string]*rule{}, compile: compile}}
	e.compiled.Store(&[]*program{})
	type all struct {
		p *program
		q ast.Body
	}
	once := sync.OnceValues(func() (all, error) {
		p, q, err := e.everyRule()
		return all{p, q}, err
	})
	e.stock = func() (*program, ast.Body, error) {
		x, err := once()
		return x.p, x.q, err
	}
	return e
}

// Unguarded is the same engine without guards: it puts every rule to every line through the one query a stock engine is
// asked. It must find the same, and is there to show that.
func (e *Engine) Unguarded() *Engine { return &Engine{core: e.core, unguarded: true} }

func (e *core) take(index []rules.Rule, signs map[string]rules.Guard) error {
	for _, r := range index {
		rank, ok := ranks[r.Severity]
		if !ok {
			return fmt.Errorf("decide: rule %s has no severity %q", r.ID, r.Severity)
		}
		q, err := facts.NewQuestion(r.Subject, r.Scope, r.Needs)
		if err != nil {
			return fmt.Errorf("decide: rule %s: %w", r.ID, err)
		}
		var g *guard // rules of a site have none
		if x, ok := signs[r.ID]; ok {
			if g, err = newGuard(x); err != nil {
				return fmt.Errorf("decide: rule %s: %w", r.ID, err)
			}
		}
		e.rules[r.ID] = &rule{len(e.order), rank, r.Subject}
		e.queries, e.silent = append(e.queries, questionOf(len(e.order), r.ID)), append(e.silent, r.Severity == "note")
		e.order, e.questions, e.guards = append(e.order, r.ID), append(e.questions, q), append(e.guards, g)
	}
	return nil
}
