package batch

import (
	"reflect"
	"slices"
	"strings"
	"unicode/utf8"

	"lineworthy/check/facts"
)

// reader reads facts many times faster than facts.Read, as long as they are written the way this program and most others
// write JSON. Whatever it does not take goes to facts.Read, which alone decides and knows how to say what is wrong: what
// this reader takes, that one takes too, with the same result.
type reader struct {
	shape *shape
	text  string
	at    int
	ids   map[string]struct{}
}

func newReader() *reader { return &reader{shape: newShape(), ids: map[string]struct{}{}} }

// read reads one line. The facts are good until the next call, their words for as long as anyone holds them.
func (r *reader) read(line []byte) (*facts.Facts, error) {
	if utf8.Valid(line) {
		r.text, r.at = string(line), 0
		f := &facts.Facts{}
		if r.whole(f) {
			return f, nil
		}
	}
	return facts.Read(line)
}

func (r *reader) whole(f *facts.Facts) bool {
	r.space()
	if !r.object(reflect.ValueOf(f).Elem(), r.shape) {
		return false
	}
	r.space()
	return r.at == len(r.text) && f.Schema == facts.Schema
}

// object reads one group of facts, mostly in the order of the struct.
func (r *reader) object(v reflect.Value, s *shape) bool {
	if !r.take('{') {
		return false
	}
	seen, next := uint64(0), 0
	if r.space(); r.take('}') {
		return s.required == 0
	}
	for {
		i := r.key(s, next)
		if i < 0 || seen&(1<<i) != 0 {
			return false
		}
		seen |= 1 << i
		if r.space(); !r.value(v.Field(i), &s.fields[i]) {
			return false
		}
		if r.space(); r.take('}') {
			return s.required&^seen == 0
		}
		if !r.take(',') {
			return false
		}
		r.space()
		next = i + 1
	}
}

// key finds which fact stands here, -1 for none that is known. It looks first at those that follow the last one.
func (r *reader) key(s *shape, next int) int {
	rest := r.text[r.at:]
	for i := next; i < len(s.fields); i++ {
		if k := s.fields[i].key; strings.HasPrefix(rest, k) {
			r.at += len(k)
			return i
		}
		if !s.fields[i].optional {
			break // it must be here, unless the order is another
		}
	}
	if !r.take('"') {
		return -1
	}
	end := strings.IndexByte(r.text[r.at:], '"')
	if end < 0 {
		return -1
	}
	i, ok := s.byKey[r.text[r.at:r.at+end]]
	r.at += end + 1
	if r.space(); !ok || !r.take(':') {
		return -1
	}
	return i
}

func (r *reader) value(v reflect.Value, f *field) bool {
	switch f.kind {
	case number:
		n, ok := r.number()
		if f.wrapped {
			v.Field(1).SetBool(true)
			v = v.Field(0)
		}
		v.SetInt(n)
		return ok
	case answer:
		b, ok := r.answer()
		if f.wrapped {
			v.Field(1).SetBool(true)
			v = v.Field(0)
		}
		v.SetBool(b)
		return ok
	case word:
		w, ok := r.word(f)
		v.SetString(w)
		return ok && (w != "" || !f.optional)
	case words:
		return r.words(v, f)
	case group:
		return r.object(v, f.of)
	}
	return r.list(v, f)
}

func (r *reader) list(v reflect.Value, f *field) bool {
	if !r.take('[') {
		return false
	}
	out := reflect.MakeSlice(v.Type(), 0, f.most)
	n, unique := 0, true
	clear(r.ids)
	if r.space(); !r.take(']') {
		for {
			if n == out.Cap() {
				out = grown(out, n)
			}
			out = out.Slice(0, n+1)
			e := out.Index(n)
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
	f.most = max(n, f.most-f.most/8) // one long list does not make all later ones long
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
