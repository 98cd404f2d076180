package register

import "hash/maphash"

// place is where an entry stands in the state file: its first byte, and in the lower bits its length. It takes eight
// bytes, for a register may hold millions.
type place uint64

const (
	sizeBits = 24 // more than longest needs
	farthest = 1 << (64 - sizeBits)
)

func placed(at int64, size int) place { return place(at<<sizeBits | int64(size)) }

func (p place) at() int64 { return int64(p >> sizeBits) }
func (p place) size() int { return int(p & (1<<sizeBits - 1)) }

// index is the place of the last entry about each path. It keeps 64 bits of each path: among a million sheets, two that
// share them turn up once in some 30 million runs, and who reads the entry sees that it is about another path.
type index struct {
	seed maphash.Seed
	last map[uint64]place
}

func newIndex() index { return index{maphash.MakeSeed(), map[uint64]place{}} }

func (x index) key(path string) uint64 { return maphash.String(x.seed, path) }

func (x index) put(path string, p place) { x.last[x.key(path)] = p }

func (x index) of(path string) (place, bool) {
	p, ok := x.last[x.key(path)]
	return p, ok
}
