package rules

import (
	"math"

	"github.com/open-policy-agent/opa/v1/ast"
)

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
