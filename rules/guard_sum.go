package rules

import (
	"math"

	"github.com/open-policy-agent/opa/v1/ast"
)

var comparisons = map[string]string{"lt": "<", "lte": "<=", "gt": ">", "gte": ">=", "neq": "!="}

// sum is a sum of facts of one loop, each times a whole number, and a constant.
type sum struct {
	loop     int // -1 for a constant alone
	terms    []Term
	constant int64
}

// plus is s + times*o, both of one loop or constant.
func (s sum) plus(o sum, times int64) sum {
	out := sum{loop: max(s.loop, o.loop), constant: s.constant + times*o.constant}
	out.terms = append(out.terms, s.terms...)
	for _, t := range o.terms {
		out.terms = append(out.terms, Term{t.Fact, t.Times * times})
	}
	return out
}

// Sums beyond these are not understood: they could leave 64 bits.
const (
	mostTimes, mostConstant = 1 << 20, 1 << 40
	mostTerms               = 4
)

func (s sum) small() bool {
	for _, t := range s.terms {
		if t.Times <= -mostTimes || t.Times >= mostTimes {
			return false
		}
	}
	return len(s.terms) <= mostTerms && s.constant > -mostConstant && s.constant < mostConstant
}

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
		if defs := r.functions(c[0]); len(defs) > 0 {
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
			n, ok := sum{}, false
			if d.Head.Value != nil {
				n, ok = r.sum(way, d.Head.Value)
			}
			out = append(out, worth{s.clone().with(way.body), n, ok})
		}
	}
	return out
}

// sum reads a term as a sum. What it does not understand is not ok.
func (r *guardReader) sum(s state, t *ast.Term) (sum, bool) {
	switch v := t.Value.(type) {
	case ast.Number:
		n, ok := v.Int64()
		return sum{loop: -1, constant: n}, ok && n > -math.MaxInt32 && n < math.MaxInt32
	case ast.Call:
		return r.arithmetic(s, v)
	case ast.Var:
		if x := r.value(s, v); x != nil {
			if _, ok := x.Value.(ast.Number); ok {
				return r.sum(s, x)
			}
			return sum{}, false
		}
	}
	if p, ok := s.factOf(t); ok && p.Number {
		return sum{loop: p.loop, terms: []Term{{key(p.Fact), 1}}}, true
	}
	return sum{}, false
}

func (r *guardReader) arithmetic(s state, c ast.Call) (sum, bool) {
	if len(c) != 3 {
		return sum{}, false
	}
	x, ok := r.sum(s, c[1])
	y, also := r.sum(s, c[2])
	if !ok || !also || x.loop >= 0 && y.loop >= 0 && x.loop != y.loop {
		return sum{}, false
	}
	var out sum
	switch c[0].String() {
	case "plus":
		out = x.plus(y, 1)
	case "minus":
		out = x.plus(y, -1)
	case "mul":
		if x.loop >= 0 {
			x, y = y, x
		}
		if x.loop >= 0 || x.constant <= -mostTimes || x.constant >= mostTimes {
			return sum{}, false
		}
		out = sum{loop: -1}.plus(y, x.constant)
	default:
		return sum{}, false
	}
	return out, out.small()
}
