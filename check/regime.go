package check

import (
	"slices"
	"strings"

	"lineworthy/check/resolve"
	"lineworthy/rules"
)

// unruled are the regimes of the sheet that no rule and no legal bar of a fluid at hand names. A regime misspelt
// would otherwise switch its whole law off without a word.
func (e *Engine) unruled(line *resolve.Line, regimes []string) []string {
	known := regimesOf(e.rules)
	for _, r := range line.Runs {
		for _, f := range r.Fluids {
			for _, bar := range f.Cat.Bars {
				known = append(known, bar.Regime)
			}
		}
	}
	out := []string{}
	for _, r := range regimes {
		if !slices.Contains(known, r) {
			out = append(out, r)
		}
	}
	return out
}

// regimesOf are the regimes that a set of rules names, in a scope or as the document it rests on.
func regimesOf(set rules.Set) []string {
	var out []string
	for _, r := range set.Index() {
		for _, b := range r.Basis {
			out = append(out, b.Document)
		}
		for _, condition := range r.Scope {
			if words, ok := strings.CutPrefix(strings.TrimPrefix(condition, "!"), "regime="); ok {
				out = append(out, strings.Split(words, "|")...)
			}
		}
	}
	return out
}
