package batch

import (
	"reflect"
	"slices"
	"strings"
	"unicode/utf8"
	"unsafe"

	"lineworthy/check/facts"
)

// reader reads facts many times faster than facts.Read, as long as they are written the way this program and most others
// write JSON. Whatever it does not take goes to facts.Read, which alone decides and knows how to say what is wrong: what
// this reader takes, that one takes too, with the same result.
//
// It writes by the offsets of the fields, which costs a third of what reflection does: the types are those of kindOf.
type reader struct {
	shape  *shape
	text   string
	at     int
	copies bool // the words outlive the line: rules of a site may do with them what they like
	ids    map[string]struct{}
	words  []string    // all lists of words of a line, end to end
	facts  facts.Facts // its lists are used again for the next line
}

// longText is many times what the facts of a common line take.
const longText = 1 << 20

func newReader(copies bool) *reader {
	return &reader{shape: shapeOfFacts(), ids: map[string]struct{}{}, copies: copies}
}

// read reads one line. The facts lie in the reader and their words in the line: they are good until the next call, or
// until the line is written over.
func (r *reader) read(line []byte) (*facts.Facts, error) {
	if len(r.text) > longText {
		*r = *newReader(r.copies) // what one huge line took is not kept for all others
	}
	if utf8.Valid(line) {
		if r.copies {
			line = slices.Clone(line)
		}
		r.text, r.at, r.words = unsafe.String(unsafe.SliceData(line), len(line)), 0, r.words[:0]
		if r.whole(&r.facts) {
			return &r.facts, nil
		}
	}
	return facts.Read(line)
}

func (r *reader) whole(f *facts.Facts) bool {
	r.space()
	if !r.object(unsafe.Pointer(f), r.shape) {
		return false
	}
	r.space()
	return r.at == len(r.text) && f.Schema == facts.Schema
}

// object reads one group of facts, mostly in the order of the struct.
func (r *reader) object(p unsafe.Pointer, s *shape) bool {
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
		if r.space(); !r.value(p, &s.fields[i]) {
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

// value reads one fact of the struct at p.
func (r *reader) value(p unsafe.Pointer, f *field) (ok bool) {
	p = unsafe.Add(p, f.offset)
	switch f.kind {
	case number:
		n := (*int64)(p)
		if f.wrapped {
			v := (*facts.Int)(p)
			n, v.Known = &v.V, true
		}
		*n, ok = r.number()
	case answer:
		b := (*bool)(p)
		if f.wrapped {
			v := (*facts.Bool)(p)
			b, v.Known = &v.V, true
		}
		*b, ok = r.answer()
	case word:
		w := (*string)(p)
		*w, ok = r.word(f)
		ok = ok && (*w != "" || !f.optional)
	case words:
		return r.wordList((*[]string)(p), f)
	case group:
		if !f.of.lists {
			reflect.NewAt(f.of.kind, p).Elem().SetZero() // as of an element of a list
		}
		return r.object(p, f.of)
	case list:
		return r.list(p, f.of)
	}
	return ok
}
