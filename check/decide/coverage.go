package decide

import (
	"fmt"
	"slices"

	"lineworthy/check/facts"
)

// Missing is a fact that a rule wanted of a subject: what, why it is not known, and who can supply it.
type Missing = facts.Unknown

// Coverage says for one rule what it was applied to.
type Coverage struct {
	Rule          string
	Judged        []string // subjects
	NotApplicable []string // subjects out of its scope
	Unjudged      []Missing
	open          []string // the subjects of Unjudged: a fact of the line may be what is missing
}

// coverage is worked out in Go, because a rule that lacks a fact says nothing at all.
func (e *Engine) coverage(f *facts.Facts, cut map[string]string) []Coverage {
	out := make([]Coverage, len(e.order))
	for i, a := range f.Answers(e.questions) {
		out[i] = Coverage{e.order[i], a.Judged, a.NotApplicable, a.Missing, a.Open}
		if why := cut[e.order[i]]; why != "" {
			out[i].cut(why)
		}
	}
	return out
}

// Covered is what some rules of the program were applied to, in the order of ids, without judging anything.
func (e *Engine) Covered(f *facts.Facts, ids ...string) []Coverage {
	var questions []*facts.Question
	for _, id := range ids {
		questions = append(questions, e.questions[e.rules[id].place])
	}
	out := make([]Coverage, len(ids))
	for i, a := range f.Answers(questions) {
		out[i] = Coverage{ids[i], a.Judged, a.NotApplicable, a.Missing, a.Open}
	}
	return out
}

// cut says that a rule judged nothing after all.
func (c *Coverage) cut(why string) {
	c.open = slices.Concat(c.Judged, c.open)
	c.Judged, c.Unjudged = nil, nil
	for _, id := range c.open {
		c.Unjudged = append(c.Unjudged, cutOff(c.Rule, id, why))
	}
}

// cutOff is what is missing where a rule of the site gave no answer: the rule itself.
func cutOff(rule, subject, why string) Missing {
	return Missing{Subject: subject, Fact: rule, Why: why, Ask: "whoever wrote the rule " + rule + ", to mend it"}
}

// within refuses findings on what a rule says it does not judge, or on what there is not.
func (e *Engine) within(d Decision) error {
	permitted := map[string]map[string]bool{}
	for _, f := range d.Findings {
		permitted[f.Rule] = map[string]bool{}
	}
	for _, c := range d.Coverage {
		if set := permitted[c.Rule]; set != nil {
			for _, list := range [][]string{c.Judged, c.open} {
				for _, id := range list {
					set[id] = true
				}
			}
		}
	}
	for _, f := range d.Findings {
		if !permitted[f.Rule][f.Subject] {
			return fmt.Errorf("decide: %s found something on %q, which is not one of the %s it judges", f.Rule, f.Subject, e.rules[f.Rule].subject)
		}
	}
	return nil
}
