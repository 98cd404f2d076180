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
			if v.BoilsC != nil && f.x(*v.BoilsC) > f.xMax {
				f.key = append(f.key, entry{text: "The vapour pressure of " + v.Fluid + " is below that of the air here: it boils at " + v.BoilsAt + "."})
			}
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

// cell is a small field of the picture: the numbers of the points in it are written side by side.
type cell struct{ x, y int }

const across, upward = 40, 32 // cells

// points draws each case with a shape and a number; the key names them. What is off the scale stands at the top.
func (f *figure) points() {
	numbers := map[cell][]string{}
	var order []cell
	first := map[cell]float64{}
	for i, p := range f.s.Points {
		x, y := f.x(p.C), min(f.y(p.KPa), 0.975*f.yMax)
		st := f.shape(i, p)
		f.glyph(x, y, st)
		at := cell{int(across * (x - f.xMin) / (f.xMax - f.xMin)), int(upward * y / f.yMax)}
		if _, ok := numbers[at]; !ok {
			order, first[at] = append(order, at), x
		}
		numbers[at] = append(numbers[at], fmt.Sprint(i+1))
		f.key = append(f.key, entry{glyph: &st, text: fmt.Sprintf("%d  %s", i+1, f.caseText(p))})
	}
	for _, at := range order {
		f.label(first[at]+0.009*(f.xMax-f.xMin), (float64(at.y)+0.5)/upward*f.yMax, strings.Join(numbers[at], ", "), f.style(8))
	}
}

// shape is open for what is held and solid for the rest: a disc for the duty, a square for what is not held, and a
// pyramid for what lies above the picture.
func (f *figure) shape(i int, p Point) draw.GlyphStyle {
	st := draw.GlyphStyle{Color: black, Radius: 4, Shape: shapes[i%len(shapes)]}
	switch {
	case f.off(p):
		st.Shape, st.Radius = draw.PyramidGlyph{}, 5
	case p.Held == "no":
		st.Shape = draw.BoxGlyph{}
	case p.duty:
		st.Shape = draw.CircleGlyph{}
	}
	return st
}

func (f *figure) off(p Point) bool { return f.y(p.KPa) > f.yMax }

func (f *figure) glyph(x, y float64, st draw.GlyphStyle) {
	if s, err := plotter.NewScatter(plotter.XYs{{X: x, Y: y}}); err == nil {
		s.GlyphStyle = st
		f.p.Add(s)
	}
}

func (f *figure) caseText(p Point) string {
	text := p.Case + ", " + p.Text
	if f.s.Kind == "line" {
		text = p.Run + ": " + text
	}
	text += ": " + heldWords[p.Held]
	if p.Least != "" {
		text += "; least to spare " + p.Least
	}
	if p.Margin != "" {
		text += ", " + p.Margin
	}
	if f.off(p) {
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
		dc.FillText(f.style(9), vg.Point{X: 68, Y: y + 1.5}, e.text)
	}
}
