package decide

import (
	"reflect"
	"slices"
)

// guard tells beforehand that a rule cannot find anything, from signs that were worked out from its text.
type guard struct {
	bodies [][]run // none: the rule always runs
	reads  []string
	alone  *alone // nil for a rule that must see all that it reads
}

// run is a list of facts, one element of which must have all signs.
type run struct {
	path  []int // to the list, or to the facts of the line
	signs []sign
}

// sign says whether an element can be what the rule looks for.
type sign func(reflect.Value) bool

// alone is what a rule reads that judges every element of one list by itself.
type alone struct {
	path   []int
	over   string
	fields mask
	keys   []int // those that a finding follows from, as places in the element
	line   []int
	names  []name
}

// name is a fact that a report only repeats.
type name struct {
	report string // its key there
	field  int
}

// mask has one bit for each field of a struct.
type mask uint64

func (g *guard) lets(v reflect.Value) bool {
	return len(g.bodies) == 0 || slices.ContainsFunc(g.bodies, func(runs []run) bool {
		return !slices.ContainsFunc(runs, func(r run) bool { return !r.lets(v) })
	})
}

func (r *run) lets(v reflect.Value) bool {
	v = at(v, r.path)
	if v.Kind() == reflect.Struct {
		return r.fits(v)
	}
	for i := range v.Len() {
		if r.fits(v.Index(i)) {
			return true
		}
	}
	return false
}

func (r *run) fits(v reflect.Value) bool {
	for _, s := range r.signs {
		if !s(v) {
			return false
		}
	}
	return true
}

// elements are the places of those that a rule which judges alone may find something on.
func (g *guard) elements(v reflect.Value) []int {
	var out []int
	list := at(v, g.alone.path)
	for b, runs := range g.bodies {
		if len(runs) > 1 && !runs[0].fits(at(v, runs[0].path)) {
			continue // a condition on the line
		}
		own := &runs[len(runs)-1]
		for i := range list.Len() {
			if own.fits(list.Index(i)) && (b == 0 || !slices.Contains(out, i)) {
				out = append(out, i)
			}
		}
	}
	return out
}

func at(v reflect.Value, path []int) reflect.Value {
	for _, i := range path {
		v = v.Field(i)
	}
	return v
}
