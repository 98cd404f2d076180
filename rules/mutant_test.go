package rules

import (
	"fmt"
	"strconv"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
)

// mutant is one small change to the text of a rule that its own tests ought to notice.
type mutant struct {
	ID   string // rule, row and what was changed
	Text string // the whole changed rule
}

// mutants are all changes of one rule, in the order of its text: comparisons turned, numbers moved by one, words
// changed, conditions dropped or negated, whole clauses taken out.
func mutants(m Module) ([]mutant, error) {
	mod, err := parse(m, false)
	if err != nil {
		return nil, err
	}
	g := &mutating{Module: m, notWords: map[*ast.Term]bool{}}
	id, _ := m.id()
	g.id = id
	for _, r := range mod.Rules {
		g.rule(r)
	}
	return g.out, nil
}

type mutating struct {
	Module
	id       string
	notWords map[*ast.Term]bool // strings that are names: parts of a path, keys of a report
	out      []mutant
}

// replace adds the mutant that has other text in the place of old.
func (g *mutating) replace(l *ast.Location, old, text, what string) {
	if l == nil || !strings.HasPrefix(g.Text[l.Offset:], old) {
		return // made up by the parser
	}
	changed := g.Text[:l.Offset] + text + g.Text[l.Offset+len(old):]
	g.out = append(g.out, mutant{fmt.Sprintf("%s:%d:%d %s", g.id, l.Row, l.Col, what), changed})
}

func (g *mutating) rule(r *ast.Rule) {
	g.replace(r.Location, string(r.Location.Text), "", "clause taken out")
	g.names(r)
	ast.WalkExprs(r, func(e *ast.Expr) bool { g.expr(e); return false })
	ast.WalkTerms(r, func(t *ast.Term) bool { g.term(t); return false })
}

// names notes the strings that are no words of the facts.
func (g *mutating) names(r *ast.Rule) {
	if r.Head.Key != nil {
		if o, ok := r.Head.Key.Value.(ast.Object); ok {
			for _, k := range o.Keys() {
				g.notWords[k] = true
			}
		}
	}
	ast.WalkTerms(r, func(t *ast.Term) bool {
		if ref, ok := t.Value.(ast.Ref); ok {
			for _, part := range ref {
				g.notWords[part] = true
			}
		}
		return false
	})
}

func (g *mutating) expr(e *ast.Expr) {
	text := string(e.Location.Text)
	if _, some := e.Terms.(*ast.SomeDecl); some || e.IsAssignment() || text == "true" || text == "" {
		return
	}
	g.replace(e.Location, text, "true", "dropped: "+text)
	if e.Negated {
		g.replace(e.Location, text, strings.TrimSpace(strings.TrimPrefix(text, "not")), "no longer negated: "+text)
	} else {
		g.replace(e.Location, text, "not "+text, "negated: "+text)
	}
	if terms, ok := e.Terms.([]*ast.Term); ok {
		g.operator(terms[0])
	}
}

// turned are the wrong comparisons that a slip of the pen makes of a right one.
var turned = map[string][]string{
	"<": {"<=", ">", ">="}, "<=": {"<", ">", ">="}, ">": {">=", "<", "<="}, ">=": {">", "<", "<="},
	"==": {"!="}, "!=": {"=="}, "+": {"-"}, "-": {"+"}, "*": {"+"}, "&": {"|"}, "|": {"&"}, "min": {"max"}, "max": {"min"},
}

func (g *mutating) operator(t *ast.Term) {
	for _, old := range []string{"<=", ">=", "==", "!=", "<", ">", "+", "-", "*", "&", "|", "min", "max"} {
		if t.Location != nil && strings.HasPrefix(g.Text[t.Location.Offset:], old) {
			for _, other := range turned[old] {
				g.replace(t.Location, old, other, old+" became "+other)
			}
			return
		}
	}
}

func (g *mutating) term(t *ast.Term) {
	switch v := t.Value.(type) {
	case ast.Call:
		g.operator(v[0])
	case ast.Number:
		if n, ok := v.Int64(); ok {
			for _, step := range []int64{1, -1} {
				moved := strconv.FormatInt(n+step, 10)
				g.replace(t.Location, v.String(), moved, v.String()+" became "+moved)
			}
		}
	case ast.String:
		if !g.notWords[t] {
			g.replace(t.Location, v.String(), strconv.Quote(string(v)+"x"), v.String()+" changed")
		}
	case ast.Boolean:
		g.replace(t.Location, v.String(), strconv.FormatBool(!bool(v)), v.String()+" became "+strconv.FormatBool(!bool(v)))
	}
}
