package rules

import (
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"lineworthy/check/facts"
)

// binds notes what a statement makes of its variables: an element of a collection, one of some words, or a term.
func (r *guardReader) binds(s state, e *ast.Expr, depth int) []state {
	if len(e.With) > 0 {
		return []state{s}
	}
	if d, ok := e.Terms.(*ast.SomeDecl); ok {
		for _, t := range d.Symbols {
			ast.WalkVars(t, func(v ast.Var) bool { s.hidden[v] = true; return false })
		}
		return r.runs(s, d, depth)
	}
	if e.IsCall() && e.Operator().String() == "assign" {
		ast.WalkVars(e.Operand(0), func(v ast.Var) bool { s.hidden[v] = true; return false })
		if v, ok := e.Operand(0).Value.(ast.Var); ok {
			s.given[v] = e.Operand(1)
		}
	}
	return []state{s}
}

// runs reads some x in what it runs over.
func (r *guardReader) runs(s state, d *ast.SomeDecl, depth int) []state {
	v, over := element(d)
	if over == nil {
		return []state{s}
	}
	if name, ok := collectionRef(over); ok {
		return []state{s.runsOver(v, name)}
	}
	if words, ok := wordsOf(over); ok {
		s.among[v] = words
		return []state{s}
	}
	if groups := s.groups(over); len(groups) > 0 {
		var out []state
		for _, g := range groups {
			out = append(out, s.clone().runsOver(v, "pairs."+g))
		}
		return out
	}
	if set, ok := over.Value.(ast.Var); ok && !s.wasHidden(set, v) && depth < mostDepth {
		return r.runsOverSet(s, v, r.named(set), depth)
	}
	return []state{s}
}

// wasHidden says whether a name is that of a variable of the body, other than the one just declared.
func (s state) wasHidden(name, declared ast.Var) bool { return name == declared || s.given[name] != nil }

func (s state) runsOver(v ast.Var, name string) state {
	s.loop[v] = len(s.body)
	s.body = append(s.body, Loop{Over: name})
	return s
}

// runsOverSet reads some x in _set, where _set contains the elements of a collection.
func (r *guardReader) runsOverSet(s state, v ast.Var, defs []*ast.Rule, depth int) []state {
	var out []state
	for _, d := range defs {
		if d.Head.RuleKind() != ast.MultiValue || d.Head.Key == nil {
			return []state{s}
		}
		key, _ := d.Head.Key.Value.(ast.Var)
		for _, inner := range r.body(newState(s.body), d.Body, depth+1) {
			way := s.clone().with(inner.body)
			if at, ok := inner.loop[key]; ok {
				way.loop[v] = at
			}
			out = append(out, way)
		}
	}
	if len(defs) == 0 {
		return []state{s}
	}
	return out
}

// element gives x and y of some x in y, or of some i, x in y.
func element(d *ast.SomeDecl) (ast.Var, *ast.Term) {
	if len(d.Symbols) != 1 {
		return "", nil
	}
	c, ok := d.Symbols[0].Value.(ast.Call)
	if !ok || len(c) < 3 {
		return "", nil
	}
	v, ok := c[len(c)-2].Value.(ast.Var)
	if !ok {
		return "", nil
	}
	return v, c[len(c)-1]
}

// collectionRef reads input.hoses or input.pairs.limited.
func collectionRef(t *ast.Term) (string, bool) {
	r, ok := t.Value.(ast.Ref)
	if !ok || !r[0].Equal(ast.InputRootDocument) || len(r) < 2 || len(r) > 3 {
		return "", false
	}
	var parts []string
	for _, x := range r[1:] {
		s, ok := x.Value.(ast.String)
		if !ok {
			return "", false
		}
		parts = append(parts, string(s))
	}
	known := slices.Contains(facts.Collections(), parts[0]) && parts[0] != "line" && (parts[0] == "pairs") == (len(parts) == 2)
	return strings.Join(parts, "."), known
}

// groups reads input.pairs[group], where group is one of some words.
func (s state) groups(t *ast.Term) []string {
	r, ok := t.Value.(ast.Ref)
	if !ok || len(r) != 3 {
		return nil
	}
	if name, ok := collectionOf(r); !ok || name != "pairs" {
		return nil
	}
	v, _ := r[2].Value.(ast.Var)
	return s.among[v]
}

// wordsOf are the elements of a set or list of plain words.
func wordsOf(t *ast.Term) ([]string, bool) {
	var out []string
	switch t.Value.(type) {
	case ast.Set, *ast.Array:
		for _, x := range elements(t) {
			s, ok := x.Value.(ast.String)
			if !ok {
				return nil, false
			}
			out = append(out, string(s))
		}
	}
	slices.Sort(out)
	return out, len(out) > 0
}

// factOf says which fact of which loop a term is.
func (s state) factOf(t *ast.Term) (place, bool) {
	if v, ok := t.Value.(ast.Var); ok {
		if p, ok := s.fact[v]; ok {
			return p, true
		}
		if g := s.given[v]; g != nil {
			if _, again := g.Value.(ast.Var); !again {
				return s.factOf(g)
			}
		}
		return place{}, false
	}
	r, ok := t.Value.(ast.Ref)
	if !ok || len(r) < 2 {
		return place{}, false
	}
	loop, collection := 0, "line"
	if v, isVar := r[0].Value.(ast.Var); isVar && len(r) == 2 {
		at, runs := s.loop[v]
		if !runs {
			return place{}, false
		}
		loop = at
		collection, _, _ = strings.Cut(s.body[at].Over, ".")
	} else if name, ok := collectionOf(r); !ok || name != "line" || len(r) != 3 {
		return place{}, false
	}
	key, ok := r[len(r)-1].Value.(ast.String)
	if !ok {
		return place{}, false
	}
	f, ok := facts.Find(collection, string(key))
	return place{loop, f}, ok
}

func key(f facts.Fact) string {
	_, k, _ := strings.Cut(f.Path, ".")
	return k
}
