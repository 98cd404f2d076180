package rules

import (
	"github.com/open-policy-agent/opa/v1/ast"
)

// binds notes what a statement makes of its variables: an element of a collection, one of some words, or a term.
func (r *guardReader) binds(s state, e *ast.Expr, depth int) []state {
	if len(e.With) > 0 {
		return []state{s}
	}
	if d, ok := e.Terms.(*ast.SomeDecl); ok {
		for _, t := range declared(d) {
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
	if set, ok := over.Value.(ast.Var); ok && !s.hidden[set] && depth < mostDepth {
		return r.runsOverSet(s, v, r.named(set), depth)
	}
	return []state{s}
}

// declared are what some declares, without what it runs over.
func declared(d *ast.SomeDecl) []*ast.Term {
	if len(d.Symbols) == 1 {
		if c, ok := d.Symbols[0].Value.(ast.Call); ok && len(c) >= 3 {
			return c[1 : len(c)-1]
		}
	}
	return d.Symbols
}

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
