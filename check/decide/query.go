package decide

import (
	"context"
	"errors"
	"fmt"
	"time"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/metrics"
	"github.com/open-policy-agent/opa/v1/topdown"

	"lineworthy/check/facts"
)

// everything asks what a stock engine is asked.
func (e *Engine) everything(ctx context.Context, f *facts.Facts) ([]Finding, error) {
	p, query, err := e.stock()
	if err != nil {
		return nil, err
	}
	got, err := p.eval(ctx, query, value(f))
	if err != nil {
		return nil, err
	}
	areas, ok := got["found"].Value.(ast.Object)
	if !ok {
		return nil, fmt.Errorf("decide: the rules gave %v, not findings by area and fault", got["found"])
	}
	return e.findings(areas)
}

// some puts the rules that may find something, and shows them only what they read.
func (e *Engine) some(ctx context.Context, p *program, asks []ask, f *facts.Facts) ([]Finding, error) {
	query := make(ast.Body, len(asks))
	for i, a := range asks {
		query[i] = e.queries[a.rule].expr
	}
	got, err := p.eval(ctx, query, e.viewOf(asks).value(f))
	if err != nil {
		return nil, err
	}
	out := []Finding{}
	for _, a := range asks {
		list, err := e.reports(e.order[a.rule], got[e.queries[a.rule].out])
		if err != nil {
			return nil, fmt.Errorf("decide: the rules gave no proper findings: %w", err)
		}
		out = append(out, e.remember(a, list, f)...)
	}
	return out, nil
}

// eval asks the engine. A query this small may end under a cancelled context as if nothing had happened, and some values
// make the engine panic: both are looked after here.
func (p *program) eval(ctx context.Context, query ast.Body, input ast.Value) (got topdown.QueryResult, err error) {
	defer func() {
		if x := recover(); x != nil {
			got, err = nil, fmt.Errorf("decide: the rules engine panicked: %v", x)
		}
	}()
	if err := ctx.Err(); err != nil {
		return nil, err
	}
	results := 0
	q := topdown.NewQuery(query).WithCompiler(p.compiler).WithStore(p.store).WithTransaction(p.read).
		WithInput(ast.NewTerm(input)).WithStrictBuiltinErrors(true).WithMetrics(metrics.NoOp()).WithTime(noTime)
	if ctx.Done() != nil {
		cancel := topdown.NewCancel()
		defer context.AfterFunc(ctx, cancel.Cancel)()
		q = q.WithCancel(cancel)
	}
	err = q.Iter(ctx, func(r topdown.QueryResult) error { got, results = r, results+1; return nil })
	switch {
	case ctx.Err() != nil:
		return nil, ctx.Err()
	case err != nil:
		return nil, fmt.Errorf("decide: %w", err)
	case results != 1:
		return nil, errors.New("decide: the rules gave no result")
	}
	return got, nil
}

// noTime is what the engine would take for now, if any rule could ask.
var noTime = time.Unix(1, 0)
