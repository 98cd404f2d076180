package decide

import (
	"fmt"
	"reflect"
	"strings"
	"unsafe"

	"lineworthy/check/facts"
)

// fact is one field of a struct of facts, read by its offset: guards look at a thousand facts of a line, and reflection
// takes three times as long. Its form is that of its type, which formOf makes sure of.
type fact struct {
	offset   uintptr
	form     form
	optional bool
}

type form int

const (
	number form = iota // int64
	marked             // facts.Int
	truth              // bool
	answer             // facts.Bool
	text               // string
	list               // of strings or of structs
)

func factOf(f reflect.StructField) (fact, error) {
	x := fact{offset: f.Offset, optional: strings.HasSuffix(f.Tag.Get("json"), ",omitzero")}
	var err error
	if x.form, err = formOf(f.Type); err == nil && x.optional && (x.form == number || x.form == truth) {
		err = fmt.Errorf("guard: whether %s is known cannot be told", f.Name)
	}
	return x, err
}

func formOf(t reflect.Type) (form, error) {
	switch {
	case t == intType:
		return marked, nil
	case t == boolType:
		return answer, nil
	case t.Kind() == reflect.Int64:
		return number, nil
	case t.Kind() == reflect.Bool:
		return truth, nil
	case t.Kind() == reflect.String:
		return text, nil
	case t.Kind() == reflect.Slice:
		return list, nil
	}
	return 0, fmt.Errorf("guard: no fact is of type %s", t)
}

// known says whether a fact of the struct at p is there at all: a list or word by not being empty.
func (x fact) known(p unsafe.Pointer) bool {
	if !x.optional {
		return true
	}
	switch x.form {
	case marked:
		return (*facts.Int)(unsafe.Add(p, x.offset)).Known
	case answer:
		return (*facts.Bool)(unsafe.Add(p, x.offset)).Known
	}
	return x.len(p) > 0
}

// holds is what a fact is worth alone in a rule: only false and what is not known fail.
func (x fact) holds(p unsafe.Pointer) bool {
	switch x.form {
	case truth:
		return *(*bool)(unsafe.Add(p, x.offset))
	case answer:
		b := (*facts.Bool)(unsafe.Add(p, x.offset))
		return b.V && (b.Known || !x.optional)
	}
	return x.known(p)
}

// number is that of a whole number, if it is known.
func (x fact) number(p unsafe.Pointer) (n int64, known bool) {
	if x.form == marked {
		v := (*facts.Int)(unsafe.Add(p, x.offset))
		return v.V, v.Known
	}
	return *(*int64)(unsafe.Add(p, x.offset)), true
}

// len is that of a word or list, whatever the list is of.
func (x fact) len(p unsafe.Pointer) int {
	if x.form == text {
		return len(*(*string)(unsafe.Add(p, x.offset)))
	}
	return len(*(*[]struct{})(unsafe.Add(p, x.offset)))
}

// words are the word, or those of the list.
func (x fact) words(p unsafe.Pointer) []string {
	if x.form == text {
		return unsafe.Slice((*string)(unsafe.Add(p, x.offset)), 1)
	}
	return *(*[]string)(unsafe.Add(p, x.offset))
}
