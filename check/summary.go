package check

import (
	"context"
	"fmt"

	"lineworthy/check/report"
	"lineworthy/check/sheet"
)

// Summary is what a register keeps of a verdict: the answer with its reason, the findings, what is missing and what is to be
// confirmed, the catalog rows, and what the covered rules judged. All else in it is left empty, which takes two thirds of
// the time of Check.
func (e *Engine) Summary(ctx context.Context, s *sheet.Line, covered ...string) (*report.Verdict, error) {
	line, f, judge, leave, err := e.ready(ctx, s)
	if err != nil {
		return nil, err
	}
	defer leave()
	b, err := judge.Brief(ctx, f)
	if err != nil {
		return nil, fmt.Errorf("%s: no verdict: %w", s.File, err)
	}
	v := &report.Verdict{
		Line: s.ID.V, Title: s.Title.V, Sheet: s.File, AsOf: line.AsOf.String(), Digests: report.Digests{Sheet: s.Sum, Catalog: line.Rows},
	}
	e.findings(v, f, b.Findings, &printer{sys: systemOf(s)})
	for _, m := range b.Missing {
		v.Unjudged = append(v.Unjudged, report.Unjudged{Subject: m.Subject, Fact: m.Fact, Why: m.Why, Ask: asked(m)})
	}
	for _, c := range judge.Covered(f, covered...) {
		v.Judged = append(v.Judged, report.Judged{Rule: c.Rule, Judged: c.Judged})
	}
	v.Word, v.Reason = word(v)
	return v, nil
}
