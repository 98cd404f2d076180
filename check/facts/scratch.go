package facts

import (
	"sync"

	"lineworthy/check/resolve"
)

// scratch is what a builder needs only while it works. The next line takes it again, emptied: most of the work of a
// usual line was once to make and to collect it.
type scratch struct {
	why        map[[2]string]Unknown // by subject and fact
	values     map[string]int        // where a value stands in resting
	resting    []resting
	used       []use
	order      []int
	text       []byte // for join
	stages     map[*resolve.Run]*passage
	made       map[*resolve.Part][]item
	spots      map[spot][]push
	paired     map[string]bool // ids of pairs filed
	judgements []judgement
	contacts   []contact // of one run
	heats      []heat
	endRatings []endRating
	itemSpace  []item // of all parts
	// The lists that are long in any line are gathered here and then cut to their length.
	capacitySpace []Capacity
	limitSpace    []Limit
	pairSpace     []Pair
	pushSpace     []push
	balances      []balance
	vapoursOf     []vapourOf
	documents     []document
	ranges        []materialRange
	told          map[string]bool // cases of one run
}

func newScratch() *scratch {
	return &scratch{
		why: map[[2]string]Unknown{}, values: map[string]int{}, stages: map[*resolve.Run]*passage{},
		told: map[string]bool{}, made: map[*resolve.Part][]item{}, spots: map[spot][]push{}, paired: map[string]bool{},
	}
}

var scratches = sync.Pool{New: func() any { return newScratch() }}

// largest is how many pairs a line may have for its scratch to be kept: that of a huge one would be emptied again and
// again for small ones.
const largest = 2000

// giveBack empties the scratch, so that nothing of the line stays, and hands it to the next line.
func (s *scratch) giveBack() {
	if len(s.paired) > largest {
		return
	}
	clear(s.why)
	clear(s.values)
	clear(s.stages)
	clear(s.made)
	clear(s.spots)
	clear(s.paired)
	clear(s.told)
	s.resting, s.used, s.judgements, s.contacts = emptied(s.resting), emptied(s.used), emptied(s.judgements), emptied(s.contacts[:cap(s.contacts)]) // an earlier run may have had more
	s.heats, s.endRatings = emptied(s.heats), emptied(s.endRatings)
	s.itemSpace, s.capacitySpace, s.limitSpace, s.pairSpace = emptied(s.itemSpace), emptied(s.capacitySpace), emptied(s.limitSpace), emptied(s.pairSpace)
	s.pushSpace, s.balances = emptied(s.pushSpace), emptied(s.balances)
	s.vapoursOf, s.documents = emptied(s.vapoursOf), emptied(s.documents)
	s.ranges = emptied(s.ranges)
	scratches.Put(s)
}

// emptied forgets what a list holds and keeps its space. What lies beyond its length was forgotten before.
func emptied[T any](s []T) []T {
	clear(s)
	return s[:0]
}

// cut copies what was gathered into a list of its own length, which is never nil.
func cut[T any](s []T) []T {
	return append(make([]T, 0, len(s)), s...)
}
