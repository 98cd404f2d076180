package decide

import (
	"fmt"
	"maps"
	"reflect"
	"slices"
	"strings"

	"lineworthy/check/facts"
	"lineworthy/rules"
)

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
	if err != nil {
		return run{}, err
	}
	r := runOf(path)
	for _, x := range l.Signs {
		s, err := newSign(t, x)
		if err != nil {
			return r, err
		}
		r.signs = append(r.signs, s)
	}
	return r, nil
}

// runOf finds where the list lies in the facts, and how long its elements are.
func runOf(path []int) (r run) {
	t := reflect.TypeFor[facts.Facts]()
	for _, i := range path {
		r.offset += t.Field(i).Offset
		t = t.Field(i).Type
	}
	if t.Kind() == reflect.Slice {
		r.size = t.Elem().Size()
	}
	return r
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
	for _, report := range slices.Sorted(maps.Keys(a.Names)) {
		f, err := fieldOf(t, a.Names[report])
		if err != nil {
			return nil, err
		}
		out.names = append(out.names, name{report, f.Index[0]})
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
