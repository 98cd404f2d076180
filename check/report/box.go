package report

import "slices"

// box is one part or end with its marks below it, or above it for a branch.
type box struct {
	X, Y            int
	Kind, Symbol    string
	Vessel, Weakest bool
	Label           []caption
	Tag             *caption
	Marks           []mark
}

type caption struct {
	X, Y int
	Text string
}

// roomForMarks is how high the tag and the marks of a box stand.
func (d *drawn) roomForMarks() int {
	high := (len(d.marks) + perRow - 1) / perRow * markHigh
	if d.weakest {
		high += tagHigh
	}
	if high > 0 {
		high += 6
	}
	return high
}

func newBox(d *drawn, x, y, marksAt int) box {
	b := box{X: x, Y: y, Kind: d.kind, Symbol: symbol(d.kind), Vessel: d.vessel, Weakest: d.weakest, Marks: slices.Clone(d.marks)}
	lines := labelLines(d.name)
	for i, text := range lines {
		b.Label = append(b.Label, caption{Y: 50 - 13*(len(lines)-1-i), Text: text})
	}
	if d.weakest {
		b.Tag = &caption{x + boxWide/2, marksAt + 15, leastTag}
		marksAt += tagHigh
	}
	for i := range b.Marks {
		b.Marks[i].X, b.Marks[i].Y = x+i%perRow*markPitch, marksAt+2+i/perRow*markHigh
	}
	return b
}
