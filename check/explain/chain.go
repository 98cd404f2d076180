package explain

import (
	"slices"
	"strings"

	"lineworthy/check"
	"lineworthy/check/report"
	"lineworthy/rules"
)

// Chain leads from what is written to what is said of one subject.
type Chain struct {
	Subject  string         `json:"subject"`
	Message  string         `json:"message"`
	Position string         `json:"position,omitempty"`
	Sheet    []Written      `json:"sheet"`
	Rests    []Value        `json:"rests_on"`
	Numbers  []Number       `json:"numbers"`
	Methods  []Method       `json:"methods"`
	Rule     Rule           `json:"rule"`
	Basis    []report.Basis `json:"basis"`
}

// Number is one quantity the rule compared, in the units of the sheet.
type Number struct {
	Name  string `json:"name"`
	Value string `json:"value"`
}

// Rule is the rule in plain words.
type Rule struct {
	ID      string   `json:"id"`
	Title   string   `json:"title"`
	LooksAt string   `json:"looks_at"`
	When    []string `json:"when"` // conditions under which it judges at all
	Why     string   `json:"why"`
	Effect  string   `json:"effect"`
	Action  string   `json:"action"`
}

func (in Input) finding(a *Answer, found []report.Finding) {
	a.Kind, a.Says = "finding", found[0].Title
	for _, f := range found {
		a.Chains = append(a.Chains, in.chain(f))
	}
}

func (in Input) chain(f report.Finding) Chain {
	r, _ := in.Rules.Rule(f.Rule)
	c := Chain{
		Subject: report.Place(f), Message: f.Message, Numbers: numbers(check.ShownAs(in.Sheet), f), Basis: f.Basis, Methods: in.methods(f, r), Rule: ruleOf(r),
	}
	if f.Position != nil {
		c.Position = in.at(f.Position.Line)
	}
	c.Sheet = in.relevant(f, r)
	c.Rests = append(in.rows(f), in.values(f)...)
	return c
}

func ruleOf(r rules.Rule) Rule {
	return Rule{r.ID, r.Title, r.LooksAt(), r.Where(), strings.Join(strings.Fields(r.Description), " "), r.Effect(), r.Action}
}

// numbers are the quantities of a finding: what there is and what is needed first.
func numbers(s check.Shown, f report.Finding) []Number {
	keys := []string{}
	for key := range f.Numbers {
		keys = append(keys, key)
	}
	slices.SortFunc(keys, func(a, b string) int { return strings.Compare(order(a), order(b)) })
	out := []Number{}
	for _, key := range keys {
		out = append(out, Number{nameOf(key), s.Number(key, f.Numbers[key])})
	}
	if f.Margin != "" {
		out = append(out, Number{"margin", f.Margin})
	}
	return out
}

func order(key string) string {
	switch {
	case strings.HasPrefix(key, "have_"):
		return "0" + key
	case strings.HasPrefix(key, "need_"):
		return "1" + key
	}
	return "2" + key
}

// unitEndings are what a fact's name ends in; the value is printed with its unit.
var unitEndings = []string{"_ratio_permille", "_permille", "_kpa", "_ck", "_mmps", "_mm2ps", "_mm", "_days", "_day", "_ms", "_ohm", "_minutes", "_n", "_um", "_mlps", "_kpac"}

func nameOf(key string) string {
	for _, end := range unitEndings {
		if cut, ok := strings.CutSuffix(key, end); ok {
			return strings.ReplaceAll(cut, "_", " ")
		}
	}
	return strings.ReplaceAll(key, "_", " ")
}
