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

var whole = slotsOf(reflect.TypeFor[facts.Facts]())

// value is the facts as the engine wants them, without the way through text: equal to what it would read from JSON.
func value(f *facts.Facts) ast.Value {
	return whole.object(reflect.ValueOf(f).Elem(), everyField).Value
}

// everyField stands for all fields of a struct, however many.
const everyField = ^mask(0)

// slot is one field of a struct. Its key is one term for all objects, which is safe because terms do not change.
type slot struct {
	index    int
	name     string
	key      *ast.Term
	optional bool
	make     maker
	of       slots // of a struct, or of the elements of a list of structs
}

type slots []slot

// kinds are the slots of every struct, so that each is worked out once.
var kinds = map[reflect.Type]slots{}

func slotsOf(t reflect.Type) slots {
	if s := kinds[t]; s != nil {
		return s
	}
	var out slots
	for i := range t.NumField() {
		f := t.Field(i)
		key, option, _ := strings.Cut(f.Tag.Get("json"), ",")
		s := slot{index: i, name: key, key: ast.InternedTerm(key), optional: option == "omitzero", make: makerOf(f)}
		if e := f.Type; e != boolType && e != intType {
			if e.Kind() == reflect.Slice {
				e = e.Elem()
			}
			if e.Kind() == reflect.Struct {
				s.of = slotsOf(e)
			}
		}
		out = append(out, s)
	}
	kinds[t] = out
	return out
}

// object has those of the fields that are wanted and known.
func (s slots) object(v reflect.Value, fields mask) *ast.Term {
	pairs := make([][2]*ast.Term, 0, len(s))
	for i := range s {
		x := &s[i]
		if fields != everyField && fields>>x.index&1 == 0 {
			continue
		}
		if f := v.Field(x.index); !x.optional || known(f) {
			pairs = append(pairs, [2]*ast.Term{x.key, x.make(f)})
		}
	}
	return ast.ObjectTerm(pairs...)
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
		of := slotsOf(t)
		return func(v reflect.Value) *ast.Term { return of.object(v, everyField) }
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
