package rules

import (
	"slices"

	"github.com/open-policy-agent/opa/v1/ast"
)

// ranges says of each variable which collections of facts it runs over, by its some ... in input.collection. Two
// collections may have facts of one name, and only this tells them apart.
func ranges(m *ast.Module) map[ast.Var][]string {
	out := map[ast.Var][]string{}
	ast.WalkExprs(m, func(e *ast.Expr) bool {
		some, ok := e.Terms.(*ast.SomeDecl)
		if !ok {
			return false
		}
		for _, s := range some.Symbols {
			if v, c := runner(s); c != "" && !slices.Contains(out[v], c) {
				out[v] = append(out[v], c)
			}
		}
		return false
	})
	return out
}

// runner gives the variable of x in input.collection, and the collection.
func runner(s *ast.Term) (ast.Var, string) {
	c, ok := s.Value.(ast.Call)
	if !ok || len(c) < 3 {
		return "", ""
	}
	v, isVar := c[len(c)-2].Value.(ast.Var)
	r, isRef := c[len(c)-1].Value.(ast.Ref)
	if !isVar || !isRef || len(r) < 2 || !r[0].Equal(ast.InputRootDocument) {
		return "", ""
	}
	name, _ := r[1].Value.(ast.String)
	return v, string(name)
}
