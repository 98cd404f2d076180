// Package check judges transfer lines: a sheet goes in, a cited verdict comes out.
//
// The way through is one: sheet, resolve, facts, decide, verdict. An Engine is safe for concurrent use.
package check

import (
	"context"
	"fmt"
	"sync"

	"lineworthy/catalog"
	"lineworthy/check/decide"
	"lineworthy/check/facts"
	"lineworthy/check/report"
	"lineworthy/check/resolve"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
	"lineworthy/rules"
)

// Options are what an Engine works with.
type Options struct {
	Catalog *catalog.Catalog // the built-in one when nil
	AsOf    units.Date       // the day a sheet without a date is judged for
	Version string           // of the tool, printed in every verdict
	Rules   *rules.Set       // those of the program alone when nil
	Many    bool             // many lines will come: keep what was found on equal parts of earlier ones, about 10 MB
	AtOnce  int              // the most lines that are judged at once, the others wait; no limit when 0
}

// Engine judges sheets. Make one with New and share it.
type Engine struct {
	o     Options
	rules rules.Set
	byID  map[string]rules.Rule
	judge func() (*decide.Engine, error) // waits for the rules to be compiled
	seats chan struct{}                  // nil for no limit
}

// New loads the rules and starts to compile them; the first sheet is read meanwhile. The error is a fault in the tool.
func New(ctx context.Context, o Options) (*Engine, error) {
	if o.Catalog == nil {
		o.Catalog = catalog.Open()
	}
	set, err := o.set()
	if err != nil {
		return nil, err
	}
	compiled := sync.OnceValues(func() (*decide.Engine, error) {
		d, err := decide.New(ctx, set)
		if err == nil && o.Many {
			d = d.Remembering()
		}
		return d, err
	})
	go compiled()
	e := &Engine{o: o, rules: set, byID: map[string]rules.Rule{}, judge: compiled}
	if o.AtOnce > 0 {
		e.seats = make(chan struct{}, o.AtOnce)
	}
	for _, r := range set.Index() {
		e.byID[r.ID] = r
	}
	return e, nil
}

func (o Options) set() (rules.Set, error) {
	if o.Rules != nil {
		return *o.Rules, nil
	}
	return rules.Load()
}

// Facts are what the rules get to see of the sheet. The error is sheet.Problems when a name is not in the catalog, and
// anything else is a fault in the tool.
func (e *Engine) Facts(s *sheet.Line) (*facts.Facts, error) {
	_, f, err := e.facts(s)
	return f, err
}

func (e *Engine) facts(s *sheet.Line) (*resolve.Line, *facts.Facts, error) {
	line, err := resolve.Resolve(s, e.o.Catalog, resolve.Options{AsOf: e.o.AsOf})
	if err != nil {
		return nil, nil, err
	}
	f, err := facts.Build(line, e.o.Catalog)
	if err == nil {
		f.Line.Unruled = e.unruled(line, f.Line.Regimes)
	}
	return line, f, err
}

// seat waits for its turn, and says how to give it back. The error is that of ctx.
func (e *Engine) seat(ctx context.Context) (leave func(), err error) {
	if err := ctx.Err(); err != nil || e.seats == nil {
		return func() {}, err
	}
	select {
	case e.seats <- struct{}{}:
		return func() { <-e.seats }, nil
	case <-ctx.Done():
		return nil, ctx.Err()
	}
}

// Check judges one sheet. Errors as Facts, and that of ctx when it ends first; there is no verdict with an error.
func (e *Engine) Check(ctx context.Context, s *sheet.Line) (*report.Verdict, error) {
	line, f, judge, leave, err := e.ready(ctx, s)
	if err != nil {
		return nil, err
	}
	defer leave()
	d, err := judge.Decide(ctx, f)
	if err != nil {
		return nil, fmt.Errorf("%s: no verdict: %w", s.File, err)
	}
	v := e.verdict(s, line, f, d)
	if v.Digests.Facts, err = f.Digest(); err != nil {
		return nil, err
	}
	return v, nil
}

// ready waits for a seat, to be left when the line is judged, and works out what the judge needs.
func (e *Engine) ready(ctx context.Context, s *sheet.Line) (line *resolve.Line, f *facts.Facts, judge *decide.Engine, leave func(), err error) {
	if leave, err = e.seat(ctx); err != nil {
		return nil, nil, nil, nil, fmt.Errorf("%s: no verdict: %w", s.File, err)
	}
	if line, f, err = e.facts(s); err == nil {
		judge, err = e.judge()
	}
	if err != nil {
		leave()
	}
	return line, f, judge, leave, err
}

// word is the answer alone.
func (e *Engine) word(ctx context.Context, s *sheet.Line) (report.Word, error) {
	v, err := e.Check(ctx, s)
	if err != nil {
		return "", err
	}
	return v.Word, nil
}
