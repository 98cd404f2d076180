package batch

import (
	"math/bits"
	"reflect"
	"strings"
	"sync"

	"lineworthy/check/facts"
)

// kind is what a fact is made of.
type kind int

const (
	number kind = iota
	answer
	word
	words
	group
	list
)

// shape is one struct of facts, as the reader wants it.
type shape struct {
	fields   []field
	byKey    map[string]int
	required uint64 // one bit for each field that must be there
	id       int    // place of the id, -1 for none
	lists    bool   // it has lists of groups, all of which must be there
	kind     reflect.Type
	list     reflect.Type // of such structs
}

// field is one fact of a shape.
type field struct {
	key      string // as it stands in the text: "id":
	kind     kind
	wrapped  bool // Int or Bool: a value and whether it is known
	optional bool
	among    []string // the only words permitted; empty for any
	of       *shape
	offset   uintptr // from the start of the struct
}

// shapeOfFacts is what all readers follow.
var shapeOfFacts = sync.OnceValue(func() *shape { return shapeOf(reflect.TypeFor[facts.Facts]()) })

func shapeOf(t reflect.Type) *shape {
	s := &shape{byKey: map[string]int{}, id: -1, kind: t, list: reflect.SliceOf(t)}
	for i := range t.NumField() {
		sf := t.Field(i)
		key, option, _ := strings.Cut(sf.Tag.Get("json"), ",")
		f := field{key: `"` + key + `":`, optional: option == "omitzero", offset: sf.Offset}
		if w := sf.Tag.Get("words"); w != "" {
			f.among = strings.Split(w, ",")
		}
		f.kind, f.wrapped, f.of = kindOf(sf.Type)
		if !f.optional {
			s.required |= 1 << i
		}
		s.lists = s.lists || f.kind == list
		if key == "id" {
			s.id = i
		}
		s.byKey[key] = i
		s.fields = append(s.fields, f)
	}
	if len(s.fields) > bits.UintSize-1 {
		panic("batch: more facts than bits in " + t.String()) // split the struct
	}
	return s
}

func kindOf(t reflect.Type) (k kind, wrapped bool, of *shape) {
	switch {
	case t == reflect.TypeFor[facts.Int]():
		return number, true, nil
	case t == reflect.TypeFor[facts.Bool]():
		return answer, true, nil
	case t == reflect.TypeFor[[]string]():
		return words, false, nil
	}
	switch t.Kind() {
	case reflect.Int64:
		return number, false, nil
	case reflect.Bool:
		return answer, false, nil
	case reflect.String:
		return word, false, nil
	case reflect.Slice:
		return list, false, shapeOf(t.Elem())
	case reflect.Struct:
		return group, false, shapeOf(t)
	}
	panic("batch: no reader for " + t.String()) // a new type in facts needs one here
}
