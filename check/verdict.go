package check

import (
	"cmp"
	"regexp"
	"slices"
	"strings"

	"lineworthy/check/decide"
	"lineworthy/check/facts"
	"lineworthy/check/report"
	"lineworthy/check/resolve"
	"lineworthy/check/sheet"
	"lineworthy/rules"
)

// confirmRule is the rule whose findings are gathered in the table of things to confirm.
const confirmRule = "record/value_not_confirmed"

// verdict puts the decision into words. The digest of the facts is left to Check.
func (e *Engine) verdict(s *sheet.Line, line *resolve.Line, f *facts.Facts, d decide.Decision) *report.Verdict {
	p := &printer{sys: systemOf(s), at: places(line)}
	v := &report.Verdict{
		Schema: report.Schema, Line: s.ID.V, Title: s.Title.V, Sheet: s.File, AsOf: line.AsOf.String(),
		Tool:    report.Tool{Name: "lineworthy", Version: e.o.Version, Engine: decide.Name()},
		Regimes: f.Line.Regimes, Runs: runs(line), Units: p.units(), Flips: []report.Flip{}, Cautions: cautions(line),
		Digests: report.Digests{Sheet: s.Sum, Rules: e.rules.Digest(), Catalog: line.Rows},
	}
	e.findings(v, f, d.Findings, p)
	judged(v, d, e.byID)
	v.Cases = p.cases(f)
	v.Governing = p.governing(f)
	v.Word, v.Reason = word(v)
	return v
}

func (e *Engine) findings(v *report.Verdict, f *facts.Facts, found []decide.Finding, p *printer) {
	v.Findings, v.Confirm = []report.Finding{}, []report.Confirm{}
	values := map[string]facts.Value{}
	for _, x := range f.Values {
		values[x.ID] = x
	}
	for _, x := range found {
		if x.Rule == confirmRule {
			v.Confirm = append(v.Confirm, confirm(values[x.Subject]))
			continue
		}
		v.Findings = append(v.Findings, p.finding(x, e.byID[x.Rule]))
	}
	rank := map[string]int{"stop": 0, "condition": 1, "note": 2}
	slices.SortStableFunc(v.Findings, func(a, b report.Finding) int {
		return cmp.Or(cmp.Compare(rank[a.Severity], rank[b.Severity]), cmp.Compare(a.Rule, b.Rule), cmp.Compare(a.Subject, b.Subject))
	})
}

func confirm(c facts.Value) report.Confirm {
	out := report.Confirm{What: c.What, Standing: c.Standing, Source: c.Source, Clause: c.Clause, UsedBy: c.Used}
	if out.Source == "" && c.Standing == "practice" {
		out.Source = "the maker's papers: no document is known"
	}
	return out
}

// judged files, for every rule, what it was applied to, and gathers each missing fact with all that waits for it.
func judged(v *report.Verdict, d decide.Decision, byID map[string]rules.Rule) {
	v.Judged, v.Unjudged = []report.Judged{}, []report.Unjudged{}
	at := map[[2]string]int{}
	for _, c := range d.Coverage {
		r := byID[c.Rule]
		j := report.Judged{Rule: r.ID, Title: r.Title, Severity: r.Severity, Judged: list(c.Judged), NotApplicable: list(c.NotApplicable), CouldNot: []string{}}
		for _, m := range c.Unjudged {
			j.CouldNot = append(j.CouldNot, m.Subject)
			if r.Severity == "note" {
				continue
			}
			key := [2]string{m.Subject, m.Fact}
			if _, ok := at[key]; !ok {
				at[key] = len(v.Unjudged)
				v.Unjudged = append(v.Unjudged, report.Unjudged{Subject: m.Subject, Fact: m.Fact, Why: m.Why, Ask: asked(m)})
			}
			u := &v.Unjudged[at[key]]
			u.Rules = append(u.Rules, r.ID)
		}
		j.CouldNot = slices.Compact(j.CouldNot)
		for _, f := range d.Findings {
			if f.Rule == r.ID {
				j.Found++
			}
		}
		v.Judged = append(v.Judged, j)
	}
}

// anyOf is the part of a question that stands for the key of whatever the fact is about.
var anyOf = regexp.MustCompile(`^(?:parts|fluids|points|vessels|nearby)\.\*\.([a-z_.]+)`)

// asked names the thing itself in the question.
func asked(m decide.Missing) string {
	return anyOf.ReplaceAllString(m.Ask, "$1 of "+strings.ReplaceAll(m.Subject, "$", "$$"))
}

func list(s []string) []string {
	if s == nil {
		return []string{}
	}
	return s
}

// word is the verdict: any stop is unfit, else any missing knowledge is unproven, else any condition is conditional.
func word(v *report.Verdict) (report.Word, string) {
	count := map[string]int{}
	for _, f := range v.Findings {
		count[f.Severity]++
	}
	switch {
	case count["stop"] > 0:
		return report.Unfit, plural(count["stop"], "finding forbids", "findings forbid") + " using this line as it is."
	case len(v.Unjudged) > 0:
		return report.Unproven, plural(len(v.Unjudged), "fact is missing", "facts are missing") + "; nothing found forbids the line, but it is not shown to be safe."
	case count["condition"]+len(v.Confirm) > 0:
		return report.Conditional, conditions(count["condition"], len(v.Confirm))
	}
	return report.Fit, "Everything that could be checked was checked, and nothing stands against the line."
}

func conditions(n, confirm int) string {
	var parts []string
	if n > 0 {
		parts = append(parts, plural(n, "condition must be met", "conditions must be met"))
	}
	if confirm > 0 {
		parts = append(parts, plural(confirm, "value must be confirmed", "values must be confirmed")+" in the document named")
	}
	return strings.Join(parts, " and ") + " before the line is used."
}
