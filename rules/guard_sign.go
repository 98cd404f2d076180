package rules

import (
	"github.com/open-policy-agent/opa/v1/ast"
)

// expr adds the sign of one statement, if it is understood.
func (b *bodyReader) expr(e *ast.Expr) {
	if len(e.With) > 0 {
		return
	}
	switch t := e.Terms.(type) {
	case *ast.Term:
		b.plain(t, e.Negated)
	case *ast.SomeDecl:
		b.some(t)
	case []*ast.Term:
		b.call(t[0].String(), t[1:], e.Negated)
	}
}

// plain reads h.fact and not h.fact.
func (b *bodyReader) plain(t *ast.Term, negated bool) {
	if c, ok := t.Value.(ast.Call); ok {
		b.call(c[0].String(), c[1:], negated)
		return
	}
	loop, f, ok := b.fact(t)
	switch {
	case !ok:
	case negated:
		b.add(loop, Sign{Is: Denied, Fact: key(f)})
	default:
		b.add(loop, Sign{Is: Holds, Fact: key(f)})
	}
}

// some reads some word in h.list: the list is not empty.
func (b *bodyReader) some(d *ast.SomeDecl) {
	if len(d.Symbols) != 1 {
		return
	}
	if c, ok := d.Symbols[0].Value.(ast.Call); ok && len(c) == 3 {
		if loop, f, ok := b.fact(c[2]); ok && f.Word {
			b.add(loop, Sign{Is: Filled, Fact: key(f)})
		}
	}
}

func (b *bodyReader) call(name string, args []*ast.Term, negated bool) {
	switch {
	case name == "internal.member_2" && len(args) == 2:
		b.member(args[0], args[1], negated)
	case negated:
	case name == "gt" && len(args) == 2 && args[1].Equal(ast.InternedTerm(0)) && b.counts(args[0]):
	case (name == "equal" || name == "eq") && len(args) == 2:
		if !b.same(args[0], args[1]) && !b.same(args[1], args[0]) {
			b.compare("==", args[0], args[1])
		}
	case comparisons[name] != "" && len(args) == 2:
		b.compare(comparisons[name], args[0], args[1])
	}
}

// member reads h.fact in {words} and "word" in h.list.
func (b *bodyReader) member(x, list *ast.Term, negated bool) {
	if loop, f, ok := b.fact(x); ok && f.Word && !negated {
		if words, ok := wordsOf(list); ok {
			b.add(loop, Sign{Is: AnyOf, Fact: key(f), Words: words})
		}
		return
	}
	loop, f, ok := b.fact(list)
	if !ok || !f.Word {
		return
	}
	words := b.wordOrAny(x)
	switch {
	case len(words) == 0:
	case !negated:
		b.add(loop, Sign{Is: AnyOf, Fact: key(f), Words: words})
	case len(words) == 1: // not one of several says nothing of the others
		b.add(loop, Sign{Is: NoneOf, Fact: key(f), Words: words})
	}
}

func (b *bodyReader) wordOrAny(t *ast.Term) []string {
	switch v := t.Value.(type) {
	case ast.String:
		return []string{string(v)}
	case ast.Var:
		return b.among[v]
	}
	return nil
}

// same reads h.fact == a constant that is no number.
func (b *bodyReader) same(fact, constant *ast.Term) bool {
	loop, f, ok := b.fact(fact)
	if !ok {
		return false
	}
	switch v := constant.Value.(type) {
	case ast.String:
		if f.Word {
			b.add(loop, Sign{Is: AnyOf, Fact: key(f), Words: []string{string(v)}})
		}
		return true
	case ast.Boolean:
		if !f.Word && !f.Number {
			b.add(loop, Sign{Is: map[bool]string{true: Holds, false: False}[bool(v)], Fact: key(f)})
		}
		return true
	}
	return false
}

func (b *bodyReader) add(loop int, s Sign) {
	b.out[loop].Signs = append(b.out[loop].Signs, s)
}

var comparisons = map[string]string{"lt": "<", "lte": "<=", "gt": ">", "gte": ">=", "neq": "!="}

// compare reads a comparison of whole-number sums of facts of one loop.
func (b *bodyReader) compare(op string, left, right *ast.Term) {
	l, ok := b.sum(left)
	r, also := b.sum(right)
	if ok != also {
		b.known(left)
		b.known(right)
	}
	if !ok || !also || l.loop >= 0 && r.loop >= 0 && l.loop != r.loop || max(l.loop, r.loop) < 0 {
		return
	}
	if d := l.plus(r, -1); d.small() {
		b.add(d.loop, Sign{Is: op, Sum: d.terms, Plus: d.constant})
	}
}

// known reads one side of a comparison whose other side is not understood: a missing fact makes it false all the same.
func (b *bodyReader) known(t *ast.Term) {
	if loop, f, ok := b.fact(t); ok && f.Number {
		b.add(loop, Sign{Is: Holds, Fact: key(f)})
	}
}

// counts reads count(h.list) of a comparison with more than none.
func (b *bodyReader) counts(t *ast.Term) bool {
	c, ok := t.Value.(ast.Call)
	if !ok || c[0].String() != "count" || len(c) != 2 {
		return false
	}
	loop, f, ok := b.fact(c[1])
	if ok && f.Word {
		b.add(loop, Sign{Is: Filled, Fact: key(f)})
	}
	return ok
}

// head reads what a report says: it says nothing where a part of it is not known.
func (b *bodyReader) head(r *ast.Rule) {
	o, ok := r.Head.Key.Value.(ast.Object)
	if !ok {
		return
	}
	for _, k := range o.Keys() {
		t := o.Get(k)
		if loop, f, ok := b.fact(t); ok && f.Optional {
			b.add(loop, Sign{Is: Holds, Fact: key(f)})
			continue
		}
		if words, fact := b.table(t); fact != nil {
			b.member(fact, ast.SetTerm(words...), false)
		}
	}
}

// table reads _names[h.fact], where _names is an object of plain values: the fact must be one of its keys.
func (b *bodyReader) table(t *ast.Term) (keys []*ast.Term, fact *ast.Term) {
	r, ok := t.Value.(ast.Ref)
	if !ok || len(r) != 2 {
		return nil, nil
	}
	v, ok := r[0].Value.(ast.Var)
	if !ok {
		return nil, nil
	}
	value := b.value(v)
	if value == nil {
		return nil, nil
	}
	o, ok := value.Value.(ast.Object)
	if !ok {
		return nil, nil
	}
	return o.Keys(), r[1]
}
