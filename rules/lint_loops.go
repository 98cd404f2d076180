package rules

import (
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
)

// loops finds x != y where y runs over a collection: that holds as soon as one element differs, which nobody means.
func (l *lint) loops() {
	for _, r := range l.mod.Rules {
		bound := iterated(r)
		ast.WalkExprs(r, func(e *ast.Expr) bool {
			if e.IsCall() && e.Operator().String() == "neq" {
				a, b := e.Operand(0), e.Operand(1)
				if runs(a, bound) != runs(b, bound) {
					l.add(e.Location.Row, "!= inside a loop is true of any other element: write not x in collection")
				}
			}
			return false
		})
	}
}

// iterated are the variables that some ... in binds to the elements of a collection.
func iterated(r *ast.Rule) map[ast.Var]bool {
	out := map[ast.Var]bool{}
	ast.WalkExprs(r, func(e *ast.Expr) bool {
		some, ok := e.Terms.(*ast.SomeDecl)
		if !ok {
			return false
		}
		for _, s := range some.Symbols {
			if c, ok := s.Value.(ast.Call); ok && len(c) > 2 {
				if v, ok := c[len(c)-2].Value.(ast.Var); ok {
					out[v] = true
				}
			}
		}
		return false
	})
	return out
}

// runs says whether a term is an element of a collection that is run over.
func runs(t *ast.Term, bound map[ast.Var]bool) bool {
	switch v := t.Value.(type) {
	case ast.Var:
		return bound[v]
	case ast.Ref:
		for _, x := range v[1:] {
			if name, ok := x.Value.(ast.Var); ok && strings.HasPrefix(string(name), ast.WildcardPrefix) {
				return true
			}
		}
	}
	return false
}
