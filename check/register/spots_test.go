package register

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestSpotsFindWhatIsShared(t *testing.T) {
	s := &spots{}
	const all = 1000
	for n := range int32(all) {
		s.add(hose("p", fmt.Sprint("L", n), "2026-01-01", fmt.Sprint("T", n), nil), n)
	}
	s.add(hose("p", "L7", "2026-01-01", "", nil), all)
	s.add(hose("p", "M", "2026-01-01", "t9", nil), all+1)
	s.add(&Entry{Path: "p", Line: "L3", Faults: []string{"x"}}, all+2)
	twice := hose("p", "N", "2026-01-01", "U", nil)
	twice.Hoses = append(twice.Hoses, Hose{Tag: "u"})
	s.add(twice, all+3)
	got := s.shared(ofLine, ofHose)
	assert.Subset(t, got, []int32{7, 9, all, all + 1, all + 3})
	assert.NotContains(t, got, int32(all+2))
	assert.Less(t, len(got), 20, "chance adds hardly any")
	assert.IsIncreasing(t, got)
}

// TestMetTwice tells lines from hoses, and one place from several.
func TestMetTwice(t *testing.T) {
	s := &spots{}
	s.add(hose("p", "A", "2026-01-01", "T", nil), 0)
	s.add(hose("q", "T", "2026-01-01", "t", nil), 1)
	s.add(hose("r", "A", "2026-02-01", "U", nil), 2)
	assert.Equal(t, []bool{true, false, true, false}, []bool{s.met(ofHose, alike("T")), s.met(ofLine, alike("T")), s.met(ofLine, alike("A")), s.met(ofHose, alike("U"))})
	assert.Equal(t, []int32{0, 2}, s.shared(ofLine))
	assert.Equal(t, []int32{0, 1}, s.shared(ofHose))
	s.add(hose("s", "B", "2026-02-01", "U", nil), 3)
	assert.True(t, s.met(ofHose, alike("U")), "what came since")
}
