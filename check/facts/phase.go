package facts

import (
	"regexp"

	"lineworthy/check/resolve"
)

// phaseMark is a label that says which of the two comes out of a point.
var phaseMark = regexp.MustCompile(`(?i)\b(liquid|vapou?r)\b`)

// phaseMarked says whether each point of the vessel is marked liquid or vapour; one that is not decides, and one that the
// sheet says nothing of leaves it open.
func phaseMarked(v *resolve.Vessel) Bool {
	out := Yes(true)
	for _, n := range v.Sheet.Points {
		m := n.V.Marked
		switch {
		case m.Set && !phaseMark.MatchString(m.V):
			return Yes(false)
		case !m.Set:
			out = Bool{}
		}
	}
	return out
}
