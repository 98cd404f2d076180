package batch

import (
	"reflect"
	"slices"
)

func (r *reader) list(v reflect.Value, f *field) bool {
	if !r.take('[') {
		return false
	}
	out := v
	if v.IsNil() {
		out = reflect.MakeSlice(v.Type(), 0, 0)
	}
	n, unique := 0, true
	clear(r.ids)
	if r.space(); !r.take(']') {
		for {
			if n == out.Cap() {
				out = grown(out, n)
			}
			out = out.Slice(0, n+1)
			e := out.Index(n)
			e.SetZero() // nothing of another line may be left
			if r.space(); !r.object(e, f.of) {
				return false
			}
			if n++; f.of.id >= 0 {
				unique = unique && r.first(e.Field(f.of.id).String())
			}
			if r.space(); r.take(']') {
				break
			}
			if !r.take(',') {
				return false
			}
		}
	}
	if n == 0 {
		out = out.Slice(0, 0)
	}
	v.Set(out)
	return unique
}

// grown is the same list with room for twice as many.
func grown(v reflect.Value, n int) reflect.Value {
	out := reflect.MakeSlice(v.Type(), n, 2*n+4)
	reflect.Copy(out, v)
	return out
}

// first says whether an id is met for the first time in its list.
func (r *reader) first(id string) bool {
	n := len(r.ids)
	r.ids[id] = struct{}{}
	return len(r.ids) > n
}

func (r *reader) words(v reflect.Value, f *field) bool {
	if !r.take('[') {
		return false
	}
	out := []string{}
	if r.space(); !r.take(']') {
		for {
			r.space()
			w, ok := r.word(f)
			if !ok {
				return false
			}
			out = append(out, w)
			if r.space(); r.take(']') {
				break
			}
			if !r.take(',') {
				return false
			}
		}
	}
	v.Set(reflect.ValueOf(out))
	return true
}

func (r *reader) word(f *field) (string, bool) {
	w, ok := r.quoted()
	return w, ok && (len(f.among) == 0 || slices.Contains(f.among, w))
}
