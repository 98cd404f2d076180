package report

import (
	"errors"
	"fmt"
	"io"
)

// All writes several verdicts in one format: SARIF with a run and JUnit with a suite for each, text and the others one after
// the other. A page is about one line, so several are refused.
func All(w io.Writer, format string, vs []*Verdict, o Options) error {
	write, err := For(format)
	if err != nil {
		return err
	}
	switch {
	case format == "sarif":
		return sarif(w, vs...)
	case format == "junit":
		return junit(w, vs...)
	case format == "html" && len(vs) > 1:
		return errors.New("an html page is about one line: ask for one page for each verdict")
	}
	for i, v := range vs {
		if i > 0 && format != "json" {
			fmt.Fprintln(w)
		}
		if err := write(w, v, o); err != nil {
			return err
		}
	}
	return nil
}
