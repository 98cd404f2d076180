// Package decide puts the facts of a line to the rules and brings back what they found.
//
// It fails closed: whatever is not a complete, well-formed answer of the rules engine is an error, and then there is no
// verdict.
package decide

import (
	"context"
	"errors"
	"fmt"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/metrics"
	"github.com/open-policy-agent/opa/v1/rego"
	"github.com/open-policy-agent/opa/v1/version"

	"lineworthy/check/facts"
	"lineworthy/rules"
)

// Name is the rules engine and its version.
func Name() string { return "OPA " + version.Version }

// Engine judges facts. It is safe for concurrent use: all share one prepared query.
type Engine struct {
	query     rego.PreparedEvalQuery
	rules     map[string]*rule
	order     []string          // ids of the rules as in the index
	questions []*facts.Question // in that order
}

// rule is what the engine has to know of a rule to accept its findings.
type rule struct {
	rank    int // of its severity, worst first
	subject string
}

var ranks = map[string]int{"stop": 0, "condition": 1, "note": 2}

// New compiles a set of rules. The error is a fault of the program, not of a line.
func New(ctx context.Context, set rules.Set) (*Engine, error) {
	c, err := set.Compiler()
	if err != nil {
		return nil, err
	}
	return prepare(ctx, c, set.Index())
}

// prepare is New behind the compiler, for tests that bring rules of their own.
func prepare(ctx context.Context, c *ast.Compiler, index []rules.Rule) (*Engine, error) {
	q, err := rego.New(
		rego.Query("data.verdict.findings"), rego.Compiler(c), rego.StrictBuiltinErrors(true),
		rego.GenerateJSON(func(t *ast.Term, _ *rego.EvalContext) (any, error) { return t.Value, nil }),
	).PrepareForEval(ctx)
	if err != nil {
		return nil, fmt.Errorf("decide: %w", err)
	}
	e := &Engine{query: q, rules: map[string]*rule{}}
	return e, e.take(index)
}

func (e *Engine) take(index []rules.Rule) error {
	for _, r := range index {
		rank, ok := ranks[r.Severity]
		if !ok {
			return fmt.Errorf("decide: rule %s has no severity %q", r.ID, r.Severity)
		}
		q, err := facts.NewQuestion(r.Subject, r.Scope, r.Needs)
		if err != nil {
			return fmt.Errorf("decide: rule %s: %w", r.ID, err)
		}
		e.rules[r.ID] = &rule{rank, r.Subject}
		e.order, e.questions = append(e.order, r.ID), append(e.questions, q)
	}
	return nil
}

// Decision is what the rules found, and what each was applied to.
type Decision struct {
	Findings []Finding  // worst first, then by rule, part, subject and case
	Coverage []Coverage // one for every rule, by id
}

// Decide judges one line. The error is a fault of the program, or that of ctx; the Decision is then empty.
func (e *Engine) Decide(ctx context.Context, f *facts.Facts) (Decision, error) {
	found, err := e.eval(ctx, f)
	if err != nil {
		return Decision{}, err
	}
	d := Decision{Coverage: e.coverage(f)}
	if d.Findings, err = e.findings(found); err != nil {
		return Decision{}, err
	}
	if err := e.within(d); err != nil {
		return Decision{}, err
	}
	return d, nil
}

// eval asks the engine. A query this small may end under a cancelled context as if nothing had happened, and some values
// make the engine panic: both are looked after here.
func (e *Engine) eval(ctx context.Context, f *facts.Facts) (found ast.Object, err error) {
	defer func() {
		if p := recover(); p != nil {
			found, err = nil, fmt.Errorf("decide: the rules engine panicked: %v", p)
		}
	}()
	if err := ctx.Err(); err != nil {
		return nil, err
	}
	rs, err := e.query.Eval(ctx, rego.EvalParsedInput(value(f)), rego.EvalMetrics(metrics.NoOp()))
	if err != nil {
		return nil, fmt.Errorf("decide: %w", err)
	}
	if len(rs) != 1 || len(rs[0].Expressions) != 1 {
		return nil, errors.New("decide: the rules gave no result")
	}
	found, ok := rs[0].Expressions[0].Value.(ast.Object)
	if !ok {
		return nil, fmt.Errorf("decide: the rules gave %v, not findings by area and fault", rs[0].Expressions[0].Value)
	}
	return found, nil
}
