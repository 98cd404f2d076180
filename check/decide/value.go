package decide

import (
	"encoding/json"
	"reflect"
	"strconv"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"lineworthy/check/facts"
)

// maker turns a Go value of one type into a term. The makers of all types of facts are worked out once.
type maker func(reflect.Value) *ast.Term

var makeFacts = structMaker(reflect.TypeFor[facts.Facts]())

// value is the facts as the engine wants them, without the way through text: equal to what it would read from JSON.
func value(f *facts.Facts) ast.Value {
	return makeFacts(reflect.ValueOf(f).Elem()).Value
}

// slot is one field of a struct. Its key is one term for all objects, which is safe because terms do not change.
type slot struct {
	index    int
	key      *ast.Term
	optional bool
	make     maker
}

func structMaker(t reflect.Type) maker {
	var slots []slot
	for i := range t.NumField() {
		key, option, _ := strings.Cut(t.Field(i).Tag.Get("json"), ",")
		slots = append(slots, slot{i, ast.InternedTerm(key), option == "omitzero", makerOf(t.Field(i))})
	}
	return func(v reflect.Value) *ast.Term {
		pairs := make([][2]*ast.Term, 0, len(slots))
		for i := range slots {
			s := &slots[i]
			if f := v.Field(s.index); !s.optional || known(f) {
				pairs = append(pairs, [2]*ast.Term{s.key, s.make(f)})
			}
		}
		return ast.ObjectTerm(pairs...)
	}
}

// known says whether an optional fact is there: a Bool or Int by its mark, a word by not being empty.
func known(v reflect.Value) bool {
	if v.Kind() == reflect.Struct {
		return v.Field(1).Bool()
	}
	return v.Len() > 0
}

func makerOf(f reflect.StructField) maker {
	switch {
	case f.Type == reflect.TypeFor[facts.Int]():
		return func(v reflect.Value) *ast.Term { return integer(v.Field(0).Int()) }
	case f.Type == reflect.TypeFor[facts.Bool]():
		return func(v reflect.Value) *ast.Term { return ast.InternedTerm(v.Field(0).Bool()) }
	}
	return plainMaker(f.Type, vocabulary(f.Tag.Get("words")))
}

func plainMaker(t reflect.Type, words map[string]*ast.Term) maker {
	switch t.Kind() {
	case reflect.Int64:
		return func(v reflect.Value) *ast.Term { return integer(v.Int()) }
	case reflect.Bool:
		return func(v reflect.Value) *ast.Term { return ast.InternedTerm(v.Bool()) }
	case reflect.String:
		return func(v reflect.Value) *ast.Term { return word(v.String(), words) }
	case reflect.Slice:
		return listMaker(plainMaker(t.Elem(), words))
	case reflect.Struct:
		return structMaker(t)
	}
	panic("decide: no term for " + t.String()) // a new type in facts needs a maker here
}

func listMaker(one maker) maker {
	return func(v reflect.Value) *ast.Term {
		terms := make([]*ast.Term, v.Len())
		for i := range terms {
			terms[i] = one(v.Index(i))
		}
		return ast.ArrayTerm(terms...)
	}
}

// vocabulary has one shared term for each word that a fact can be.
func vocabulary(tag string) map[string]*ast.Term {
	out := map[string]*ast.Term{}
	for w := range strings.SplitSeq(tag, ",") {
		out[w] = ast.InternedTerm(w)
	}
	return out
}

func word(s string, words map[string]*ast.Term) *ast.Term {
	if t := words[s]; t != nil {
		return t
	}
	return ast.StringTerm(s)
}

// integer keeps all 64 bits, also where an int has 32.
func integer(n int64) *ast.Term {
	if int64(int(n)) == n {
		return ast.InternedTerm(int(n))
	}
	return ast.NumberTerm(json.Number(strconv.FormatInt(n, 10)))
}
