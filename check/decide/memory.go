package decide

import (
	"encoding/binary"
	"reflect"
	"strings"
	"sync"

	"lineworthy/check/facts"
)

// memory keeps what rules that judge alone found on an element, under all the facts that the finding follows from. Lines
// of one plant share most of their materials, papers and ratings, so most elements of a line have been judged before.
//
// It has two halves: when the young one is full it becomes the old one, and what has not been met since is forgotten.
type memory struct {
	lock       sync.Mutex
	young, old map[string][]Finding
	bytes      int
}

// mostBytes is about what one half may hold.
const mostBytes = 4 << 20

// Remembering is the same engine with a memory of about 10 MB, for many lines. The findings it gives share their maps with
// those of other lines: do not change them.
func (e *Engine) Remembering() *Engine {
	return &Engine{core: e.core, past: &memory{young: map[string][]Finding{}}}
}

// get must be called under the lock.
func (m *memory) get(key []byte) ([]Finding, bool) {
	if list, ok := m.young[string(key)]; ok {
		return list, true
	}
	list, ok := m.old[string(key)]
	if ok {
		m.put(string(key), list)
	}
	return list, ok
}

// put must be called under the lock.
func (m *memory) put(key string, list []Finding) {
	size := len(key) + 64
	for _, f := range list {
		size += 400 + len(f.Subject) + 40*(len(f.Numbers)+len(f.Words)) // about what the maps of a finding take
		for _, w := range f.Words {
			size += len(w)
		}
	}
	if m.bytes+size > mostBytes {
		m.old, m.young, m.bytes = m.young, map[string][]Finding{}, 0
	}
	m.young[key] = list
	m.bytes += size
}

// recall takes out of the questions whatever has been answered before. It gives the answers, and what is left to ask with
// the keys under which to remember it.
func (e *Engine) recall(asks []ask, f *facts.Facts) (known []Finding, open []ask) {
	v := reflect.ValueOf(f).Elem()
	var key []byte
	e.past.lock.Lock()
	defer e.past.lock.Unlock()
	for _, a := range asks {
		g := e.guards[a.rule]
		if a.elements == nil || doubled(g.alone.list(v), a.elements) {
			open = append(open, a)
			continue
		}
		left := ask{rule: a.rule}
		for _, place := range a.elements {
			key = g.alone.key(key[:0], a.rule, v, place)
			if list, ok := e.past.get(key); ok {
				known = append(known, list...)
				continue
			}
			left.elements, left.keys = append(left.elements, place), append(left.keys, string(key))
		}
		if len(left.elements) > 0 {
			open = append(open, left)
		}
	}
	return known, open
}

// remember files what one rule found under the keys of the elements it was asked about, and gives what was found on
// these: the engine may have been shown others that were answered already.
func (e *Engine) remember(a ask, found []Finding, f *facts.Facts) []Finding {
	if a.keys == nil {
		return found
	}
	list := e.guards[a.rule].alone.list(reflect.ValueOf(f).Elem())
	var out []Finding
	e.past.lock.Lock()
	defer e.past.lock.Unlock()
	for i, place := range a.elements {
		id := idOf(list.Index(place))
		own := kept(found, id)
		e.past.put(a.keys[i], own)
		out = append(out, own...)
	}
	return out
}

// kept are copies of the findings on one subject that hold on to nothing of the line they come from.
func kept(found []Finding, subject string) []Finding {
	var out []Finding
	for _, x := range found {
		if x.Subject == subject {
			out = append(out, x.clone())
		}
	}
	return out
}

func (f Finding) clone() Finding {
	f.Subject, f.Part, f.Case = strings.Clone(f.Subject), strings.Clone(f.Part), strings.Clone(f.Case)
	words := make(map[string]string, len(f.Words))
	for k, w := range f.Words {
		words[k] = strings.Clone(w) // keys are those of the rule
	}
	f.Words = words
	return f
}

func (a *alone) list(v reflect.Value) reflect.Value { return at(v, a.path) }

// idOf is the id of an element: it is the first fact of every kind.
func idOf(v reflect.Value) string { return v.Field(0).String() }

// doubled says whether two elements have the same id, so that nobody can tell whose a finding is.
func doubled(list reflect.Value, places []int) bool {
	if len(places) < 2 {
		return false
	}
	seen := make(map[string]bool, len(places))
	for _, p := range places {
		id := idOf(list.Index(p))
		if seen[id] {
			return true
		}
		seen[id] = true
	}
	return false
}

// key is every fact that the finding of a rule on an element follows from, so that no two sets of facts have one key.
func (a *alone) key(b []byte, rule int, v reflect.Value, place int) []byte {
	b = binary.AppendUvarint(b, uint64(rule))
	element, line := a.list(v).Index(place), v.Field(lineField)
	for _, i := range a.keys {
		b = appendFact(b, element.Field(i))
	}
	for _, i := range a.line {
		b = appendFact(b, line.Field(i))
	}
	return b
}

var lineField = must(fieldOf(reflect.TypeFor[facts.Facts](), "line")).Index[0]

func must(f reflect.StructField, err error) reflect.StructField {
	if err != nil {
		panic(err)
	}
	return f
}

// appendFact writes one fact so that its end can be told.
func appendFact(b []byte, v reflect.Value) []byte {
	switch v.Kind() {
	case reflect.String:
		return append(binary.AppendUvarint(b, uint64(v.Len())), v.String()...)
	case reflect.Int64:
		return binary.AppendVarint(b, v.Int())
	case reflect.Bool:
		if v.Bool() {
			return append(b, 1)
		}
		return append(b, 0)
	case reflect.Slice:
		b = binary.AppendUvarint(b, uint64(v.Len()))
		for i := range v.Len() {
			b = appendFact(b, v.Index(i))
		}
		return b
	}
	return appendFact(appendFact(b, v.Field(1)), v.Field(0)) // Int and Bool
}
