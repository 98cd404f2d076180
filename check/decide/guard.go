package decide

import (
	"reflect"
	"slices"
	"unsafe"

	"lineworthy/check/facts"
)

// guard tells beforehand that a rule cannot find anything, from signs that were worked out from its text.
type guard struct {
	bodies [][]run // none: the rule always runs
	reads  []string
	alone  *alone // nil for a rule that must see all that it reads
}

// run is a list of facts, one element of which must have all signs.
type run struct {
	offset uintptr // of the list in the facts, or of the facts of the line
	size   uintptr // of one element; 0 for no list
	signs  []sign
}

// sign says whether the element there can be what the rule looks for.
type sign func(unsafe.Pointer) bool

// alone is what a rule reads that judges every element of one list by itself.
type alone struct {
	path   []int
	over   string
	fields mask
	keys   []int // those that a finding follows from, as places in the element
	line   []int
	names  []name
}

// name is a fact that a report only repeats.
type name struct {
	report string // its key there
	field  int
}

// mask has one bit for each field of a struct.
type mask uint64

func (g *guard) lets(f *facts.Facts) bool {
	return len(g.bodies) == 0 || slices.ContainsFunc(g.bodies, func(runs []run) bool {
		for i := range runs {
			if !runs[i].lets(f) {
				return false
			}
		}
		return true
	})
}

// lets says whether any element has all signs.
func (r *run) lets(f *facts.Facts) bool {
	first, n := r.elements(f)
	for i := range n {
		if r.fits(unsafe.Add(first, uintptr(i)*r.size)) {
			return true
		}
	}
	return false
}

// elements are how many there are, and where the first is. The facts of the line are one.
func (r *run) elements(f *facts.Facts) (first unsafe.Pointer, n int) {
	p := unsafe.Add(unsafe.Pointer(f), r.offset)
	if r.size == 0 {
		return p, 1
	}
	all := *(*[]struct{})(p) // whatever it is a list of
	return unsafe.Pointer(unsafe.SliceData(all)), len(all)
}

func (r *run) fits(p unsafe.Pointer) bool {
	for _, s := range r.signs {
		if !s(p) {
			return false
		}
	}
	return true
}

// elements are the places of those that a rule which judges alone may find something on. Its own list is the last run of
// each body; what stands before is a condition on the line.
func (g *guard) elements(f *facts.Facts) []int {
	var out []int
	for b, runs := range g.bodies {
		if len(runs) > 1 && !runs[0].lets(f) {
			continue
		}
		own := &runs[len(runs)-1]
		first, n := own.elements(f)
		for i := range n {
			if own.fits(unsafe.Add(first, uintptr(i)*own.size)) && (b == 0 || !slices.Contains(out, i)) {
				out = append(out, i)
			}
		}
	}
	return out
}

func at(v reflect.Value, path []int) reflect.Value {
	for _, i := range path {
		v = v.Field(i)
	}
	return v
}
