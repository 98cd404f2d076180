package rules

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

// TestRanges: hoses and vessels both have a rating, and the lint knows which one is read.
func TestRanges(t *testing.T) {
	both := strings.Replace(sound, "\t_by_medium(h)\n", "\t_by_medium(h)\n\tsome v in input.vessels\n\tv.rated_kpa > 0\n", 1)
	var texts []string
	for _, p := range problems([]Module{{soundPath, both}}) {
		texts = append(texts, p.Text)
	}
	assert.Equal(t, []string{"vessels.rated_kpa may be missing: put it in needs, or in absent if the rule decides what its absence means"}, texts)
	stated := strings.Replace(both, "absent: [hoses.readable]", "absent: [hoses.readable, vessels.rated_kpa]", 1)
	assert.Empty(t, problems([]Module{{soundPath, stated}}))
}
