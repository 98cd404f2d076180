package rules

import (
	"maps"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"lineworthy/check/facts"
)

// use is what a rule reads: collections by name, and facts by path.
type use struct {
	collections []string
	ranges      map[ast.Var][]string // collections a variable runs over
	facts       map[string]int       // path to the first row
}

// reads checks the facts a rule reads against what it says of itself. The compiler does not see into the arguments of
// functions, where a misspelt fact is silently undefined: names are checked here too.
func (l *lint) reads() {
	u := &use{facts: map[string]int{}, ranges: ranges(l.mod)}
	u.collections = []string{l.rule.Subject} // first: other collections have facts of the same name
	refs(l.mod, func(r ast.Ref, _ int) { u.collection(r) })
	refs(l.mod, func(r ast.Ref, row int) { l.fact(u, r, row) })
	l.byName(u)
	l.read = slices.Sorted(maps.Keys(u.facts))
	l.needed(u)
	l.scoped(u)
	l.negated(u)
	l.literals(u)
}

func (u *use) collection(r ast.Ref) {
	if len(r) > 1 && r[0].Equal(ast.InputRootDocument) {
		if s, ok := r[1].Value.(ast.String); ok && !slices.Contains(u.collections, string(s)) {
			u.collections = append(u.collections, string(s))
		}
	}
}

// fact notes the fact that a reference reads, or says that there is none of that name.
func (l *lint) fact(u *use, r ast.Ref, row int) {
	f, name, ok := u.find(r)
	switch {
	case name == "":
	case !ok:
		l.add(row, "%s: no fact of %s is called %s", r, strings.Join(u.collections, " or "), name)
	case u.facts[f.Path] == 0:
		u.facts[f.Path] = row
	}
}

// byName notes the facts of the subject that are read as h[name], with the name as a string elsewhere in the rule.
func (l *lint) byName(u *use) {
	plain := map[*ast.Term]bool{} // keys of a reference, read in its place
	refs(l.mod, func(r ast.Ref, _ int) {
		for _, t := range r {
			plain[t] = true
		}
	})
	for _, r := range l.mod.Rules {
		ast.WalkTerms(r, func(t *ast.Term) bool {
			if s, ok := t.Value.(ast.String); ok && t.Location != nil && !plain[t] {
				if f, ok := facts.Find(l.rule.Subject, string(s)); ok && f.Optional && u.facts[f.Path] == 0 {
					u.facts[f.Path] = t.Location.Row
				}
			}
			return false
		})
	}
}

// find gives the fact that the first plain key of a reference names. No name means that it reads none.
func (u *use) find(r ast.Ref) (f facts.Fact, name string, ok bool) {
	v, isVar := r[0].Value.(ast.Var)
	if !isVar || len(r) < 2 || ast.BuiltinMap[r.String()] != nil || strings.HasPrefix(string(v), "_") || v == "data" || v == "internal" {
		return f, "", false
	}
	key, among := 1, u.collections
	if over := u.ranges[v]; len(over) > 0 {
		among = over
	}
	if r[0].Equal(ast.InputRootDocument) {
		key, among = 2, among[:0:0]
		if s, ok := r[1].Value.(ast.String); ok {
			among = []string{string(s)}
		}
	}
	if key >= len(r) {
		return f, "", false
	}
	s, ok := r[key].Value.(ast.String)
	if !ok || among != nil && among[0] == "pairs" && key == 2 {
		return f, "", false // input.pairs.limited is a group
	}
	for _, c := range among {
		if f, ok := facts.Find(c, string(s)); ok {
			return f, string(s), true
		}
	}
	return f, string(s), false
}

// needed compares the facts read that may be missing with the needs, and with those whose absence the rule itself
// decides on.
func (l *lint) needed(u *use) {
	for path, row := range u.facts {
		c, key, _ := strings.Cut(path, ".")
		f, _ := facts.Find(c, key)
		if f.Optional && !slices.Contains(l.rule.Needs, path) && !slices.Contains(l.absent, path) {
			l.add(row, "%s may be missing: put it in needs, or in absent if the rule decides what its absence means", path)
		}
	}
	for _, path := range slices.Concat(l.rule.Needs, l.absent) {
		if u.facts[path] == 0 && !speaksForOthers(path) {
			l.add(1, "%s is listed in METADATA and never read: it would make lines unproven for nothing", path)
		}
	}
}

// speaksForOthers says whether a fact is known exactly when others are: the rating is the group a pair is filed in.
func speaksForOthers(path string) bool {
	return path == "pairs.rating" || strings.HasSuffix(path, "_stated")
}
