package compare

import (
	"fmt"
	"reflect"
	"slices"
	"strings"

	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

// leaf is one value of a thing: the key below the thing, what it means and how it was typed.
type leaf struct {
	key   string
	owner string // type of the mapping that holds the key, e.g. End
	name  string // the key within it
	norm  string // equal meanings have equal norms, sizes apart
	size  units.Size
	text  string
	line  int
}

// thing is one part, vessel, fluid, run, point or the like, with all its values by key.
type thing struct {
	kind   string // hose, vessel, fluid ...
	id     string
	label  string
	line   int
	leaves []leaf
}

// nested are the mappings that are things of their own and so no values of what holds them.
var nested = []string{
	"Line.fluids", "Line.vessels", "Line.runs", "Line.nearby", "Line.evidence", "Line.change", "Vessel.points", "Run.parts",
}

// collect gives the values below a mapping with dotted keys.
func (n names) collect(v reflect.Value, prefix string) []leaf {
	var out []leaf
	for i := range v.NumField() {
		key, _, _ := strings.Cut(v.Type().Field(i).Tag.Get("sheet"), ",")
		if key == "seal" && v.FieldByName("NoSeal").Field(1).Bool() {
			out = append(out, leaf{key: prefix + key, owner: "End", name: key, norm: "none", text: "none"})
		}
		if key == "-" || key == "" || slices.Contains(nested, v.Type().Name()+"."+key) {
			continue
		}
		out = append(out, n.field(v.Field(i), v.Type().Name(), prefix, key)...)
	}
	return out
}

func (n names) field(v reflect.Value, owner, prefix, key string) []leaf {
	switch v.Kind() {
	case reflect.Pointer:
		if v.IsNil() {
			return nil
		}
		return n.field(v.Elem(), owner, prefix, key)
	case reflect.Slice:
		return n.list(v, owner, prefix, key)
	}
	if _, isLeaf := v.Type().FieldByName("Text"); !isLeaf {
		return n.collect(v, prefix+key+".")
	}
	if !v.FieldByName("Set").Bool() {
		return nil
	}
	l := leaf{key: prefix + key, owner: owner, name: key, text: v.FieldByName("Text").String(), line: int(v.FieldByName("Pos").Field(0).Int())}
	l.norm, l.size = n.meaning(v.FieldByName("V").Interface(), key, owner)
	return []leaf{l}
}

// list takes a list of words as one value, for their order says nothing, and one of mappings as so many.
func (n names) list(v reflect.Value, owner, prefix, key string) []leaf {
	words, ok := v.Interface().([]sheet.Of[string])
	if !ok {
		var out []leaf
		for i := range v.Len() {
			at := key
			if v.Len() > 1 {
				at = fmt.Sprintf("%s %d", key, i+1)
			}
			out = append(out, n.collect(v.Index(i), prefix+at+".")...)
		}
		return out
	}
	if len(words) == 0 {
		return nil
	}
	l := leaf{key: prefix + key, owner: owner, name: key, line: words[0].Pos.Line}
	var norms, texts []string
	for _, w := range words {
		norm, _ := n.meaning(w.V, key, owner)
		norms, texts = append(norms, norm), append(texts, w.Text)
	}
	slices.Sort(norms)
	l.norm, l.text = strings.Join(norms, ", "), strings.Join(texts, ", ")
	return []leaf{l}
}
