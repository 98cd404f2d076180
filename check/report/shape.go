package report

import (
	"reflect"
	"strconv"
	"strings"
)

// field is one key of the verdict document.
type field struct {
	name     string
	typ      reflect.Type
	required bool
}

// fieldsOf reads the keys of a type from its json tags. What may be left out says omitempty.
func fieldsOf(t reflect.Type) []field {
	var out []field
	for i := range t.NumField() {
		name, options, _ := strings.Cut(t.Field(i).Tag.Get("json"), ",")
		out = append(out, field{name, t.Field(i).Type, !strings.Contains(options, "omitempty")})
	}
	return out
}

func kindOf(t reflect.Type) string {
	switch t.Kind() {
	case reflect.Struct, reflect.Map:
		return "an object"
	case reflect.Slice:
		return "a list"
	case reflect.String:
		return "a text"
	case reflect.Bool:
		return "true or false"
	}
	return "a whole number"
}

func kindIn(raw []byte) string {
	switch raw[0] {
	case '{':
		return "an object"
	case '[':
		return "a list"
	case '"':
		return "a text"
	case 't', 'f':
		return "true or false"
	case 'n':
		return "null"
	}
	if _, err := strconv.ParseInt(string(raw), 10, 64); err != nil {
		return "a number that is not whole or too large"
	}
	return "a whole number"
}
