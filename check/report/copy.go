package report

import "reflect"

// copyOf is a deep copy in which every text went through the given function and no list or map is nil.
func copyOf(v *Verdict, text func(string) string) *Verdict {
	out := new(Verdict)
	fill(reflect.ValueOf(out).Elem(), reflect.ValueOf(v).Elem(), text)
	return out
}

func fill(to, from reflect.Value, text func(string) string) {
	switch from.Kind() {
	case reflect.Struct:
		for i := range from.NumField() {
			fill(to.Field(i), from.Field(i), text)
		}
	case reflect.Pointer:
		if !from.IsNil() {
			to.Set(reflect.New(from.Type().Elem()))
			fill(to.Elem(), from.Elem(), text)
		}
	case reflect.Slice:
		to.Set(reflect.MakeSlice(from.Type(), from.Len(), from.Len()))
		for i := range from.Len() {
			fill(to.Index(i), from.Index(i), text)
		}
	case reflect.Map:
		fillMap(to, from, text)
	case reflect.String:
		to.SetString(text(from.String()))
	default:
		to.Set(from)
	}
}

func fillMap(to, from reflect.Value, text func(string) string) {
	to.Set(reflect.MakeMap(from.Type()))
	for _, key := range from.MapKeys() {
		k, v := reflect.New(key.Type()).Elem(), reflect.New(from.Type().Elem()).Elem()
		fill(k, key, text)
		fill(v, from.MapIndex(key), text)
		to.SetMapIndex(k, v)
	}
}
