package decide

import (
	"encoding/binary"
	"reflect"

	"lineworthy/check/facts"
)

// recall takes out of the questions whatever has been answered before. It gives the answers, and what is left to ask with
// the keys under which to remember it.
func (e *Engine) recall(asks []ask, f *facts.Facts) (known []Finding, open []ask) {
	v := reflect.ValueOf(f).Elem()
	var key []byte
	e.past.lock.Lock()
	defer e.past.lock.Unlock()
	for _, a := range asks {
		g := e.guards[a.rule]
		if a.elements == nil || e.past.useless(a.rule) || doubled(g.alone.list(v), a.elements) {
			open = append(open, a)
			continue
		}
		left := ask{rule: a.rule}
		for _, place := range a.elements {
			key = g.alone.key(key[:0], a.rule, v, place)
			e.past.asked[a.rule]++
			if list, ok := e.past.get(key); ok {
				e.past.met[a.rule]++
				known = g.alone.named(known, list, g.alone.list(v).Index(place))
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
		own := about(found, id)
		e.past.put(a.keys[i], e.guards[a.rule].alone.kept(own))
		out = append(out, own...)
	}
	return out
}

// about are the findings on one subject.
func about(found []Finding, subject string) []Finding {
	var out []Finding
	for _, x := range found {
		if x.Subject == subject {
			out = append(out, x)
		}
	}
	return out
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
