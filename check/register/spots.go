package register

import (
	"hash/maphash"
	"slices"
)

// spots remember which sheets name the same hose, or the same line, in eight bytes for each name: the texts stay on the
// disk. Two names may by chance share their 32 bits; then two sheets too many are read again, and nothing else.
type spots struct {
	seed  maphash.Seed
	marks []uint64 // 32 bits of the name, then the number of the entry
}

func (s *spots) add(e *Entry, entry int32) {
	if e.Line == "" || e.bad() {
		return
	}
	if s.marks == nil {
		s.seed = maphash.MakeSeed()
	}
	s.mark("line "+alike(e.Line), entry)
	for _, h := range e.Hoses {
		s.mark("hose "+alike(h.Tag), entry)
	}
}

func (s *spots) mark(name string, entry int32) {
	s.marks = append(s.marks, maphash.String(s.seed, name)<<32|uint64(entry))
}

// shared are the numbers of the entries that have a name in common with another, or twice within; in order.
func (s *spots) shared() (entries []int32) {
	slices.Sort(s.marks)
	for i, m := range s.marks {
		before := i > 0 && s.marks[i-1]>>32 == m>>32
		if before || i+1 < len(s.marks) && s.marks[i+1]>>32 == m>>32 {
			entries = append(entries, int32(uint32(m)))
		}
	}
	slices.Sort(entries)
	return slices.Compact(entries)
}
