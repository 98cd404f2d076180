package oracle

import (
	"reflect"
	"strings"

	"lineworthy/check/facts"
)

// asks are the words, by collection.field, for who can supply a fact. They are texts for people, so they are not stated
// a second time but taken from the facts.
var asks = asksOf(reflect.TypeFor[facts.Facts]())

func asksOf(t reflect.Type) map[string]string {
	out := map[string]string{}
	for i := range t.NumField() {
		f := t.Field(i)
		of, name := f.Type, key(f)
		if of == reflect.TypeFor[facts.Pairs]() {
			of = of.Field(0).Type
		}
		if of.Kind() == reflect.Slice {
			of = of.Elem()
		}
		if of.Kind() != reflect.Struct {
			continue
		}
		for j := range of.NumField() {
			out[name+"."+key(of.Field(j))] = of.Field(j).Tag.Get("ask")
		}
	}
	return out
}

func key(f reflect.StructField) string {
	name, _, _ := strings.Cut(f.Tag.Get("json"), ",")
	return name
}
