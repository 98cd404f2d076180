package register

import (
	"cmp"
	"encoding/binary"
	"slices"
)

// Evidence is one value to confirm, with what its confirmation is worth.
type Evidence struct {
	Confirm
	Lines  int `json:"lines"`        // that rest on it
	Alone  int `json:"frees_alone"`  // lines that become fit by this value alone
	Freed  int `json:"frees_so_far"` // lines that are fit once this value and all above it are confirmed
	number uint32
}

// papers gathers the values to confirm. It keeps each value, and each different set of them, once.
type papers struct {
	values map[Confirm]uint32
	all    []Evidence
	sets   map[string]int // lines for which exactly this set stands between them and fit
	open   int            // lines of those sets
}

func newPapers() *papers { return &papers{values: map[Confirm]uint32{}, sets: map[string]int{}} }

func (p *papers) add(e *Entry) {
	if len(e.Confirm) == 0 {
		return
	}
	var set []uint32
	for _, c := range e.Confirm {
		n, ok := p.values[c]
		if !ok {
			n = uint32(len(p.all))
			p.values[c] = n
			p.all = append(p.all, Evidence{Confirm: c, number: n})
		}
		set = append(set, n)
	}
	slices.Sort(set)
	set = slices.Compact(set)
	for _, n := range set {
		p.all[n].Lines++
	}
	if e.Stops+e.Missing+e.Conditions > 0 {
		return // it stays as it is whatever is confirmed
	}
	p.open++
	if len(set) == 1 {
		p.all[set[0]].Alone++
	}
	p.sets[packed(set)]++
}

func packed(set []uint32) string {
	var out []byte
	for _, n := range set {
		out = binary.BigEndian.AppendUint32(out, n)
	}
	return string(out)
}

func unpacked(text string) (set []uint32) {
	for b := []byte(text); len(b) > 0; b = b[4:] {
		set = append(set, binary.BigEndian.Uint32(b))
	}
	return set
}

// batch is a set of values that together free lines.
type batch struct {
	values []uint32
	lines  int
}

// ranked puts first what frees most lines for the fewest values still to look up, set by set; then by lines that rest on
// the value. Choosing the best set anew each time is not the best order of all, but a good one.
func (p *papers) ranked() []Evidence {
	batches := p.batches()
	done, order, freed := map[uint32]bool{}, []Evidence{}, 0
	for len(batches) > 0 {
		best := slices.MinFunc(batches, better)
		for _, n := range p.byLines(best.values) {
			if done[n] {
				continue
			}
			done[n] = true
			order = append(order, p.all[n])
			freed += p.settle(&batches, done)
			order[len(order)-1].Freed = freed
		}
	}
	rest := []uint32{}
	for n := range p.all {
		if !done[uint32(n)] {
			rest = append(rest, uint32(n))
		}
	}
	for _, n := range p.byLines(rest) {
		e := p.all[n]
		e.Freed = freed
		order = append(order, e)
	}
	return order
}

func (p *papers) batches() (out []batch) {
	for text, lines := range p.sets {
		out = append(out, batch{unpacked(text), lines})
	}
	return out
}

// settle takes the confirmed values out of every set, and the sets that are freed by it out of the list. Sets that have
// become the same are one.
func (p *papers) settle(all *[]batch, done map[uint32]bool) (freed int) {
	left := map[string]int{}
	for _, b := range *all {
		open := slices.DeleteFunc(slices.Clone(b.values), func(n uint32) bool { return done[n] })
		if len(open) == 0 {
			freed += b.lines
			continue
		}
		left[packed(open)] += b.lines
	}
	*all = (*all)[:0]
	for text, lines := range left {
		*all = append(*all, batch{unpacked(text), lines})
	}
	return freed
}

// better compares lines freed for each value still open, then the values themselves, so that the order is always the same.
func better(a, b batch) int {
	return cmp.Or(cmp.Compare(b.lines*len(a.values), a.lines*len(b.values)), cmp.Compare(len(a.values), len(b.values)),
		slices.Compare(a.values, b.values), cmp.Compare(b.lines, a.lines))
}

func (p *papers) byLines(values []uint32) []uint32 {
	out := slices.Clone(values)
	slices.SortFunc(out, func(a, b uint32) int {
		x, y := p.all[a], p.all[b]
		return cmp.Or(cmp.Compare(y.Lines, x.Lines), cmp.Compare(x.What, y.What), cmp.Compare(a, b))
	})
	return out
}
