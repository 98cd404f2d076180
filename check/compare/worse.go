package compare

import (
	"fmt"
	"slices"

	"lineworthy/check/report"
)

var wordRank = []report.Word{report.Fit, report.Conditional, report.Unproven, report.Unfit}

// worse says in which ways the new side is worse than the old one. A note that appears is not worse.
func worse(r *Review) []string {
	out := []string{}
	if slices.Index(wordRank, r.New.Word) > slices.Index(wordRank, r.Old.Word) {
		out = append(out, fmt.Sprintf("the line was %s and is %s", r.Old.Word, r.New.Word))
	}
	for _, m := range r.Findings {
		if m.Severity != "note" && slices.Contains([]string{Appears, Worsens, Open}, m.Way) {
			out = append(out, m.Rule+" "+m.Way+" at "+m.Place)
		}
	}
	if n := len(r.Missing.Appear); n > 0 {
		out = append(out, count(n, "fact is", "facts are")+" missing that "+map[bool]string{true: "was", false: "were"}[n == 1]+" not before")
	}
	return out
}

func count(n int, one, many string) string {
	if n == 1 {
		return "1 " + one
	}
	return fmt.Sprintf("%d %s", n, many)
}
