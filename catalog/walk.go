package catalog

import (
	"reflect"
	"slices"

	"gopkg.in/yaml.v3"
)

// spot is one node of a file with the type that reads it. The owner and key are those of the nearest key
// with a meaning of its own: the 5 in {bend_mm: {all: 5}} is found at Hose and bend_mm.
type spot struct {
	file       *file
	node       *yaml.Node
	as         reflect.Type
	owner, key string
}

// pair is one key of a mapping.
type pair struct {
	name  string
	value *yaml.Node
}

func pairsOf(n *yaml.Node) []pair {
	var pairs []pair
	if n.Kind == yaml.MappingNode {
		for i := 0; i < len(n.Content); i += 2 {
			pairs = append(pairs, pair{n.Content[i].Value, n.Content[i+1]})
		}
	}
	return pairs
}

// through are the keys that only hold what the key above them means.
var through = []string{"value", "values", "all", "by_size"}

// walk visits the node and everything below it.
func walk(s spot, visit func(spot)) {
	for s.as.Kind() == reflect.Pointer {
		s.as = s.as.Elem()
	}
	visit(s)
	switch s.as.Kind() {
	case reflect.Struct:
		walkStruct(s, visit)
	case reflect.Slice:
		for _, n := range s.node.Content {
			walk(spot{s.file, n, s.as.Elem(), s.owner, s.key}, visit)
		}
	case reflect.Map:
		for _, p := range pairsOf(s.node) {
			walk(spot{s.file, p.value, s.as.Elem(), s.owner, s.key}, visit)
		}
	}
}

func walkStruct(s spot, visit func(spot)) {
	for _, p := range pairsOf(s.node) {
		below := spot{s.file, p.value, nil, s.as.Name(), p.name}
		if slices.Contains(through, p.name) {
			below.owner, below.key = s.owner, s.key
		}
		if field, ok := fieldOf(s.as, p.name); ok {
			below.as = field
			walk(below, visit)
		}
	}
}

// fieldOf is the type behind a key of a struct.
func fieldOf(t reflect.Type, key string) (reflect.Type, bool) {
	for i := range t.NumField() {
		name, inline := keyOf(t.Field(i))
		if inline {
			if found, ok := fieldOf(t.Field(i).Type, key); ok {
				return found, true
			}
		} else if name == key && t.Field(i).IsExported() {
			return t.Field(i).Type, true
		}
	}
	return nil, false
}

// keysOf lists the keys of the struct type of that name within t, sorted.
func keysOf(t reflect.Type, name string) []string {
	for t.Kind() == reflect.Pointer || t.Kind() == reflect.Slice || t.Kind() == reflect.Map {
		t = t.Elem()
	}
	if t.Kind() != reflect.Struct {
		return nil
	}
	if t.Name() == name {
		return fieldKeys(t)
	}
	for i := range t.NumField() {
		if keys := keysOf(t.Field(i).Type, name); t.Field(i).IsExported() && keys != nil {
			return keys
		}
	}
	return nil
}

func fieldKeys(t reflect.Type) []string {
	var keys []string
	for i := range t.NumField() {
		if key, inline := keyOf(t.Field(i)); inline {
			keys = append(keys, fieldKeys(t.Field(i).Type)...)
		} else if t.Field(i).IsExported() {
			keys = append(keys, key)
		}
	}
	slices.Sort(keys)
	return keys
}

// bearsOrigin is true of types whose values carry evidence somewhere inside.
func bearsOrigin(t reflect.Type) bool {
	if hasOrigin(t) {
		return true
	}
	switch t.Kind() {
	case reflect.Pointer, reflect.Slice, reflect.Map:
		return bearsOrigin(t.Elem())
	case reflect.Struct:
		for i := range t.NumField() {
			if t.Field(i).IsExported() && bearsOrigin(t.Field(i).Type) {
				return true
			}
		}
	}
	return false
}

// hasOrigin is true of structs that are one value with its provenance.
func hasOrigin(t reflect.Type) bool {
	if t.Kind() != reflect.Struct {
		return false
	}
	f, ok := t.FieldByName("Origin")
	return ok && f.Anonymous
}
