package report

import (
	"fmt"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"
)

// group is the findings of one rule that ask for the same thing, so that the advice is given once.
type group struct {
	Finding
	items []Finding
}

// groups are the findings of one severity, in the order in which their rules first appear.
func groups(v *Verdict, severity string) []group {
	var out []group
	at := map[string]int{}
	for _, f := range v.Findings {
		if f.Severity != severity {
			continue
		}
		key := fmt.Sprintf("%q %q %q %q", f.Rule, f.Title, f.Action, f.Basis)
		i, ok := at[key]
		if !ok {
			i = len(out)
			at[key] = i
			out = append(out, group{Finding: f})
		}
		out[i].items = append(out[i].items, f)
	}
	return out
}

// place is what a finding is about: the part, the thing within it, the operating case.
func place(f Finding) string {
	names := []string{f.Subject}
	if !strings.Contains(f.Subject, f.Part) {
		names = []string{f.Part, f.Subject}
	}
	if f.Case != "" && !strings.Contains(f.Subject, f.Case) {
		names = append(names, f.Case)
	}
	names = slices.DeleteFunc(names, func(s string) bool { return s == "" })
	return strings.Join(names, ", ")
}

// mentions is whether a text has the name as a whole, so that H12 is not taken for H1.
func mentions(text, name string) bool {
	inWord := func(r rune) bool { return unicode.IsLetter(r) || unicode.IsDigit(r) || r == '-' || r == '_' }
	for from := 0; name != ""; {
		at := strings.Index(text[from:], name)
		if at < 0 {
			return false
		}
		before, _ := utf8.DecodeLastRuneInString(text[:from+at])
		from += at + len(name)
		after, _ := utf8.DecodeRuneInString(text[from:])
		if !inWord(before) && !inWord(after) {
			return true
		}
	}
	return true
}

// missing is a gap in knowledge: one thing to find out, for all the subjects that miss it.
type missing struct {
	subjects, facts, rules []string
	why, ask               string
}

// gaps joins the missing facts that have the same reason and the same remedy.
func gaps(v *Verdict) []*missing {
	var out []*missing
	at := map[[2]string]*missing{}
	for _, u := range v.Unjudged {
		m := at[[2]string{u.Why, u.Ask}]
		if m == nil {
			m = &missing{why: u.Why, ask: u.Ask}
			at[[2]string{u.Why, u.Ask}] = m
			out = append(out, m)
		}
		m.subjects = add(m.subjects, u.Subject)
		m.facts = add(m.facts, u.Fact)
		m.rules = add(m.rules, u.Rules...)
	}
	return out
}

// add appends what is not there yet.
func add(list []string, more ...string) []string {
	for _, s := range more {
		if s != "" && !slices.Contains(list, s) {
			list = append(list, s)
		}
	}
	return list
}
