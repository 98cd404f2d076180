package batch

import (
	"context"

	"lineworthy/check/decide"
	"lineworthy/rules"
)

// Facts makes judges of lines that come as facts, sharing one engine.
func Facts(e *decide.Engine, index []rules.Rule) func() Judge {
	severity := severities(index)
	return func() Judge {
		r, b := newReader(e.HasSite()), []byte(nil)
		return func(ctx context.Context, i Item) Answer {
			f, err := r.read(i.Text)
			if err != nil {
				return Answer{Err: err}
			}
			x, err := e.Brief(ctx, f)
			if err != nil {
				return Answer{Err: err}
			}
			b = appendBrief(b[:0], i.Name, f.Line.ID, x, severity)
			return Answer{Word: x.Word, Text: b}
		}
	}
}

func severities(index []rules.Rule) map[string]string {
	out := make(map[string]string, len(index))
	for _, r := range index {
		out[r.ID] = r.Severity
	}
	return out
}
