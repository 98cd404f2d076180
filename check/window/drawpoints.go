package window

import (
	"fmt"
	"slices"
	"strings"

	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"
)

// vapours draws the vapour pressures of the liquids here, as far as the picture goes.
func (f *figure) vapours() {
	n := 0
	for _, v := range f.r.Vapours {
		if f.s.Run != "" && !slices.Contains(v.Runs, f.s.Run) || v.at == nil {
			continue
		}
		pts := f.vapourTrace(v)
		if len(pts) < 2 {
			continue
		}
		style := vapour[n%len(vapour)]
		n++
		f.line(pts, style)
		f.key = append(f.key, entry{line: &style, text: "vapour pressure of " + v.Fluid})
	}
}

const traceSteps = 200

func (f *figure) vapourTrace(v Vapour) (out plotter.XYs) {
	lo, hi := f.span()
	lo, hi = max(lo, v.FromC), min(hi, v.ToC)
	for i := range traceSteps + 1 {
		c := lo + (hi-lo)*float64(i)/traceSteps
		pa, ok := v.at(c)
		y := f.y(pa / 1e3)
		if ok && y >= 0 && y <= f.yMax {
			out = append(out, plotter.XY{X: f.x(c), Y: y})
		}
	}
	return out
}

// points draws each case with a shape and a number; the key names them. What is off the scale stands at the top.
func (f *figure) points() {
	at := map[[2]int][]string{}
	var order [][2]int
	for i, p := range f.s.Points {
		x, y := f.x(p.C), f.y(p.KPa)
		off := y > f.yMax
		st := draw.GlyphStyle{Color: black, Radius: 4, Shape: shapes[i%len(shapes)]}
		if p.duty {
			st.Shape = draw.CircleGlyph{}
		}
		if off {
			y, st.Shape = 0.975*f.yMax, draw.PyramidGlyph{}
		}
		f.glyph(x, y, st)
		cell := [2]int{int(40 * (x - f.xMin) / (f.xMax - f.xMin)), int(32 * y / f.yMax)}
		if _, ok := at[cell]; !ok {
			order = append(order, cell)
		}
		at[cell] = append(at[cell], fmt.Sprint(i+1))
		f.key = append(f.key, entry{glyph: &st, text: fmt.Sprintf("%d  %s", i+1, f.caseText(p, off))})
	}
	for _, cell := range order {
		f.label(f.xMin+(float64(cell[0])+0.5)/40*(f.xMax-f.xMin)+0.018*(f.xMax-f.xMin), (float64(cell[1])+0.5)/32*f.yMax, strings.Join(at[cell], ", "), f.style(8))
	}
}

func (f *figure) glyph(x, y float64, st draw.GlyphStyle) {
	if s, err := plotter.NewScatter(plotter.XYs{{X: x, Y: y}}); err == nil {
		s.GlyphStyle = st
		f.p.Add(s)
	}
}

func (f *figure) caseText(p Point, off bool) string {
	text := p.Case + ", " + p.Text
	if f.s.Kind == "line" {
		text = p.Run + ": " + text
	}
	text += ": " + heldWords[p.Held]
	if p.Least != "" {
		text += " by " + p.Least
	}
	if p.Margin != "" {
		text += ", margin " + p.Margin
	}
	if off {
		text += " (off the scale)"
	}
	return text
}

// notes are what a picture cannot show.
func (f *figure) notes() {
	if f.s.Empty != "" {
		f.key = append(f.key, entry{text: "No region: " + f.s.Empty})
	}
	if !f.s.Known {
		f.key = append(f.key, entry{text: fmt.Sprintf("Not complete: %d ratings or limits are not known, so the region can only be smaller.", len(f.s.Unknown))})
	}
	if f.s.Lowest != nil && f.x(f.s.Lowest.C) < f.xMin || f.s.Highest != nil && f.x(f.s.Highest.C) > f.xMax {
		f.key = append(f.key, entry{text: "The region goes on: " + strings.TrimPrefix(range1(f.s), "From ")})
	}
	f.key = append(f.key, entry{text: "A screening aid: the maker's data, local codes and licensed practice decide."})
}

const (
	pictureWidth = 26 * vg.Centimeter
	plotHeight   = 14 * vg.Centimeter
	keyRow       = 15 // points
)

func (f *figure) height() vg.Length { return plotHeight + vg.Length(len(f.key)+1)*keyRow }

// paint draws plot and key on a canvas.
func (f *figure) paint(c vg.CanvasSizer) {
	dc := draw.New(c)
	foot := vg.Length(len(f.key)+1) * keyRow
	f.p.Draw(draw.Crop(dc, 10, -20, foot, -8))
	for i, e := range f.key {
		y := foot - vg.Length(i+1)*keyRow
		if e.line != nil {
			dc.StrokeLine2(*e.line, 24, y, 58, y)
		}
		if e.glyph != nil {
			dc.DrawGlyph(*e.glyph, vg.Point{X: 41, Y: y})
		}
		dc.FillText(f.style(9), vg.Point{X: 68, Y: y}, e.text)
	}
}
