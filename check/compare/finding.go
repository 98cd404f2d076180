package compare

import (
	"cmp"
	"regexp"
	"slices"

	"lineworthy/check/report"
)

// The ways a finding can go.
const (
	Appears = "appears"
	Worsens = "worsens"
	Open    = "cannot be judged any more"
	Differs = "differs"
	Stays   = "stays"
	Eases   = "eases"
	Clears  = "clears"
)

// ways is the order in which a reader wants them.
var ways = []string{Appears, Worsens, Open, Differs, Stays, Eases, Clears}

// Move is one finding on its way from the old side to the new one.
type Move struct {
	Way      string   `json:"way"`
	Rule     string   `json:"rule"`
	Severity string   `json:"severity"`
	Was      string   `json:"severity_before,omitempty"` // when it differs
	Title    string   `json:"title"`
	Place    string   `json:"place"`
	Message  string   `json:"message"`
	Before   *Reading `json:"before,omitempty"`
	After    *Reading `json:"after,omitempty"`
	Why      string   `json:"why,omitempty"` // where a look at the margins alone would mislead
}

// Reading is a need, what there is, and the margin between.
type Reading struct {
	Have   string `json:"have"`
	Need   string `json:"need"`
	Margin string `json:"margin"`
}

func moves(before, after Input, renamed []rename) []Move {
	olds, news := renamedFindings(before.Verdict.Findings, renamed), slices.Clone(after.Verdict.Findings)
	out := []Move{}
	for _, alike := range []func(a, b report.Finding) bool{sameSubject, samePlace} {
		olds = slices.DeleteFunc(olds, func(o report.Finding) bool {
			i := slices.IndexFunc(news, func(n report.Finding) bool { return alike(o, n) })
			if i < 0 {
				return false
			}
			out = append(out, kept(o, news[i]))
			news = slices.Delete(news, i, i+1)
			return true
		})
	}
	for _, n := range news {
		m := moveOf(Appears, n)
		m.After, m.Before, m.Why = reading(n), before.counterpart(n, renamed, true), whyNew(before.Verdict, n, renamed)
		out = append(out, m)
	}
	for _, o := range olds {
		m := moveOf(Clears, o)
		m.Before, m.After = reading(o), after.counterpart(o, nil, false)
		m.Way, m.Why = whyGone(after.Verdict, o)
		out = append(out, m)
	}
	slices.SortStableFunc(out, func(a, b Move) int {
		return cmp.Or(cmp.Compare(slices.Index(ways, a.Way), slices.Index(ways, b.Way)), cmp.Compare(rank(a.Severity), rank(b.Severity)),
			cmp.Compare(a.Rule, b.Rule), cmp.Compare(a.Place, b.Place))
	})
	return out
}

func moveOf(way string, f report.Finding) Move {
	return Move{Way: way, Rule: f.Rule, Severity: f.Severity, Title: f.Title, Place: report.Place(f), Message: f.Message}
}

func sameSubject(a, b report.Finding) bool {
	return a.Rule == b.Rule && a.Subject == b.Subject && a.Part == b.Part && a.Case == b.Case
}

// samePlace lets a finding go on where the case or the name of the joint differs but the part does not.
func samePlace(a, b report.Finding) bool { return a.Rule == b.Rule && a.Part != "" && a.Part == b.Part }

func rank(severity string) int { return slices.Index([]string{"stop", "condition", "note"}, severity) }

// kept compares a finding that both sides have.
func kept(o, n report.Finding) Move {
	m := moveOf(Stays, n)
	m.Before, m.After = reading(o), reading(n)
	short, was, ok := lack(n), lack(o), n.Have != "" && o.Have != ""
	switch {
	case rank(n.Severity) < rank(o.Severity):
		m.Way, m.Was = Worsens, o.Severity
	case rank(n.Severity) > rank(o.Severity):
		m.Way, m.Was = Eases, o.Severity
	case ok && short > was:
		m.Way = Worsens
	case ok && short < was:
		m.Way = Eases
	case o.Message != n.Message:
		m.Way = Differs
	}
	return m
}

var haveKey = regexp.MustCompile(`^have_(.+)$`)

// lack is how far the finding is on the wrong side of its limit, in the unit of its rule.
func lack(f report.Finding) int64 {
	for key, have := range f.Numbers {
		if m := haveKey.FindStringSubmatch(key); m != nil {
			if need, ok := f.Numbers["need_"+m[1]]; ok {
				return max(have-need, need-have)
			}
		}
	}
	return 0
}

func reading(f report.Finding) *Reading {
	if f.Have == "" {
		return nil
	}
	return &Reading{f.Have, f.Need, f.Margin}
}
