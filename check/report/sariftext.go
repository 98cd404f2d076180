package report

import "strings"

// findingText is all of a finding in one text: viewers show nothing else.
func findingText(f Finding) string {
	text := f.Message
	if cells := spaced(measures(f.Have, f.Need, f.Margin)); cells != "" {
		text += " (" + cells + ")"
	}
	return strings.ReplaceAll(ended(text)+" Do: "+f.Action, "\u00a0", " ")
}

func unknownText(u Unjudged) string {
	m := missing{subjects: add(nil, u.Subject), why: u.Why}
	return ended("Could not be judged: "+m.title()) + " Find out: " + u.Ask
}

// ended closes a sentence.
func ended(s string) string {
	if strings.HasSuffix(s, ".") {
		return s
	}
	return s + "."
}

func findingMore(f Finding) map[string]any {
	var basis []string
	for _, b := range f.Basis {
		basis = append(basis, cite(b))
	}
	more := map[string]any{"severity": f.Severity, "basis": append([]string{}, basis...)}
	if f.Case != "" {
		more["case"] = f.Case
	}
	return more
}

// sarifRules are the rules that were applied or found something, and where each stands in the list.
func sarifRules(v *Verdict) ([]sarifRule, map[string]int) {
	rules, at := []sarifRule{}, map[string]int{}
	put := func(id, title, severity, help string) {
		if _, ok := at[id]; !ok {
			at[id] = len(rules)
			rules = append(rules, sarifRule{id, sarifText{title}, sarifText{help}, sarifConfiguration{levels[severity]}})
		}
	}
	help := map[string]string{}
	for _, g := range entryGroups(v) {
		if help[g.Rule] != "" {
			continue
		}
		help[g.Rule] = " Do: " + g.Action
		for _, b := range g.Basis {
			help[g.Rule] += " Basis: " + cite(b) + "."
		}
	}
	for _, j := range v.Judged {
		put(j.Rule, j.Title, j.Severity, ended(j.Title)+" "+order[j.Severity]+help[j.Rule])
	}
	for _, f := range v.Findings {
		put(f.Rule, f.Title, f.Severity, ended(f.Title)+" "+order[f.Severity]+help[f.Rule])
	}
	put(unknownRule, "Something that is needed is not known", condition, "What is not known is never counted as good. Find it out and write it to the sheet.")
	put(confirmRule, "A favourable value is to be confirmed", note, "Look the value up in the document named before the line is used.")
	return rules, at
}
