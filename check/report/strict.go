package report

import (
	"bytes"
	"encoding/json"
	"fmt"
	"reflect"
	"slices"
	"strconv"
	"strings"
)

// strict compares JSON with the Go type it is for. The standard decoder takes a key in any case, takes the last
// of two and does not miss an absent one; a signed record may not be read so kindly.
type strict struct{ faults []string }

func (s *strict) fault(path, format string, args ...any) {
	if path == "" {
		path = "the document"
	}
	s.faults = append(s.faults, path+": "+fmt.Sprintf(format, args...))
}

func (s *strict) value(raw []byte, t reflect.Type, path string) {
	if t.Kind() == reflect.Pointer {
		t = t.Elem()
	}
	raw = bytes.TrimSpace(raw)
	if wanted, found := kindOf(t), kindIn(raw); wanted != found {
		s.fault(path, "should be %s, is %s", wanted, found)
		return
	}
	switch t.Kind() {
	case reflect.Struct:
		s.object(raw, t, path)
	case reflect.Map:
		s.each(raw, path, func(string) reflect.Type { return t.Elem() })
	case reflect.Slice:
		var items []json.RawMessage
		_ = json.Unmarshal(raw, &items) // cannot fail: syntax and kind are known
		for i, item := range items {
			s.value(item, t.Elem(), path+"["+strconv.Itoa(i)+"]")
		}
	}
}

func (s *strict) object(raw []byte, t reflect.Type, path string) {
	known := fieldsOf(t)
	var names []string
	for _, f := range known {
		names = append(names, f.name)
	}
	seen := s.each(raw, path, func(key string) reflect.Type {
		if i := slices.Index(names, key); i >= 0 {
			return known[i].typ
		}
		hint := ""
		if near := nearest(key, names); near != "" {
			hint = "; did you mean " + near + "?"
		}
		s.fault(below(path, key), "unknown key%s", hint)
		return nil
	})
	for _, f := range known {
		if f.required && !seen[f.name] {
			s.fault(below(path, f.name), "missing")
		}
	}
}

// each goes through the keys of an object; typ says what a key should hold, nil when it is not to be looked into.
func (s *strict) each(raw []byte, path string, typ func(key string) reflect.Type) map[string]bool {
	seen := map[string]bool{}
	dec := json.NewDecoder(bytes.NewReader(raw))
	_, _ = dec.Token() // the opening brace
	for dec.More() {
		token, _ := dec.Token()
		key, _ := token.(string)
		var item json.RawMessage
		_ = dec.Decode(&item)
		if seen[key] {
			s.fault(below(path, key), "is there twice")
		}
		seen[key] = true
		if t := typ(key); t != nil {
			s.value(item, t, below(path, key))
		}
	}
	return seen
}

func below(path, key string) string { return strings.TrimPrefix(path+"."+key, ".") }
