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
	got := s.shared()
	assert.Subset(t, got, []int32{7, 9, all, all + 1, all + 3})
	assert.NotContains(t, got, int32(all+2))
	assert.Less(t, len(got), 20, "chance adds hardly any")
	assert.IsIncreasing(t, got)
}
