package facts

import (
	"slices"
	"strings"

	"lineworthy/catalog"
)

// resting is a value the line rests on, while its users are still being gathered.
type resting struct {
	Value
	users int
	last  string // who came last, so that a part that asks twice in a row is not filed twice
	end   int    // where its users end in the one block that holds those of all values
}

// use is one part that rests on a value, given by its place.
type use struct {
	value int
	part  string
}

// rests records a favourable value that a part rests on, with how it is known, and gives its place for further uses.
func (b *builder) rests(id, what string, o catalog.Origin, part string) int {
	at, ok := b.values[id]
	if !ok {
		at = len(b.resting)
		b.resting = append(b.resting, resting{Value: Value{ID: id, What: what, Standing: string(o.Standing), Source: b.document(o.Source), Clause: o.Clause}})
		b.values[id] = at
	}
	b.uses(at, part)
	return at
}

// document is what a source id stands for, put together once for all values out of it.
func (b *builder) document(source string) string {
	if source == "" {
		return ""
	}
	for _, d := range b.documents {
		if d.source == source {
			return d.name
		}
	}
	d := document{source, b.l.Sources(source)}
	b.documents = append(b.documents, d)
	return d.name
}

type document struct{ source, name string }

// known notes a further part that rests on a value already recorded, so that its words need not be made once more. The id
// comes in pieces, which are only joined to be looked up.
func (b *builder) known(part string, id ...string) bool {
	at, ok := b.values[string(b.join(id...))]
	if ok {
		b.uses(at, part)
	}
	return ok
}

// join puts pieces of text together in a space that the next call takes again: for looking up, not for keeping.
func (b *builder) join(pieces ...string) []byte {
	b.text = b.text[:0]
	for _, p := range pieces {
		b.text = append(b.text, p...)
	}
	return b.text
}

func (b *builder) uses(at int, part string) {
	v := &b.resting[at]
	if v.users > 0 && v.last == part {
		return
	}
	v.users, v.last = v.users+1, part
	b.used = append(b.used, use{at, part})
}

// closeValues files the values by id, each with its users in order; one block holds the users of all, to be made once.
func (b *builder) closeValues() {
	b.order = b.order[:0]
	for i := range b.resting {
		b.order = append(b.order, i)
	}
	slices.SortFunc(b.order, func(x, y int) int { return strings.Compare(b.resting[x].ID, b.resting[y].ID) })
	all, end := make([]string, len(b.used)), 0
	for _, at := range b.order {
		b.resting[at].end = end
		end += b.resting[at].users
	}
	for _, u := range b.used {
		v := &b.resting[u.value]
		all[v.end] = u.part
		v.end++
	}
	b.f.Values = make([]Value, 0, len(b.order))
	for _, at := range b.order {
		v := &b.resting[at]
		v.Used = all[v.end-v.users : v.end : v.end]
		slices.Sort(v.Used)
		v.Used = slices.Compact(v.Used)
		b.f.Values = append(b.f.Values, v.Value)
	}
}
