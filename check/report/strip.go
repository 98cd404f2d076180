package report

import (
	"fmt"
	"slices"
	"strings"
)

// strip is one row of boxes. Its measures are units of the drawing, 720 wide.
type strip struct {
	ID, Title, Desc string
	Height          int
	Pipes, Arrows   []string
	Boxes           []box
}

const (
	boxWide, boxHigh   = 98, 68
	pitch, firstColumn = 118, 16 // a box and the pipe to the next one
	stripWide          = 720
	perRow             = 4 // marks side by side below a box
	markPitch          = 27
	markHigh           = 22
	tagHigh            = 20
	connector          = 18 // pipe between a branch and what is below it
	leastTag           = "least to spare"
)

func strips(d drawing, all []column) []strip {
	var out []strip
	rows := (len(all) + perStrip - 1) / perStrip
	parts := slices.Collect(slices.Chunk(all, (len(all)+rows-1)/rows)) // rows of about the same length
	for i, columns := range parts {
		s := strip{ID: fmt.Sprintf("%s-%d", d.ID, i+1), Title: "Run " + d.Name}
		if len(parts) > 1 {
			s.Title += fmt.Sprintf(", row %d of %d", i+1, len(parts))
		}
		s.Desc = described(columns)
		s.draw(columns, i > 0, i+1 < len(parts))
		out = append(out, s)
	}
	return out
}

// draw sets the boxes so that the pipe is level; before and after say whether it goes on in another strip.
func (s *strip) draw(columns []column, before, after bool) {
	level, below := 8, 8
	for _, c := range columns {
		top := 8
		for _, b := range c.above {
			top += b.roomForMarks() + boxHigh + connector
		}
		level = max(level, top)
		if c.on != nil {
			below = max(below, c.on.roomForMarks()+8)
		}
	}
	s.Height = level + boxHigh + below
	for i, c := range columns {
		s.column(c, firstColumn+i*pitch, level)
	}
	s.pipe(len(columns), level+boxHigh/2, columns, before, after)
}

func (s *strip) column(c column, x, level int) {
	y := level
	for _, b := range c.above {
		foot := y
		if y == level && c.on == nil {
			foot += boxHigh / 2
		}
		y -= connector
		s.Pipes = append(s.Pipes, fmt.Sprintf("M%d %dV%d", x+boxWide/2, y, foot))
		y -= boxHigh
		s.Boxes = append(s.Boxes, newBox(b, x, y, y-b.roomForMarks()))
		y -= b.roomForMarks()
	}
	if c.on != nil {
		s.Boxes = append(s.Boxes, newBox(c.on, x, level, level+boxHigh+4))
	}
}

// pipe joins the columns from left to right; a tail says that the run goes on.
func (s *strip) pipe(n, y int, columns []column, before, after bool) {
	for i := range n {
		x := firstColumn + i*pitch
		if i > 0 || before {
			from := max(0, x-pitch+boxWide)
			s.Pipes = append(s.Pipes, fmt.Sprintf("M%d %dH%d", from, y, x-10))
			s.Arrows = append(s.Arrows, fmt.Sprintf("M%d %dL%d %dL%d %dZ", x-14, y-5, x-5, y, x-14, y+5))
		}
		if columns[i].on == nil {
			s.Pipes = append(s.Pipes, fmt.Sprintf("M%d %dH%d", x-7, y, x+boxWide))
		}
	}
	if after {
		x := firstColumn + (n-1)*pitch + boxWide
		s.Pipes = append(s.Pipes, fmt.Sprintf("M%d %dH%d", x, y, stripWide-9))
		s.Arrows = append(s.Arrows, fmt.Sprintf("M%d %dL%d %dL%d %dZ", stripWide-11, y-5, stripWide-1, y, stripWide-11, y+5))
	}
}

// described is a strip in words, for those who do not see it.
func described(columns []column) string {
	var said []string
	for _, c := range columns {
		for _, d := range append([]*drawn{c.on}, c.above...) {
			if d == nil {
				continue
			}
			s := newStep(d)
			said = append(said, strings.TrimSuffix(strings.Join(append([]string{s.Name}, s.Said...), ", ")+": "+s.Marks, ": "))
		}
	}
	return strings.Join(said, "; ")
}
