package decide

import (
	"context"
	"fmt"

	"lineworthy/check/facts"
)

// Brief is a decision without the lists of what was judged, for many lines at once.
type Brief struct {
	Word     string    // unfit, unproven, conditional or fit
	Findings []Finding // as in Decision; do not change them
	Missing  []Missing // each fact once that keeps a stop or condition from being judged
}

// Brief judges one line. Errors as Decide.
func (e *Engine) Brief(ctx context.Context, f *facts.Facts) (Brief, error) {
	found, cut, err := e.found(ctx, f)
	if err != nil {
		return Brief{}, err
	}
	b, scope := Brief{Findings: found}, f.Scope()
	for _, x := range found {
		if r := e.rules[x.Rule]; !scope.Judges(e.questions[r.place], x.Subject) {
			return Brief{}, fmt.Errorf("decide: %s found something on %q, which is not one of the %s it judges", x.Rule, x.Subject, r.subject)
		}
	}
	b.Missing = e.missing(scope, cut)
	b.Word = e.word(b)
	return b, nil
}

// missing gathers the facts that are missing: several rules may wait for one.
func (e *Engine) missing(scope *facts.Scope, cut map[string]string) []Missing {
	var out []Missing
	var seen map[[2]string]bool
	for i, q := range e.questions {
		if e.silent[i] {
			continue
		}
		for _, m := range e.unjudged(scope, q, e.order[i], cut) {
			if seen == nil {
				seen = map[[2]string]bool{}
			}
			if key := [2]string{m.Subject, m.Fact}; !seen[key] {
				seen[key] = true
				out = append(out, m)
			}
		}
	}
	return out
}

// word is the verdict: any stop is unfit, else any missing knowledge is unproven, else any condition is conditional.
func (e *Engine) word(b Brief) string {
	worst := len(ranks)
	for _, x := range b.Findings {
		worst = min(worst, e.rules[x.Rule].rank)
	}
	switch {
	case worst == ranks["stop"]:
		return "unfit"
	case len(b.Missing) > 0:
		return "unproven"
	case worst == ranks["condition"]:
		return "conditional"
	}
	return "fit"
}

// unjudged is what keeps one rule from judging.
func (e *Engine) unjudged(scope *facts.Scope, q *facts.Question, rule string, cut map[string]string) []Missing {
	why := ""
	if len(cut) > 0 {
		why = cut[rule]
	}
	if why == "" {
		return scope.Missing(q)
	}
	var out []Missing
	for _, id := range scope.Judged(q) {
		out = append(out, cutOff(rule, id, why))
	}
	return out
}
