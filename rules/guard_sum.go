package rules

import (
	"math"
	"strings"

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
func (b *bodyReader) sum(t *ast.Term) (sum, bool) {
	switch v := t.Value.(type) {
	case ast.Number:
		n, ok := v.Int64()
		return sum{loop: -1, constant: n}, ok && n > -math.MaxInt32 && n < math.MaxInt32
	case ast.Var:
		if x := b.constant(v); x != nil {
			return b.sum(x)
		}
	case ast.Call:
		return b.arithmetic(v)
	case ast.Ref:
		if loop, f, ok := b.fact(t); ok && f.Number {
			return sum{loop: loop, terms: []Term{{key(f), 1}}}, true
		}
	}
	return sum{}, false
}

func (b *bodyReader) arithmetic(c ast.Call) (sum, bool) {
	if len(c) != 3 {
		return sum{}, false
	}
	x, ok := b.sum(c[1])
	y, also := b.sum(c[2])
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

// constant is the number of a name that the rule gives one value only: _least := 2413.
func (b *bodyReader) constant(v ast.Var) *ast.Term {
	value := b.value(v)
	if value == nil {
		return nil
	}
	if _, ok := value.Value.(ast.Number); !ok {
		return nil
	}
	return value
}

// value is the one value of a name, nil if it has several, or conditions, or if a variable of the body hides it.
func (b *bodyReader) value(v ast.Var) *ast.Term {
	var value *ast.Term
	for _, r := range b.mod.Rules {
		if r.Head.Name != v {
			continue
		}
		plain := len(r.Head.Args) == 0 && r.Head.Key == nil && r.Else == nil && r.Body.Equal(always)
		if value != nil || !plain || len(r.Head.Ref()) != 1 || !strings.HasPrefix(string(v), "_") || b.hidden[v] {
			return nil
		}
		value = r.Head.Value
	}
	return value
}

var always = ast.NewBody(ast.NewExpr(ast.BooleanTerm(true)))
