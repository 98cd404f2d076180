package sheet

import (
	"fmt"
	"reflect"
)

// Written is one value as the sheet writes it.
type Written struct {
	Path string // as in Pos, e.g. runs.liquid.parts[2].rated
	Text string
	Pos  Pos
}

// Values are all values of the sheet in the order of its keys, for whoever has to point at them.
func (l *Line) Values() []Written {
	var out []Written
	valuesOf(reflect.ValueOf(l).Elem(), "", &out)
	return out
}

func valuesOf(v reflect.Value, path string, out *[]Written) {
	for _, f := range shapeOf(v.Type()).fields {
		at := f.key
		if path != "" {
			at = path + "." + f.key
		}
		valueAt(v.Field(f.index), f.form, f.single, at, out)
	}
}

func valueAt(v reflect.Value, form form, single bool, path string, out *[]Written) {
	if v.Kind() == reflect.Pointer {
		if v.IsNil() {
			return
		}
		v = v.Elem()
	}
	switch form {
	case leafForm:
		if v.FieldByName("Set").Bool() {
			*out = append(*out, Written{path, v.FieldByName("Text").String(), v.FieldByName("Pos").Interface().(Pos)})
		}
	case objectForm:
		valuesOf(v, path, out)
	case namesForm:
		for i := range v.Len() {
			n := v.Index(i)
			valueAt(n.FieldByName("V"), formOf(n.FieldByName("V").Type()), false, path+"."+n.FieldByName("Key").String(), out)
		}
	case listForm:
		for i := range v.Len() {
			at := fmt.Sprintf("%s[%d]", path, i)
			if single && v.Len() == 1 {
				at = path // a list of one is mostly written without its dash
			}
			valueAt(v.Index(i), formOf(v.Type().Elem()), false, at, out)
		}
	}
}
