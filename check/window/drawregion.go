package window

import (
	"fmt"
	"math"
	"strings"

	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/text"
	"gonum.org/v1/plot/vg/draw"
)

// region fills the allowed side and draws its ends: solid where a limit stands, dotted where the knowledge ends.
func (f *figure) region() {
	var upper plotter.XYs
	for _, p := range f.s.Pieces {
		upper = append(upper, f.trace(p)...)
	}
	if len(upper) < 2 {
		return
	}
	first, last := upper[0], upper[len(upper)-1]
	fill, err := plotter.NewPolygon(append(append(plotter.XYs{{X: first.X}}, upper...), plotter.XY{X: last.X}))
	if err != nil {
		return
	}
	fill.Color, fill.LineStyle.Width = inside, 0
	f.p.Add(fill)
	f.line(upper, limit)
	f.side(f.s.Lowest, first, 1)
	f.side(f.s.Highest, last, -1)
	f.key = append(f.key, entry{line: &limit, text: "limit of the parts; grey: every part holds"})
	for _, e := range []*Edge{f.s.Lowest, f.s.Highest} {
		if e != nil && !e.Limit {
			f.key = append(f.key, entry{line: &unknown, text: "end of what is known: no rating beyond"})
			break
		}
	}
	f.weakest()
}

const hyperbolaSteps = 40

func (f *figure) trace(p Piece) (out plotter.XYs) {
	n := 1
	if p.Shape == "hyperbola" {
		n = hyperbolaSteps
	}
	for i := range n + 1 {
		c := p.FromC + (p.ToC-p.FromC)*float64(i)/float64(n)
		out = append(out, plotter.XY{X: f.x(c), Y: f.y(p.form.at(c) / 1e3)})
	}
	return out
}

func (f *figure) line(pts plotter.XYs, style draw.LineStyle) {
	if l, err := plotter.NewLine(pts); err == nil {
		l.LineStyle = style
		f.p.Add(l)
	}
}

// side draws one end of the region and writes along it what ends it.
func (f *figure) side(e *Edge, at plotter.XY, sign float64) {
	if e == nil || at.X < f.xMin || at.X > f.xMax {
		return
	}
	style, why := limit, "limit: "
	if !e.Limit {
		style, why = unknown, "known to here: "
	}
	f.line(plotter.XYs{{X: at.X}, at}, style)
	name := e.By[0]
	if n := len(e.By) - 1; n > 0 {
		name += fmt.Sprintf(" and %d more", n)
	}
	st := f.style(8)
	st.Rotation = math.Pi / 2
	f.label(at.X+sign*0.012*(f.xMax-f.xMin), 0.02*f.yMax, why+name, st)
}

func (f *figure) label(x, y float64, s string, st text.Style) {
	l, err := plotter.NewLabels(plotter.XYLabels{XYs: plotter.XYs{{X: x, Y: y}}, Labels: []string{s}})
	if err != nil {
		return
	}
	l.TextStyle[0] = st
	f.p.Add(l)
}

// weakest writes above each wide enough piece which part governs there.
func (f *figure) weakest() {
	st := f.style(9)
	st.XAlign, st.YAlign = draw.XCenter, draw.YBottom
	last := ""
	for _, p := range f.s.Pieces {
		from, to := max(f.x(p.FromC), f.xMin), min(f.x(p.ToC), f.xMax)
		if to-from < 0.12*(f.xMax-f.xMin) || len(p.Weakest) == 0 {
			continue
		}
		name := p.Weakest[0]
		if n := len(p.Weakest) - 1; n > 0 {
			name += fmt.Sprintf(" and %d more", n)
		}
		if name == last {
			continue
		}
		last = name
		mid := (p.FromC + p.ToC) / 2
		y := max(p.form.at(mid), p.form.at(p.ToC), p.form.at(p.FromC))
		f.label((from+to)/2, f.y(y/1e3)+0.012*f.yMax, "weakest: "+strings.TrimSpace(name), st)
	}
}
