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

// largest is how many pairs and unknown facts a line may have for its scratch to be kept: that of a huge one would be emptied again and
// again for small ones.
const largest = 2000

// giveBack hands the scratch to the next line. Lists start again at no length and what stands behind it is overwritten,
// never read; the pool lets go of it all at the next collections.
func (s *scratch) giveBack() {
	if len(s.paired)+len(s.why) > largest {
		return
	}
	clear(s.why)
	clear(s.values)
	clear(s.stages)
	clear(s.made)
	clear(s.spots)
	clear(s.paired)
	clear(s.told)
	s.resting, s.used, s.judgements, s.ranges = s.resting[:0], s.used[:0], s.judgements[:0], s.ranges[:0]
	s.heats, s.endRatings, s.vapoursOf, s.documents = s.heats[:0], s.endRatings[:0], s.vapoursOf[:0], s.documents[:0]
	s.itemSpace, s.pushSpace, s.balances = s.itemSpace[:0], s.pushSpace[:0], s.balances[:0]
	scratches.Put(s)
}

// cut copies what was gathered into a list of its own length, which is never nil.
func cut[T any](s []T) []T {
	return append(make([]T, 0, len(s)), s...)
}
