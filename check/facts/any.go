package facts

import (
	"fmt"
	"reflect"
)

// Any makes up facts for tests of properties: no real line, but a document that Read accepts. Every choice is made by
// choose(n), which gives a number below n. Words that are not from a closed list come from words.
func Any(choose func(n int) int, words []string) *Facts {
	f := &Facts{}
	m := maker{choose, words}
	m.object(reflect.ValueOf(f).Elem(), whole)
	f.Schema = Schema
	return f
}

type maker struct {
	choose func(n int) int
	words  []string
}

func (m maker) object(v reflect.Value, s *shape) {
	for _, f := range s.fields {
		if !f.optional || m.choose(4) > 0 {
			m.value(v.Field(f.index), f)
		}
	}
}

func (m maker) value(v reflect.Value, f field) {
	switch f.form {
	case object:
		m.object(v, f.of)
	case objects:
		m.list(v, func(e reflect.Value, i int) {
			m.object(e, f.of)
			e.Field(f.of.fields[f.of.at["id"]].index).SetString(fmt.Sprintf("%s %d", f.key, i))
		})
	case wordList:
		m.list(v, func(e reflect.Value, _ int) { e.SetString(m.word(f)) })
	case word:
		v.SetString(m.word(f))
	case integer:
		m.integer(v)
	case answer:
		m.answer(v)
	}
}

func (m maker) list(v reflect.Value, each func(reflect.Value, int)) {
	v.Set(reflect.MakeSlice(v.Type(), m.choose(4), 4))
	for i := range v.Len() {
		each(v.Index(i), i)
	}
}

func (m maker) word(f field) string {
	if len(f.words) > 0 {
		return f.words[m.choose(len(f.words))]
	}
	return m.words[m.choose(len(m.words))]
}

// edges are numbers that limits are often near.
var edges = []int64{-1, 0, 1, 30, 365, 1000, 1034, 4000, 10000, 29315}

func (m maker) integer(v reflect.Value) {
	n := edges[m.choose(len(edges))] + int64(m.choose(3)) - 1
	if v.Kind() == reflect.Int64 {
		v.SetInt(n)
		return
	}
	v.Set(reflect.ValueOf(Know(n)))
}

func (m maker) answer(v reflect.Value) {
	if v.Kind() == reflect.Bool {
		v.SetBool(m.choose(2) == 1)
		return
	}
	v.Set(reflect.ValueOf(Yes(m.choose(2) == 1)))
}
