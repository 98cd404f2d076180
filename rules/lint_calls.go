package rules

import (
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
)

// notForRules says of a call why a rule must not make it.
var notForRules = map[string]string{
	"div":        "a division rounds and is undefined by zero: have it worked out as a fact",
	"object.get": "a default for a missing fact turns not known into a value: leave it undefined",
	"print":      "print is for debugging: take it out",
}

// calls checks what the bodies call and reach.
func (l *lint) calls() {
	permitted := map[string]bool{}
	for _, b := range Capabilities().Builtins {
		permitted[b.Name] = true
	}
	own := map[string]bool{}
	for _, r := range l.mod.Rules {
		own[r.Head.Ref()[0].Value.String()] = true
	}
	callees(l.mod, func(row int, name string) {
		switch why := notForRules[name]; {
		case why != "":
			l.add(row, "%s: %s", name, why)
		case !permitted[name] && !own[strings.Trim(name, `"`)]:
			l.add(row, "%s is not permitted: equal facts must give equal findings, without clock, network or chance", name)
		}
	})
	refs(l.mod, func(r ast.Ref, row int) {
		switch {
		case !r[0].Equal(ast.DefaultRootDocument):
		case !l.ofSite():
			l.add(row, "%s: a rule reads no other rule, only input", r)
		case !r.HasPrefix(limitsRef) || len(r) != len(limitsRef)+1 || !r.IsGround():
			l.add(row, "%s: a rule reads no other rule, only input and data.site.limits.NAME", r)
		}
	})
}

// callees visits every call by name.
func callees(m *ast.Module, visit func(row int, name string)) {
	callTerms(m, func(row int, name string, _ []*ast.Term) { visit(row, name) })
}

// callTerms visits every call with its arguments, as a statement, inside another term or behind some.
func callTerms(m *ast.Module, visit func(row int, name string, args []*ast.Term)) {
	for _, r := range m.Rules {
		ast.WalkExprs(r, func(e *ast.Expr) bool {
			if e.IsCall() {
				visit(e.Location.Row, e.Operator().String(), e.Operands())
			}
			return false
		})
		ast.WalkTerms(r, func(t *ast.Term) bool {
			if c, ok := t.Value.(ast.Call); ok {
				visit(t.Location.Row, c[0].String(), c[1:])
			}
			return false
		})
	}
}

// refs visits every reference of the rules, the called names and the heads left out.
func refs(m *ast.Module, visit func(r ast.Ref, row int)) {
	for _, r := range m.Rules {
		ast.WalkTerms(r, func(t *ast.Term) bool {
			if ref, ok := t.Value.(ast.Ref); ok && t.Location != nil {
				visit(ref, t.Location.Row)
			}
			return false
		})
	}
}
