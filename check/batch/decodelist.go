package batch

import (
	"reflect"
	"slices"
	"unsafe"
)

// list reads a list of groups into the slice at p, over what lies there of another line.
func (r *reader) list(p unsafe.Pointer, s *shape) bool {
	if !r.take('[') {
		return false
	}
	out := reflect.NewAt(s.list, p).Elem()
	n, unique := 0, true
	clear(r.ids)
	if r.space(); !r.take(']') {
		for {
			e := element(out, n)
			if r.space(); !r.object(e, s) {
				return false
			}
			if n++; s.id >= 0 {
				unique = unique && r.first(*(*string)(unsafe.Add(e, s.fields[s.id].offset)))
			}
			if r.space(); r.take(']') {
				break
			}
			if !r.take(',') {
				return false
			}
		}
	}
	if out.SetLen(n); n == 0 && out.IsNil() {
		out.Set(reflect.MakeSlice(out.Type(), 0, 0))
	}
	return unique
}

// element makes room for one more, empty: nothing of another line may be left in it.
func element(out reflect.Value, n int) unsafe.Pointer {
	if n == out.Cap() {
		out.SetLen(n)
		out.Grow(n + 4)
	}
	out.SetLen(n + 1)
	e := out.Index(n)
	e.SetZero()
	return e.Addr().UnsafePointer()
}

// first says whether an id is met for the first time in its list.
func (r *reader) first(id string) bool {
	n := len(r.ids)
	r.ids[id] = struct{}{}
	return len(r.ids) > n
}

func (r *reader) wordList(out *[]string, f *field) bool {
	if !r.take('[') {
		return false
	}
	start := len(r.words)
	if r.space(); !r.take(']') {
		for {
			r.space()
			w, ok := r.word(f)
			if !ok {
				return false
			}
			r.words = append(r.words, w)
			if r.space(); r.take(']') {
				break
			}
			if !r.take(',') {
				return false
			}
		}
	}
	if *out = r.words[start:len(r.words):len(r.words)]; *out == nil {
		*out = []string{}
	}
	return true
}

func (r *reader) word(f *field) (string, bool) {
	w, ok := r.quoted()
	return w, ok && (len(f.among) == 0 || slices.Contains(f.among, w))
}
