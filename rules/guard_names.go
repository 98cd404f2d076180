package rules

import (
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"lineworthy/check/facts"
)

// names finds the facts that are read only to be repeated, and takes them out of those that a finding follows from.
func (a *aloneReader) names() {
	repeats, read := map[string]int{}, map[string]int{}
	for _, key := range a.out.Facts {
		read[key]++
	}
	names := map[string]string{}
	for _, key := range a.reportKeys() {
		if fact, times := a.repeated(key); a.alwaysKnown(fact) {
			names[key] = fact
			repeats[fact] += times
		}
	}
	for key, fact := range names {
		if repeats[fact] != read[fact] {
			delete(names, key) // the rule does more with it
		}
	}
	for _, fact := range names {
		a.out.Facts = slices.DeleteFunc(a.out.Facts, func(f string) bool { return f == fact })
	}
	if len(names) > 0 {
		a.out.Names = names
	}
}

// reportKeys are all keys of the reports of a rule.
func (a *aloneReader) reportKeys() []string {
	var out []string
	for _, r := range a.reports() {
		for _, k := range r.Head.Key.Value.(ast.Object).Keys() {
			if s, ok := k.Value.(ast.String); ok {
				out = append(out, string(s))
			}
		}
	}
	slices.Sort(out)
	return slices.Compact(out)
}

func (a *aloneReader) reports() []*ast.Rule {
	var out []*ast.Rule
	for _, r := range a.mod.Rules {
		if r.Head.Name == "report" {
			out = append(out, r)
		}
	}
	return out
}

// repeated is the fact that stands under a key in every report, and how many reports there are; empty if it is not one.
func (a *aloneReader) repeated(key string) (fact string, times int) {
	for _, r := range a.reports() {
		own, ok := repeatedIn(r.Head.Key.Value.(ast.Object).Get(ast.StringTerm(key)), a.loops[r])
		if !ok || fact != "" && own != fact {
			return "", 0
		}
		fact, times = own, times+1
	}
	return fact, times
}

// repeatedIn reads x.fact, and concat(", ", x.fact) of a list.
func repeatedIn(t *ast.Term, v ast.Var) (string, bool) {
	if t == nil {
		return "", false
	}
	if c, ok := t.Value.(ast.Call); ok && len(c) == 3 && c[0].String() == "concat" && c[1].Equal(ast.StringTerm(", ")) {
		t = c[2]
	}
	ref, ok := t.Value.(ast.Ref)
	fact, named := keyOf(ref, 1)
	return fact, ok && named && len(ref) == 2 && ref[0].Equal(ast.NewTerm(v))
}

// alwaysKnown says whether a fact is made of words, and every element has it: a report that repeats one is not lost for want
// of it.
func (a *aloneReader) alwaysKnown(fact string) bool {
	collection, _, _ := strings.Cut(a.out.Over, ".")
	f, ok := facts.Find(collection, fact)
	return ok && f.Word && !f.Optional
}
