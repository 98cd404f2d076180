package rules

import (
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
)

// calls reads a condition that the rule has under a name: it is true in as many ways as its bodies are.
func (r *guardReader) calls(s state, defs []*ast.Rule, args []*ast.Term, depth int) []state {
	if !plainRules(defs, args) || depth >= mostDepth {
		return []state{s}
	}
	var out []state
	for _, d := range defs {
		inner, ok := handOver(s, d, args)
		if !ok {
			continue // a word that this body is not for
		}
		for _, way := range r.body(inner, d.Body, depth+1) {
			out = append(out, s.clone().with(way.body))
		}
	}
	return out
}

// plainRules says whether rules have one value, and as many parameters as they are given: a set is there even if it is
// empty, and one argument more takes the result.
func plainRules(defs []*ast.Rule, args []*ast.Term) bool {
	return len(defs) > 0 && !slices.ContainsFunc(defs, func(d *ast.Rule) bool {
		return d.Head.RuleKind() != ast.SingleValue || len(d.Head.Args) != len(args)
	})
}

// handOver gives the parameters of a body their meaning. It is not ok if the body is for another word.
func handOver(s state, d *ast.Rule, args []*ast.Term) (state, bool) {
	inner := newState(s.body)
	for i, param := range d.Head.Args {
		switch p := param.Value.(type) {
		case ast.Var:
			inner.hidden[p] = true
			inner.take(p, s, args[i])
		case ast.String:
			if words := s.wordOrAny(args[i]); len(words) > 0 && !slices.Contains(words, string(p)) {
				return inner, false
			}
			if f, ok := s.factOf(args[i]); ok && f.Word {
				inner.add(f.loop, Sign{Is: AnyOf, Fact: key(f.Fact), Words: []string{string(p)}})
			}
		}
	}
	return inner, true
}

// take gives a parameter what the argument means outside.
func (s state) take(param ast.Var, outside state, arg *ast.Term) {
	if v, ok := arg.Value.(ast.Var); ok {
		if at, ok := outside.loop[v]; ok {
			s.loop[param] = at
			return
		}
	}
	if words := outside.wordOrAny(arg); len(words) > 0 {
		s.among[param] = words
	} else if f, ok := outside.factOf(arg); ok {
		s.fact[param] = f
	}
}

// value is the one value of a name, nil if it has several, or conditions, or if a variable of the body hides it.
func (r *guardReader) value(s state, v ast.Var) *ast.Term {
	defs := r.named(v)
	if len(defs) != 1 || s.hidden[v] || !strings.HasPrefix(string(v), "_") {
		return nil
	}
	d := defs[0]
	if len(d.Head.Args) > 0 || d.Head.Key != nil || d.Else != nil || !d.Body.Equal(always) {
		return nil
	}
	return d.Head.Value
}

var always = ast.NewBody(ast.NewExpr(ast.BooleanTerm(true)))

// table reads _names[h.fact], where _names is an object of plain values: the fact must be one of its keys.
func (r *guardReader) table(s state, t *ast.Term) (ast.Object, *ast.Term) {
	ref, ok := t.Value.(ast.Ref)
	if !ok || len(ref) != 2 {
		return nil, nil
	}
	v, ok := ref[0].Value.(ast.Var)
	if !ok {
		return nil, nil
	}
	value := r.value(s, v)
	if value == nil {
		return nil, nil
	}
	o, ok := value.Value.(ast.Object)
	if !ok || !o.IsGround() {
		return nil, nil
	}
	return o, ref[1]
}
