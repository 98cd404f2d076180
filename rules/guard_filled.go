package rules

import (
	"maps"

	"github.com/open-policy-agent/opa/v1/ast"
)

// counted reads count(x) of a comparison with more than none.
func (s state) counted(t *ast.Term) bool {
	c, ok := t.Value.(ast.Call)
	if !ok || c[0].String() != "count" || len(c) != 2 {
		return false
	}
	s.filled(c[1])
	return true
}

// occurring is what stands under count({x | ...}) when that must be more than none.
func occurring(count, least *ast.Term, op string) *ast.SetComprehension {
	c, ok := count.Value.(ast.Call)
	if !ok || c[0].String() != "count" || len(c) != 2 {
		return nil
	}
	n, ok := least.Value.(ast.Number)
	if !ok || !(n.Compare(ast.Number("0")) >= 0 && op == "gt" || n.Compare(ast.Number("1")) >= 0) {
		return nil
	}
	set, _ := c[1].Value.(*ast.SetComprehension)
	return set
}

// occurs reads a set that cannot be empty: its body must be true in one way at least.
func (r *guardReader) occurs(s state, set *ast.SetComprehension, depth int) []state {
	if s.filled(ast.NewTerm(set)); depth >= mostDepth {
		return []state{s}
	}
	inner := newState(s.body)
	inner.hidden = maps.Clone(s.hidden)
	var out []state
	for _, way := range r.body(inner, set.Body, depth+1) {
		out = append(out, s.clone().with(way.body))
	}
	return out
}

// filled reads a list that cannot be empty: the list of a fact, or a set made of such lists.
func (s state) filled(t *ast.Term) {
	switch v := t.Value.(type) {
	case ast.Var:
		if g := s.given[v]; g != nil {
			if _, again := g.Value.(ast.Var); !again {
				s.filled(g)
			}
		}
	case ast.Ref:
		if p, ok := s.factOf(t); ok && p.Word {
			s.add(p.loop, Sign{Is: Filled, Fact: key(p.Fact)})
		}
	case ast.Call:
		if v[0].String() == "and" && len(v) == 3 {
			s.filled(v[1])
			s.filled(v[2])
		}
	case *ast.SetComprehension:
		for _, e := range v.Body {
			if d, ok := e.Terms.(*ast.SomeDecl); ok && len(e.With) == 0 {
				if _, over := element(d); over != nil && !s.redeclared(v.Body) {
					s.filled(over)
				}
			}
		}
	}
}

// extreme reads x := min({y | y := _table[h.list[_]]}): of an empty set there is none, so a word of the list is in the table.
func (r *guardReader) extreme(s state, t *ast.Term) {
	c, ok := t.Value.(ast.Call)
	if !ok || len(c) != 2 || c[0].String() != "min" && c[0].String() != "max" {
		return
	}
	set, ok := c[1].Value.(*ast.SetComprehension)
	if !ok || s.redeclared(set.Body) {
		return
	}
	for _, e := range set.Body {
		if len(e.With) > 0 || e.Negated || !e.IsCall() || e.Operator().String() != "assign" {
			continue
		}
		table, at := r.table(s, e.Operand(1))
		if table == nil {
			continue
		}
		if list, ok := at.Value.(ast.Ref); ok && len(list) > 2 && isWildcard(list[len(list)-1]) {
			if p, ok := s.factOf(ast.NewTerm(list[:len(list)-1])); ok && p.Word {
				if words, ok := wordsOf(ast.SetTerm(table.Keys()...)); ok {
					s.add(p.loop, Sign{Is: AnyOf, Fact: key(p.Fact), Words: words})
				}
			}
		}
	}
}

func isWildcard(t *ast.Term) bool {
	v, ok := t.Value.(ast.Var)
	return ok && v.IsWildcard()
}

// redeclared says whether a comprehension gives a name of the body another meaning.
func (s state) redeclared(b ast.Body) bool {
	again := false
	for _, e := range b {
		if d, ok := e.Terms.(*ast.SomeDecl); ok {
			v, _ := element(d)
			_, runs := s.loop[v]
			again = again || runs
		}
	}
	return again
}

// head reads what a report says: it says nothing where a part of it is not known.
func (r *guardReader) head(s state, x *ast.Rule) state {
	o, ok := x.Head.Key.Value.(ast.Object)
	if !ok {
		return s
	}
	for _, k := range o.Keys() {
		t := o.Get(k)
		if p, ok := s.factOf(t); ok && p.Optional {
			s.add(p.loop, Sign{Is: Holds, Fact: key(p.Fact)})
		} else if keys, fact := r.table(s, t); fact != nil {
			s.member(fact, ast.SetTerm(keys.Keys()...), false)
		}
	}
	return s
}
