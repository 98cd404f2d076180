package rules

import (
	"github.com/open-policy-agent/opa/v1/ast"
)

// subject wants a report to name the element as its subject, so that one finding belongs to one element.
func (a *aloneReader) subject(r *ast.Rule) bool {
	o, ok := r.Head.Key.Value.(ast.Object)
	if !ok {
		return false
	}
	s := o.Get(ast.StringTerm("subject"))
	return s != nil && s.Value.Compare(ast.Ref{ast.NewTerm(a.loops[r]), ast.StringTerm("id")}) == 0
}

// element follows a variable that holds the element through a rule, and into the functions it is handed to. Every use of
// it must be one of its facts by name, or such a call.
func (a *aloneReader) element(r *ast.Rule, v ast.Var) bool {
	uses, known := 0, 0
	for e := r; e != nil && len(r.Head.Args) > 0; e = e.Else {
		known++ // the parameter itself
	}
	if len(r.Head.Args) == 0 {
		known++ // some v in
	}
	ast.WalkTerms(r, func(t *ast.Term) bool {
		switch x := t.Value.(type) {
		case ast.Var:
			if x == v {
				uses++
			}
		case ast.Ref:
			if key, ok := keyOf(x, 1); ok && x[0].Equal(ast.NewTerm(v)) {
				known++
				a.out.Facts = append(a.out.Facts, key)
			}
		}
		return false
	})
	plain := true
	eachCall(r, func(name string, args []*ast.Term) {
		for i, arg := range args {
			if arg.Equal(ast.NewTerm(v)) && len(a.functions(name)) > 0 {
				known++
				plain = plain && a.handed(name, i)
			}
		}
	})
	return plain && uses == known
}

// handed follows the element into a function.
func (a *aloneReader) handed(name string, at int) bool {
	place := name + " " + string(rune('0'+at))
	if a.seen[place] {
		return true
	}
	a.seen[place] = true
	for _, f := range a.functions(name) {
		for e := f; e != nil; e = e.Else {
			if at >= len(e.Head.Args) {
				return false
			}
		}
		v, ok := f.Head.Args[at].Value.(ast.Var)
		if !ok || !a.element(f, v) {
			return false
		}
	}
	return true
}

// eachCall visits the calls of one rule with their arguments.
func eachCall(r *ast.Rule, visit func(name string, args []*ast.Term)) {
	callTerms(&ast.Module{Rules: []*ast.Rule{r}}, func(_ int, name string, args []*ast.Term) { visit(name, args) })
}
