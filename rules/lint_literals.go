package rules

import (
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"lineworthy/check/facts"
)

// literals checks what facts are compared with. The compiler accepts a word the fact can never be and a word beside a
// number, and both are silent: the rule never fires, or always.
func (l *lint) literals(u *use) {
	callTerms(l.mod, func(row int, name string, args []*ast.Term) {
		if len(args) < 2 {
			return
		}
		switch name {
		case "equal", "neq", "eq", "lt", "lte", "gt", "gte", "internal.member_2":
			l.compare(u, row, args[0], args[1])
			l.compare(u, row, args[1], args[0])
		}
	})
}

// compare checks one fact against what stands on the other side.
func (l *lint) compare(u *use, row int, fact, other *ast.Term) {
	r, ok := fact.Value.(ast.Ref)
	if !ok {
		return
	}
	f, _, ok := u.find(r)
	if !ok {
		return
	}
	if o, isRef := other.Value.(ast.Ref); isRef {
		if g, _, ok := u.find(o); ok && mixed(unit(f.Path), unit(g.Path)) {
			l.add(row, "%s and %s are in different units", f.Path, g.Path)
		}
	}
	for _, x := range elements(other) {
		l.literal(row, f, x)
	}
}

func (l *lint) literal(row int, f facts.Fact, x *ast.Term) {
	s, isWord := x.Value.(ast.String)
	_, isNumber := x.Value.(ast.Number)
	_, isAnswer := x.Value.(ast.Boolean)
	switch {
	case isWord && !f.Word, isNumber && !f.Number, isAnswer && (f.Word || f.Number):
		l.add(row, "%s is never %s: the two are of different kinds", f.Path, x)
	case isWord && len(f.Words) > 0 && !slices.Contains(f.Words, string(s)):
		l.add(row, "%s is never %s: it is one of %s", f.Path, x, strings.Join(f.Words, ", "))
	}
}

// elements are the literals of a term: itself, or those of a set or array.
func elements(t *ast.Term) []*ast.Term {
	var out []*ast.Term
	switch v := t.Value.(type) {
	case ast.Set:
		v.Foreach(func(x *ast.Term) { out = append(out, x) })
	case *ast.Array:
		v.Foreach(func(x *ast.Term) { out = append(out, x) })
	default:
		out = append(out, t)
	}
	return out
}

// unit is what the name of a fact says it is measured in, if anything.
func unit(path string) string {
	_, name, _ := strings.Cut(path, ".")
	for _, s := range unitSuffixes {
		if strings.HasSuffix(name, s) || strings.HasPrefix(name, s[1:]+"_") { // age_days, days_since_test
			return s
		}
	}
	return ""
}

func mixed(a, b string) bool { return a != "" && b != "" && a != b }
