package rules

import (
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
)

// Alone is said of a rule that judges every element of one collection by itself: what it finds on an element follows
// from these facts of it and of the line, and from nothing else.
//
// Names are those keys of its reports that only repeat a fact which it reads for nothing else: parts that differ in no
// other fact have the same found on them, under their own names.
type Alone struct {
	Over  string            `json:"over"`
	Facts []string          `json:"facts"`
	Line  []string          `json:"line,omitempty"`
	Names map[string]string `json:"names,omitempty"` // key: the fact, or list of words, joined by commas
}

// plainCalls are the built-ins that give equal results for equal facts and do not look at what an object is made of.
var plainCalls = []string{
	"eq", "equal", "neq", "lt", "lte", "gt", "gte", "assign", "plus", "minus", "mul", "abs", "and", "or", "internal.member_2",
	"count", "sum", "max", "min", "concat", "sprintf", "trim_space", "startswith", "endswith", "contains", "lower", "upper", "replace",
}

// aloneOf works out whether a rule judges alone, nil if that is not plain from its text.
func aloneOf(m *ast.Module, g Guard) *Alone {
	a := &aloneReader{mod: m, out: &Alone{}, seen: map[string]bool{}}
	if g.Reads == nil || !a.oneLoop(g) || !a.calls() || !a.line() {
		return nil
	}
	for _, r := range m.Rules {
		if r.Head.Name == "report" && (!a.subject(r) || !a.element(r, a.loops[r])) {
			return nil
		}
	}
	a.names()
	slices.Sort(a.out.Facts)
	slices.Sort(a.out.Line)
	a.out.Facts, a.out.Line = slices.Compact(a.out.Facts), slices.Compact(a.out.Line)
	return a.out
}

type aloneReader struct {
	mod   *ast.Module
	out   *Alone
	loops map[*ast.Rule]ast.Var
	seen  map[string]bool // functions and parameters that were looked at
}

// oneLoop wants every body to run over the one collection, and nothing else to read it.
func (a *aloneReader) oneLoop(g Guard) bool {
	a.loops = map[*ast.Rule]ast.Var{}
	for _, r := range a.mod.Rules {
		if r.Head.Name != "report" {
			continue
		}
		v, over, ok := onlyLoop(r)
		if !ok || a.out.Over != "" && a.out.Over != over {
			return false
		}
		a.loops[r], a.out.Over = v, over
	}
	for _, b := range g.Bodies {
		if len(b) != 2 {
			return false
		}
	}
	reads := 0
	for _, r := range a.mod.Rules {
		ast.WalkTerms(r, func(t *ast.Term) bool {
			if ref, ok := t.Value.(ast.Ref); ok {
				if name, ok := collectionOf(ref); ok && name != "line" {
					reads++
				}
			}
			return false
		})
	}
	return reads == len(a.loops)
}

// onlyLoop is the variable of a body that runs over a collection, and which; not ok if there is none or another one.
func onlyLoop(r *ast.Rule) (v ast.Var, over string, ok bool) {
	for _, e := range r.Body {
		d, some := e.Terms.(*ast.SomeDecl)
		if !some || len(e.With) > 0 {
			continue
		}
		x, t := element(d)
		if t == nil {
			continue
		}
		if name, is := collectionRef(t); is {
			if ok {
				return "", "", false
			}
			v, over, ok = x, name, true
		}
	}
	return v, over, ok
}

func (a *aloneReader) calls() bool {
	plain := true
	callees(a.mod, func(_ int, name string) {
		plain = plain && (slices.Contains(plainCalls, name) || len(a.functions(name)) > 0)
	})
	return plain
}

// functions are the rules behind the name of a call.
func (a *aloneReader) functions(name string) []*ast.Rule {
	var out []*ast.Rule
	for _, r := range a.mod.Rules {
		if len(r.Head.Args) > 0 && r.Head.Name.String() == name && strings.HasPrefix(name, "_") {
			out = append(out, r)
		}
	}
	return out
}

// line notes the facts of the line, and wants each to be named.
func (a *aloneReader) line() bool {
	plain := true
	for _, r := range a.mod.Rules {
		ast.WalkTerms(r, func(t *ast.Term) bool {
			ref, ok := t.Value.(ast.Ref)
			if !ok {
				return false
			}
			if name, ok := collectionOf(ref); ok && name == "line" {
				key, ok := keyOf(ref, 2)
				plain = plain && ok
				a.out.Line = append(a.out.Line, key)
			}
			return false
		})
	}
	return plain
}

func keyOf(r ast.Ref, at int) (string, bool) {
	if len(r) <= at {
		return "", false
	}
	s, ok := r[at].Value.(ast.String)
	return string(s), ok
}
