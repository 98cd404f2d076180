package compare

import (
	"maps"
	"regexp"
	"slices"
	"strings"

	"lineworthy/check/report"
)

// renamedText puts new names for old ones wherever they stand as a whole.
func renamedText(s string, renamed []rename) string {
	for _, r := range renamed {
		whole := regexp.MustCompile(`(^|[^\pL\pN_-])` + regexp.QuoteMeta(r.old) + `($|[^\pL\pN_-])`)
		s = whole.ReplaceAllString(s, "${1}"+strings.ReplaceAll(r.new, "$", "$$")+"${2}")
	}
	return s
}

func renamedFindings(all []report.Finding, renamed []rename) []report.Finding {
	out := slices.Clone(all)
	for i := range out {
		out[i].Subject, out[i].Part = renamedText(out[i].Subject, renamed), renamedText(out[i].Part, renamed)
	}
	return out
}

func judgedBy(v *report.Verdict, rule string) (report.Judged, bool) {
	i := slices.IndexFunc(v.Judged, func(j report.Judged) bool { return j.Rule == rule })
	if i < 0 {
		return report.Judged{}, false
	}
	return v.Judged[i], true
}

// whyGone tells a finding that cleared from one that nobody can judge any more.
func whyGone(v *report.Verdict, f report.Finding) (way, why string) {
	j, known := judgedBy(v, f.Rule)
	switch {
	case !known:
		return Open, "the rule " + f.Rule + " is not among the rules of the new verdict"
	case slices.Contains(j.CouldNot, f.Subject):
		return Open, "a fact it needs is missing now"
	case slices.Contains(j.Judged, f.Subject):
		return Clears, ""
	case slices.Contains(j.NotApplicable, f.Subject):
		return Clears, "the rule no longer applies to it"
	}
	return Clears, "what it was about is no longer there"
}

func whyNew(v *report.Verdict, f report.Finding, renamed []rename) string {
	j, known := judgedBy(v, f.Rule)
	has := func(list []string) bool {
		return slices.ContainsFunc(list, func(s string) bool { return renamedText(s, renamed) == f.Subject })
	}
	switch {
	case !known:
		return "the rule " + f.Rule + " was not among the rules before"
	case has(j.CouldNot):
		return "it could not be judged before"
	case has(j.NotApplicable):
		return "the rule did not apply to it before"
	case has(j.Judged):
		return ""
	}
	return "what it is about was not there before"
}

// confirms are the values that wait to be looked up, each with its document.
func confirms(v *report.Verdict, renamed []rename) []string {
	var out []string
	for _, c := range v.Confirm {
		out = append(out, renamedText(c.What, renamed)+" ("+c.Standing+": "+strings.TrimSuffix(c.Source+", "+c.Clause, ", ")+")")
	}
	return out
}

// gaps are the facts that are missing, each with what to find out.
func gaps(v *report.Verdict, renamed []rename) []string {
	var out []string
	for _, u := range v.Unjudged {
		out = append(out, renamedText(u.Subject+": "+u.Why+"; find out: "+u.Ask, renamed))
	}
	return out
}

// shift compares two lists by their texts.
func shift(before, after []string) Shift {
	set := func(list []string) map[string]bool {
		out := map[string]bool{}
		for _, s := range list {
			out[s] = true
		}
		return out
	}
	was, now := set(before), set(after)
	s := Shift{Appear: []string{}, Clear: []string{}}
	for _, text := range slices.Sorted(maps.Keys(now)) {
		if !was[text] {
			s.Appear = append(s.Appear, text)
		}
	}
	for _, text := range slices.Sorted(maps.Keys(was)) {
		if !now[text] {
			s.Clear = append(s.Clear, text)
		}
	}
	return s
}
