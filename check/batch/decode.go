package batch

import (
	"reflect"
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
	facts facts.Facts // its lists are used again for the next line
}

// longText is many times what the facts of a common line take.
const longText = 1 << 20

func newReader() *reader { return &reader{shape: shapeOfFacts(), ids: map[string]struct{}{}} }

// read reads one line. The facts are good until the next call, their words for as long as anyone holds them.
func (r *reader) read(line []byte) (*facts.Facts, error) {
	if len(r.text) > longText {
		*r = *newReader() // what one huge line took is not kept for all others
	}
	if utf8.Valid(line) {
		r.text, r.at = string(line), 0
		if r.whole(&r.facts) {
			return &r.facts, nil
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
		if !f.of.lists {
			v.SetZero()
		}
		return r.object(v, f.of)
	}
	return r.list(v, f)
}
