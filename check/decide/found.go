package decide

import (
	"context"
	"slices"

	"lineworthy/check/facts"
)

// Decision is what the rules found, and what each was applied to.
type Decision struct {
	Findings []Finding  // worst first, then by rule, part, subject and case
	Coverage []Coverage // one for every rule, by id
}

// Decide judges one line. The error is a fault of the program, or that of ctx; the Decision is then empty.
func (e *Engine) Decide(ctx context.Context, f *facts.Facts) (Decision, error) {
	found, cut, err := e.found(ctx, f)
	if err != nil {
		return Decision{}, err
	}
	d := Decision{Findings: found, Coverage: e.coverage(f, cut)}
	if err := e.within(d); err != nil {
		return Decision{}, err
	}
	return d, nil
}

// found are the findings of all rules, and why which rules of the site were cut off.
func (e *Engine) found(ctx context.Context, f *facts.Facts) ([]Finding, map[string]string, error) {
	out, err := e.ofProgram(ctx, f)
	if err != nil || e.site == nil {
		return out, nil, err
	}
	own, cut, err := e.site.find(ctx, e, f)
	if err != nil {
		return nil, nil, err
	}
	out = append(out, own...)
	slices.SortStableFunc(out, e.compare)
	return out, cut, nil
}

// ofProgram are the findings of the rules of the program: of all, or of those that can find anything.
func (e *Engine) ofProgram(ctx context.Context, f *facts.Facts) ([]Finding, error) {
	if e.unguarded {
		return e.everything(ctx, f)
	}
	asks, out := e.asks(f), []Finding{}
	if e.past != nil {
		out, asks = e.recall(asks, f)
	}
	shares, err := e.shares(asks)
	if err != nil {
		return nil, err
	}
	for _, s := range shares {
		list, err := e.some(ctx, s.program, s.asks, f)
		if err != nil {
			return nil, err
		}
		out = append(out, list...)
	}
	slices.SortStableFunc(out, e.compare)
	return out, ctx.Err()
}
