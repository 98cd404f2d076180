package register

import (
	"hash/maphash"
	"slices"
)

// spots remember which sheets name the same hose, or the same line, in eight bytes for each name: the texts stay on the
// disk. Two names may by chance share their 31 bits; then two sheets too many are read again, and nothing else.
type spots struct {
	seed   maphash.Seed
	marks  []uint64 // 31 bits of the name, what it names, then the number of the entry
	sorted bool
}

// named is what a name is of.
type named uint64

const (
	ofLine named = iota
	ofHose
)

func (s *spots) add(e *Entry, entry int32) {
	if e.Line == "" || e.bad() {
		return
	}
	if s.marks == nil {
		s.seed = maphash.MakeSeed()
	}
	s.mark(ofLine, alike(e.Line), entry)
	for _, h := range e.Hoses {
		s.mark(ofHose, alike(h.Tag), entry)
	}
}

func (s *spots) key(of named, name string) uint64 {
	return maphash.String(s.seed, name)>>33<<1 | uint64(of)
}

func (s *spots) mark(of named, name string, entry int32) {
	s.marks = append(s.marks, s.key(of, name)<<32|uint64(entry))
	s.sorted = false
}

func (s *spots) sort() {
	if !s.sorted {
		slices.Sort(s.marks)
		s.sorted = true
	}
}

// shared are the numbers of the entries that have such a name in common with another, or twice within; in order.
func (s *spots) shared(of ...named) (entries []int32) {
	s.sort()
	for i, m := range s.marks {
		before := i > 0 && s.marks[i-1]>>32 == m>>32
		after := i+1 < len(s.marks) && s.marks[i+1]>>32 == m>>32
		if (before || after) && slices.Contains(of, named(m>>32&1)) {
			entries = append(entries, int32(uint32(m)))
		}
	}
	slices.Sort(entries)
	return slices.Compact(entries)
}

// met says whether a name stands in several places.
func (s *spots) met(of named, name string) bool {
	s.sort()
	key := s.key(of, name)
	i, _ := slices.BinarySearch(s.marks, key<<32)
	return i+1 < len(s.marks) && s.marks[i]>>32 == key && s.marks[i+1]>>32 == key
}
