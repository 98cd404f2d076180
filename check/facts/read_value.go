package facts

import (
	"encoding/json"
	"fmt"
	"reflect"
	"slices"
	"strconv"
	"strings"
)

// object reads one group of facts.
func (d *decoder) object(v reflect.Value, s *shape, path string) {
	if t := d.next(); t != json.Delim('{') {
		d.wrong(t, path, "a group of facts in { }")
		return
	}
	seen := map[string]bool{}
	for d.broken == nil && d.json.More() {
		key, _ := d.next().(string)
		at := strings.TrimPrefix(path+"."+key, ".")
		f, ok := s.find(key)
		switch {
		case d.broken != nil:
			return
		case !ok:
			d.fault(at, "no such fact here; known are %s", strings.Trim(s.keys(false)+", "+s.keys(true), ", "))
			d.skip(d.next())
			continue
		case seen[key]:
			d.fault(at, "stands here twice")
		}
		seen[key] = true
		d.value(v.Field(f.index), f, at)
	}
	d.next()
	for _, f := range s.fields {
		if !f.optional && !seen[f.key] && d.broken == nil {
			d.fault(path, "lacks %s", f.key)
		}
	}
}

func (d *decoder) value(v reflect.Value, f field, path string) {
	switch f.form {
	case object:
		d.object(v, f.of, path)
	case objects:
		d.list(v, path, func(e reflect.Value, at string) { d.object(e, f.of, at) })
	case wordList:
		d.list(v, path, func(e reflect.Value, at string) { d.word(e, f, at) })
	case word:
		d.word(v, f, path)
	case integer:
		d.integer(v, path)
	case answer:
		d.answer(v, path)
	}
}

func (d *decoder) list(v reflect.Value, path string, each func(reflect.Value, string)) {
	if t := d.next(); t != json.Delim('[') {
		d.wrong(t, path, "a list in [ ]")
		return
	}
	v.Set(reflect.MakeSlice(v.Type(), 0, 0))
	for d.broken == nil && d.json.More() {
		e := reflect.New(v.Type().Elem()).Elem()
		each(e, fmt.Sprintf("%s[%d]", path, v.Len()))
		v.Set(reflect.Append(v, e))
	}
	d.next()
}

func (d *decoder) word(v reflect.Value, f field, path string) {
	t := d.next()
	s, ok := t.(string)
	switch {
	case !ok:
		d.wrong(t, path, "a word in quotes")
	case f.optional && s == "":
		d.fault(path, "is empty: leave the key out if it is not known")
	case len(f.words) > 0 && !slices.Contains(f.words, s):
		d.fault(path, "%q is not one of %s", s, strings.Join(f.words, ", "))
	}
	v.SetString(s)
}

func (d *decoder) integer(v reflect.Value, path string) {
	t := d.next()
	text, ok := t.(json.Number)
	if !ok {
		d.wrong(t, path, "a whole number without quotes")
		return
	}
	n, err := strconv.ParseInt(text.String(), 10, 64)
	if err != nil {
		d.fault(path, "%s is not a whole number of 64 bits", text)
		return
	}
	if v.Kind() == reflect.Int64 {
		v.SetInt(n)
		return
	}
	v.Set(reflect.ValueOf(Know(n)))
}

func (d *decoder) answer(v reflect.Value, path string) {
	t := d.next()
	b, ok := t.(bool)
	if !ok {
		d.wrong(t, path, "true or false")
		return
	}
	if v.Kind() == reflect.Bool {
		v.SetBool(b)
		return
	}
	v.Set(reflect.ValueOf(Yes(b)))
}

// wrong reports a value of another kind and passes over it.
func (d *decoder) wrong(t json.Token, path, want string) {
	switch {
	case d.broken != nil:
	case t == nil:
		d.fault(path, "null is not a fact: leave the key out if it is not known")
	default:
		d.fault(path, "want %s", want)
		d.skip(t)
	}
}
