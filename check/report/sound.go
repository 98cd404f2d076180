package report

import (
	"errors"
	"fmt"
	"slices"
	"strings"
)

// sound refuses a verdict whose word is kinder than what stands below it: a report is read by its first word.
func sound(v *Verdict) error {
	var faults []error
	say := func(wrong bool, format string, args ...any) {
		if wrong {
			faults = append(faults, fmt.Errorf(format, args...))
		}
	}
	say(v.Schema != Schema, "the document is %q, but this program reads %q", v.Schema, Schema)
	say(wordRank(v.Word) < 0, "%q is no verdict word; the words are %s", v.Word, wordList())
	for i, f := range v.Findings {
		say(!slices.Contains(severities, f.Severity), "finding %d (%s) has the severity %q; known are %s",
			i+1, f.Rule, f.Severity, strings.Join(severities, ", "))
	}
	stops, conditions := count(v, stop), count(v, condition)
	say(stops > 0 && v.Word != Unfit, "the word is %s, but findings that stop the line stand below it: %d", v.Word, stops)
	if v.Word == Fit {
		say(conditions > 0, "the word is fit, but conditions stand below it: %d", conditions)
		say(len(v.Unjudged) > 0, "the word is fit, but things could not be judged: %d", len(v.Unjudged))
		say(len(v.Confirm) > 0, "the word is fit, but values are still to be confirmed: %d", len(v.Confirm))
		say(things(v) == 0, "the word is fit, but no rule judged anything")
	}
	if len(faults) > 0 {
		return fmt.Errorf("the verdict on line %q cannot be reported: %w", v.Line, errors.Join(faults...))
	}
	return nil
}

func count(v *Verdict, severity string) int {
	n := 0
	for _, f := range v.Findings {
		if f.Severity == severity {
			n++
		}
	}
	return n
}

// things counts what was judged, over all rules.
func things(v *Verdict) int {
	n := 0
	for _, j := range v.Judged {
		n += len(j.Judged)
	}
	return n
}
