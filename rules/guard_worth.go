package rules

import (
	"github.com/open-policy-agent/opa/v1/ast"
)

var comparisons = map[string]string{"lt": "<", "lte": "<=", "gt": ">", "gte": ">=", "neq": "!="}

// worth is what a term is worth in one of the ways in which the body can be true.
type worth struct {
	way   state
	sum   sum
	known bool
}

// compare reads a comparison of whole-number sums of facts of one loop.
func (r *guardReader) compare(s state, op string, left, right *ast.Term, depth int) []state {
	var out []state
	for _, x := range r.worths(s, left, depth) {
		for _, y := range r.worths(x.way.clone(), right, depth) {
			out = append(out, compared(y.way, op, x, y, left, right))
		}
	}
	return out
}

func compared(s state, op string, x, y worth, left, right *ast.Term) state {
	l, r := x.sum, y.sum
	switch {
	case x.known != y.known:
		s.wanted(left)
		s.wanted(right)
	case !x.known || l.loop >= 0 && r.loop >= 0 && l.loop != r.loop || max(l.loop, r.loop) < 0:
	default:
		if d := l.plus(r, -1); d.small() {
			s.add(d.loop, Sign{Is: op, Sum: d.terms, Plus: d.constant})
		}
	}
	return s
}

// wanted reads one side of a comparison whose other side is not understood: a missing fact makes it false all the same.
func (s state) wanted(t *ast.Term) {
	if p, ok := s.factOf(t); ok && p.Number {
		s.add(p.loop, Sign{Is: Holds, Fact: key(p.Fact)})
	}
}

// worths are what a term may be worth: a function has a value in each of its bodies, and a table one for each key.
func (r *guardReader) worths(s state, t *ast.Term, depth int) []worth {
	if c, ok := t.Value.(ast.Call); ok && depth < mostDepth {
		if defs := r.functions(c[0]); plainRules(defs, c[1:]) {
			return r.results(s, defs, c[1:], depth)
		}
	}
	if o, fact := r.table(s, t); fact != nil {
		var out []worth
		for _, k := range o.Keys() {
			way := s.clone()
			way.same(fact, k)
			n, ok := r.sum(way, o.Get(k))
			out = append(out, worth{way, n, ok})
		}
		return out
	}
	n, ok := r.sum(s, t)
	return []worth{{s, n, ok}}
}

// results are what a function gives.
func (r *guardReader) results(s state, defs []*ast.Rule, args []*ast.Term, depth int) []worth {
	var out []worth
	for _, d := range defs {
		inner, ok := handOver(s, d, args)
		if !ok {
			continue
		}
		for _, way := range r.body(inner, d.Body, depth+1) {
			for _, w := range r.worths(way, d.Head.Value, depth+1) {
				out = append(out, worth{s.clone().with(w.way.body), w.sum, w.known})
			}
		}
	}
	return out
}
