package facts

import (
	"reflect"
	"strings"
)

// form is what a fact is made of.
type form int

const (
	integer form = iota
	answer       // true or false
	word
	wordList // any number of words
	object   // one group of facts
	objects  // list of groups
)

// shape is what Go knows of one struct of facts, read once: the schema, the reader and the questions all follow it, so
// that they cannot differ.
type shape struct {
	name     string
	fields   []field
	at       map[string]int // key to place in fields
	optional []mark         // of the fields that may be absent
}

// field is one key of a shape.
type field struct {
	index    int // in the struct
	key      string
	optional bool // may be left out when it is not known
	form     form
	words    []string // the only words permitted; empty for any
	ask      string   // who can supply it
	of       *shape   // of object and objects
}

// whole is the shape of Facts, and collections are the shapes of what rules judge, by name.
var whole, collections = shapes()

// collection is one of what rules judge, with its place among them.
type collection struct {
	place int
	shape *shape
}

// places are the collections by name.
var places = func() map[string]*collection {
	out := map[string]*collection{}
	for i, name := range Collections() {
		out[name] = &collection{i, collections[name]}
	}
	return out
}()

func shapes() (*shape, map[string]*shape) {
	all := map[reflect.Type]*shape{}
	top := shapeOf(reflect.TypeFor[Facts](), all)
	byName := map[string]*shape{}
	for _, f := range top.fields {
		switch {
		case f.of == nil || f.key == "unknowns": // nothing to judge
		case f.of == all[reflect.TypeFor[Pairs]()]:
			byName[f.key] = all[reflect.TypeFor[Pair]()]
		default:
			byName[f.key] = f.of
		}
	}
	return top, byName
}

func shapeOf(t reflect.Type, all map[reflect.Type]*shape) *shape {
	if s := all[t]; s != nil {
		return s
	}
	s := &shape{name: t.Name(), at: map[string]int{}}
	all[t] = s
	for i := range t.NumField() {
		f := fieldOf(t.Field(i), all)
		f.index = i
		s.at[f.key] = len(s.fields)
		if f.optional {
			s.optional = append(s.optional, markOf(t.Field(i)))
		}
		s.fields = append(s.fields, f)
	}
	if len(s.fields) > 64 {
		panic("facts: more facts than bits in a mask in " + s.name) // split the struct
	}
	return s
}

func fieldOf(sf reflect.StructField, all map[reflect.Type]*shape) field {
	key, option, _ := strings.Cut(sf.Tag.Get("json"), ",")
	f := field{key: key, optional: option == "omitzero", ask: sf.Tag.Get("ask")}
	if w := sf.Tag.Get("words"); w != "" {
		f.words = strings.Split(w, ",")
	}
	f.form, f.of = formOf(sf.Type, all)
	return f
}

func formOf(t reflect.Type, all map[reflect.Type]*shape) (form, *shape) {
	switch {
	case t == reflect.TypeFor[Int]() || t.Kind() == reflect.Int64:
		return integer, nil
	case t == reflect.TypeFor[Bool]() || t.Kind() == reflect.Bool:
		return answer, nil
	case t.Kind() == reflect.String:
		return word, nil
	case t == reflect.TypeFor[[]string]():
		return wordList, nil
	case t.Kind() == reflect.Slice:
		return objects, shapeOf(t.Elem(), all)
	case t.Kind() == reflect.Struct:
		return object, shapeOf(t, all)
	}
	panic("facts: no form for " + t.String()) // a new type in facts.go needs a form here
}
