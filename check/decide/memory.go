package decide

import (
	"strings"
	"sync"
)

// memory keeps what rules that judge alone found on an element, under all the facts that the finding follows from. Lines
// of one plant share most of their materials, papers and ratings, so most elements of a line have been judged before.
//
// It has two halves: when the young one is full it becomes the old one, and what has not been met since is forgotten.
type memory struct {
	lock       sync.Mutex
	young, old map[string][]Finding
	bytes      int
	asked, met map[int]int // by rule: how often an element was looked up, and how often it was known
}

// mostBytes is about what one half may hold.
const mostBytes = 2 << 20

// A rule of which less than one in four elements of so many were known is not looked up any more: its numbers differ from
// part to part, and the search costs more than it saves.
const fewAsked = 1000

// Remembering is the same engine with a memory of a few MB, for many lines. The findings it gives share their maps with
// those of other lines: do not change them.
func (e *Engine) Remembering() *Engine {
	return &Engine{core: e.core, past: &memory{young: map[string][]Finding{}, asked: map[int]int{}, met: map[int]int{}}}
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

// useless must be called under the lock.
func (m *memory) useless(rule int) bool {
	return m.asked[rule] > fewAsked && 4*m.met[rule] < m.asked[rule]
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

func (f Finding) clone() Finding {
	f.Subject, f.Part, f.Case = strings.Clone(f.Subject), strings.Clone(f.Part), strings.Clone(f.Case)
	words := make(map[string]string, len(f.Words))
	for k, w := range f.Words {
		words[k] = strings.Clone(w) // keys are those of the rule
	}
	f.Words = words
	return f
}
