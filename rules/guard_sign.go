package rules

import (
	"github.com/open-policy-agent/opa/v1/ast"
)

// signs adds the signs of one statement, as far as it is understood.
func (r *guardReader) signs(s state, e *ast.Expr, depth int) []state {
	if len(e.With) > 0 {
		return []state{s}
	}
	switch t := e.Terms.(type) {
	case *ast.Term:
		return r.plain(s, t, e.Negated, depth)
	case *ast.SomeDecl:
		if _, over := element(t); over != nil {
			s.filled(over)
		}
	case []*ast.Term:
		return r.call(s, t[0], t[1:], e.Negated, depth)
	}
	return []state{s}
}

// plain reads h.fact, not h.fact, _condition and _condition(h).
func (r *guardReader) plain(s state, t *ast.Term, negated bool, depth int) []state {
	switch v := t.Value.(type) {
	case ast.Call:
		return r.call(s, v[0], v[1:], negated, depth)
	case ast.Var:
		if !negated && !s.hidden[v] {
			return r.calls(s, r.named(v), nil, depth)
		}
	case ast.Ref:
		p, ok := s.factOf(t)
		switch {
		case ok && negated:
			s.add(p.loop, Sign{Is: Denied, Fact: key(p.Fact)})
		case ok:
			s.add(p.loop, Sign{Is: Holds, Fact: key(p.Fact)})
		}
	}
	return []state{s}
}

func (r *guardReader) call(s state, op *ast.Term, args []*ast.Term, negated bool, depth int) []state {
	name := op.String()
	switch {
	case name == "internal.member_2" && len(args) == 2:
		s.member(args[0], args[1], negated)
	case negated:
	case name == "assign" && len(args) == 2:
		r.extreme(s, args[1])
	case (name == "gt" || name == "gte") && len(args) == 2 && occurring(args[0], args[1], name) != nil:
		return r.occurs(s, occurring(args[0], args[1], name), depth)
	case name == "gt" && len(args) == 2 && args[1].Equal(ast.InternedTerm(0)) && s.counted(args[0]):
	case (name == "equal" || name == "eq") && len(args) == 2:
		if !s.same(args[0], args[1]) && !s.same(args[1], args[0]) {
			return r.compare(s, "==", args[0], args[1], depth)
		}
	case comparisons[name] != "" && len(args) == 2:
		return r.compare(s, comparisons[name], args[0], args[1], depth)
	default:
		return r.calls(s, r.functions(op), args, depth)
	}
	return []state{s}
}

// functions are the rules behind the name of a call.
func (r *guardReader) functions(op *ast.Term) []*ast.Rule {
	ref, ok := op.Value.(ast.Ref)
	if !ok || len(ref) != 1 {
		return nil
	}
	v, _ := ref[0].Value.(ast.Var)
	return r.named(v)
}

// member reads h.fact in {words} and "word" in h.list.
func (s state) member(x, list *ast.Term, negated bool) {
	if p, ok := s.factOf(x); ok && p.Word && !negated {
		if words, ok := wordsOf(list); ok {
			s.add(p.loop, Sign{Is: AnyOf, Fact: key(p.Fact), Words: words})
		}
		return
	}
	p, ok := s.factOf(list)
	if !ok || !p.Word {
		return
	}
	words := s.wordOrAny(x)
	switch {
	case len(words) == 0:
	case !negated:
		s.add(p.loop, Sign{Is: AnyOf, Fact: key(p.Fact), Words: words})
	case len(words) == 1: // not one of several says nothing of the others
		s.add(p.loop, Sign{Is: NoneOf, Fact: key(p.Fact), Words: words})
	}
}

func (s state) wordOrAny(t *ast.Term) []string {
	switch v := t.Value.(type) {
	case ast.String:
		return []string{string(v)}
	case ast.Var:
		return s.among[v]
	}
	return nil
}

// same reads h.fact == a constant that is no number.
func (s state) same(fact, constant *ast.Term) bool {
	p, ok := s.factOf(fact)
	if !ok {
		return false
	}
	switch v := constant.Value.(type) {
	case ast.String:
		if p.Word {
			s.add(p.loop, Sign{Is: AnyOf, Fact: key(p.Fact), Words: []string{string(v)}})
		}
		return true
	case ast.Boolean:
		if !p.Word && !p.Number {
			s.add(p.loop, Sign{Is: map[bool]string{true: Holds, false: False}[bool(v)], Fact: key(p.Fact)})
		}
		return true
	}
	return false
}
