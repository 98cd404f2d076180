package decide

import (
	"fmt"
	"reflect"
	"slices"
	"strings"

	"lineworthy/check/facts"
	"lineworthy/rules"
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
	keys   []int // the same fields, as places in the element
	line   []int
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

// newGuard finds the facts that a guard names. The error is that there is no such fact.
func newGuard(g rules.Guard) (*guard, error) {
	out := &guard{reads: g.Reads}
	for _, b := range g.Bodies {
		var runs []run
		for _, l := range b {
			r, err := newRun(l)
			if err != nil {
				return nil, err
			}
			if len(r.signs) > 0 || l.Over != "line" {
				runs = append(runs, r)
			}
		}
		out.bodies = append(out.bodies, runs)
	}
	if g.Alone == nil {
		return out, nil
	}
	var err error
	out.alone, err = newAlone(*g.Alone)
	return out, err
}

func newRun(l rules.Loop) (run, error) {
	path, t, err := pathOf(l.Over)
	r := run{path: path}
	if err != nil {
		return r, err
	}
	for _, x := range l.Signs {
		s, err := newSign(t, x)
		if err != nil {
			return r, err
		}
		r.signs = append(r.signs, s)
	}
	return r, nil
}

func newAlone(a rules.Alone) (*alone, error) {
	path, t, err := pathOf(a.Over)
	if err != nil {
		return nil, err
	}
	out := &alone{path: path, over: a.Over}
	for _, key := range a.Facts {
		f, err := fieldOf(t, key)
		if err != nil {
			return nil, err
		}
		out.keys = append(out.keys, f.Index[0])
		out.fields |= 1 << f.Index[0]
	}
	for _, key := range a.Line {
		f, err := fieldOf(reflect.TypeFor[facts.Line](), key)
		if err != nil {
			return nil, err
		}
		out.line = append(out.line, f.Index[0])
	}
	return out, nil
}

// pathOf finds a list of facts by its name, and what its elements are.
func pathOf(name string) ([]int, reflect.Type, error) {
	var path []int
	t := reflect.TypeFor[facts.Facts]()
	for key := range strings.SplitSeq(name, ".") {
		f, err := fieldOf(t, key)
		if err != nil {
			return nil, nil, err
		}
		path, t = append(path, f.Index[0]), f.Type
	}
	if t.Kind() == reflect.Slice {
		t = t.Elem()
	}
	return path, t, nil
}

// fieldOf finds a fact by its key.
func fieldOf(t reflect.Type, key string) (reflect.StructField, error) {
	if t.Kind() == reflect.Struct {
		for i := range t.NumField() {
			if name, _, _ := strings.Cut(t.Field(i).Tag.Get("json"), ","); name == key {
				return t.Field(i), nil
			}
		}
	}
	return reflect.StructField{}, fmt.Errorf("guard: %s has no fact %s", t, key)
}
