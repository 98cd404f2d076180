package decide

import (
	"reflect"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"lineworthy/check/facts"
)

// value is what is shown of the facts, as the engine wants it.
func (w *view) value(f *facts.Facts) ast.Value {
	if w.all {
		return value(f)
	}
	v := reflect.ValueOf(f).Elem()
	var pairs [][2]*ast.Term
	for i := range whole {
		s := &whole[i]
		if slices.Contains(w.whole, s.name) {
			pairs = append(pairs, [2]*ast.Term{s.key, s.make(v.Field(s.index))})
		} else if t := w.some(s, v.Field(s.index)); t != nil {
			pairs = append(pairs, [2]*ast.Term{s.key, t})
		}
	}
	return ast.NewObject(pairs...)
}

// some are the picked elements of a collection, nil if there are none. Pairs lie one step deeper, by their rating.
func (w *view) some(s *slot, v reflect.Value) *ast.Term {
	var groups [][2]*ast.Term
	for i := range w.picked {
		p := &w.picked[i]
		switch name, _, deeper := strings.Cut(p.over, "."); {
		case name != s.name:
		case deeper:
			group := &s.of[p.path[1]]
			groups = append(groups, [2]*ast.Term{group.key, group.of.list(v.Field(group.index), p)})
		default:
			return s.of.list(v, p)
		}
	}
	if len(groups) == 0 {
		return nil
	}
	return ast.ObjectTerm(groups...)
}

func (s slots) list(v reflect.Value, p *selection) *ast.Term {
	terms := make([]*ast.Term, len(p.places))
	for i, at := range p.places {
		terms[i] = s.object(v.Index(at), p.fields)
	}
	return ast.ArrayTerm(terms...)
}
