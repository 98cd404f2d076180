package sheet

import (
	"reflect"
	"slices"
	"strings"
	"sync"
)

// form is how a value is written in YAML.
type form int

const (
	leafForm   form = iota // one value
	objectForm             // a mapping with known keys
	namesForm              // a mapping whose keys the author chooses
	listForm               // a list
)

// field is one key of a mapping, as the tag of its struct field describes it.
type field struct {
	index    int
	key      string
	form     form
	required bool
	signed   bool     // a length that may lie below its datum
	single   bool     // a list of one may be written without its dash
	none     string   // struct field set by the word none
	scalar   string   // key that a bare word stands for
	words    []string // the words the value may be
	kinds    []string // kinds of part that take the key; empty for all
}

// shape is what a mapping may hold, in the order of its struct.
type shape struct {
	fields []field
	byKey  map[string]*field
}

var shapes sync.Map // reflect.Type -> *shape

func shapeOf(t reflect.Type) *shape {
	if known, ok := shapes.Load(t); ok {
		return known.(*shape)
	}
	s := &shape{byKey: map[string]*field{}}
	for i := range t.NumField() {
		if tag := t.Field(i).Tag.Get("sheet"); tag != "-" {
			s.fields = append(s.fields, fieldOf(i, tag, formOf(t.Field(i).Type)))
		}
	}
	for i := range s.fields {
		s.byKey[s.fields[i].key] = &s.fields[i]
	}
	known, _ := shapes.LoadOrStore(t, s)
	return known.(*shape)
}

func fieldOf(index int, tag string, form form) field {
	key, options, _ := strings.Cut(tag, ",")
	f := field{index: index, key: key, form: form}
	for option := range strings.SplitSeq(options, ",") {
		name, value, _ := strings.Cut(option, "=")
		f.option(name, value)
	}
	return f
}

func (f *field) option(name, value string) {
	switch name {
	case "required":
		f.required = true
	case "signed":
		f.signed = true
	case "single":
		f.single = true
	case "none":
		f.none = value
	case "scalar":
		f.scalar = value
	case "words":
		f.words = strings.Split(value, "|")
	case "kinds":
		f.kinds = strings.Split(value, "|")
	}
}

func formOf(t reflect.Type) form {
	if t.Kind() == reflect.Pointer {
		t = t.Elem()
	}
	switch {
	case reflect.PointerTo(t).Implements(reflect.TypeFor[leaf]()):
		return leafForm
	case t.Kind() == reflect.Struct:
		return objectForm
	case reflect.PointerTo(t.Elem()).Implements(reflect.TypeFor[named]()):
		return namesForm
	}
	return listForm
}

// takes says whether a part of the kind has the key; an unknown kind is given the benefit of the doubt.
func (f *field) takes(kind string) bool {
	return kind == "" || len(f.kinds) == 0 || slices.Contains(f.kinds, kind)
}

func (s *shape) keys(kind string) []string {
	var keys []string
	for _, f := range s.fields {
		if f.takes(kind) {
			keys = append(keys, f.key)
		}
	}
	return keys
}

// kinded says whether some keys of the mapping belong to some kinds of part only.
func (s *shape) kinded() bool {
	return slices.ContainsFunc(s.fields, func(f field) bool { return len(f.kinds) > 0 })
}
