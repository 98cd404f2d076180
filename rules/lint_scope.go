package rules

import (
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
)

// scoped wants every condition of the scope in the bodies, or the rule finds what it says it does not judge.
func (l *lint) scoped(u *use) {
	for _, text := range l.rule.Scope {
		key, _, _ := strings.Cut(strings.TrimPrefix(text, "!"), "=")
		if key == "regime" {
			key = "line.regimes"
		}
		if !strings.Contains(key, ".") {
			key = l.rule.Subject + "." + key
		}
		if u.facts[key] == 0 {
			l.add(1, "scope %q: the rule never reads %s, so it may find what is out of its scope", text, key)
		}
	}
}

// negated finds not x.fact where the fact may be missing: not is true of what is not known.
func (l *lint) negated(u *use) {
	for _, r := range l.mod.Rules {
		ast.WalkExprs(r, func(e *ast.Expr) bool {
			if e.Negated {
				l.denied(u, e)
			}
			return false
		})
	}
}

func (l *lint) denied(u *use, e *ast.Expr) {
	ast.WalkRefs(e, func(r ast.Ref) bool {
		if f, _, ok := u.find(r); ok && f.Optional && !slices.Contains(l.absent, f.Path) {
			l.add(e.Location.Row, "not ... %s is true when the fact is not known: compare with == false, or list it in absent", r)
		}
		return false
	})
}
