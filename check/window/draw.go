package window

import (
	"image/color"
	"math"
	"slices"
	"strconv"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/font"
	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/text"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"lineworthy/check/units"
)

// sans is the face of all letters in a picture.
var sans = font.Font{Typeface: "Liberation", Variant: "Sans", Size: 10}

// Greys and strokes: a picture has to live through a copier, so lines differ by dashes and points by shape.
var (
	black    = color.Gray{0}
	inside   = color.Gray{225}
	limit    = draw.LineStyle{Color: black, Width: 2.2}
	unknown  = draw.LineStyle{Color: black, Width: 2.2, Dashes: []vg.Length{2, 3}}
	vapour   = []draw.LineStyle{{Color: black, Width: 1, Dashes: []vg.Length{9, 3, 2, 3}}, {Color: black, Width: 1, Dashes: []vg.Length{5, 2}}, {Color: black, Width: 1, Dashes: []vg.Length{2, 2}}}
	helpLine = draw.LineStyle{Color: color.Gray{170}, Width: 0.4}
	shapes   = []draw.GlyphDrawer{draw.RingGlyph{}, draw.SquareGlyph{}, draw.TriangleGlyph{}, draw.CrossGlyph{}, draw.PlusGlyph{}}
)

// entry is one row of the key below the plot.
type entry struct {
	line  *draw.LineStyle
	glyph *draw.GlyphStyle
	text  string
}

// figure is the picture of one scope: the plot and its key.
type figure struct {
	s    Scope
	r    *Result
	p    *plot.Plot
	key  []entry
	xMin float64 // in the unit of the sheet
	xMax float64
	yMax float64
}

func newFigure(r *Result) *figure {
	f := &figure{s: r.Scopes[0], r: r, p: plot.New()}
	f.frame()
	if f.s.Empty == "" {
		f.region()
	}
	f.vapours()
	f.points()
	f.notes()
	return f
}

// x and y turn °C and kPa into the units of the sheet.
func (f *figure) x(c float64) float64 {
	v, _ := units.Celsius(c).In(units.Unit(f.r.Units.Temperature))
	return v
}

func (f *figure) y(kpa float64) float64 {
	v, _ := units.GaugePressure(kpa * 1e3).In(units.Unit(f.r.Units.Pressure))
	return v
}

func (f *figure) style(size vg.Length) text.Style {
	face := sans
	face.Size = size
	return text.Style{Color: black, Font: face, XAlign: draw.XLeft, YAlign: draw.YCenter, Handler: plot.DefaultTextHandler}
}

// frame sets the axes. A region far wider than the line's own temperatures is cut off, and the key says so.
func (f *figure) frame() {
	lo, hi := f.span()
	f.xMin, f.xMax, f.yMax = f.x(lo), f.x(hi), f.top()
	p := f.p
	p.Title.Text = "Allowed pressure and temperature: " + scopeName(f.r, f.s)
	p.Title.TextStyle.Font, p.Title.Padding = sans, vg.Points(6)
	p.Title.TextStyle.Font.Size = 13
	p.X.Label.Text, p.Y.Label.Text = "Temperature, "+f.r.Units.Temperature, "Pressure, "+f.r.Units.Pressure
	for _, a := range []*plot.Axis{&p.X, &p.Y} {
		a.Label.TextStyle.Font, a.Tick.Label.Font = sans, sans
		a.Label.TextStyle.Font.Size, a.Tick.Marker = 11, plot.TickerFunc(ticks)
	}
	p.X.Min, p.X.Max, p.Y.Min, p.Y.Max = f.xMin, f.xMax, 0, f.yMax
	grid := plotter.NewGrid()
	grid.Horizontal, grid.Vertical = helpLine, helpLine
	p.Add(grid)
}

// ticks labels about eight round values.
func ticks(lo, hi float64) (out []plot.Tick) {
	step := math.Pow(10, math.Floor(math.Log10((hi-lo)/4)))
	for _, m := range []float64{1, 2, 5, 10} {
		if (hi-lo)/(step*m) <= 9 {
			step *= m
			break
		}
	}
	for i := math.Ceil(lo / step); i*step <= hi+step/1e6; i++ {
		out = append(out, plot.Tick{Value: i * step, Label: strconv.FormatFloat(math.Round(i*step*1e6)/1e6+0, 'f', -1, 64)}) // +0: no minus before a zero
	}
	return out
}

func scopeName(r *Result, s Scope) string {
	name := r.Line + ", the whole line"
	if s.Kind != "line" {
		name = r.Line + ", " + s.Kind + " " + s.ID
	}
	if !s.Known {
		name += " (at most)"
	}
	return name
}

const widest = 250 // K of region that a picture shows whole

// span is the stretch of °C to show.
func (f *figure) span() (lo, hi float64) {
	cs := []float64{20}
	for _, p := range f.s.Points {
		cs = append(cs, p.C)
	}
	lo, hi = slices.Min(cs), slices.Max(cs)
	for _, b := range f.s.Breaks {
		lo, hi = min(lo, b.C), max(hi, b.C)
	}
	if hi-lo > widest {
		lo, hi = max(lo, slices.Min(cs)-60), min(hi, slices.Max(cs)+120)
	}
	margin := max(5, (hi-lo)*0.08)
	return lo - margin, hi + margin
}

// top is a round pressure above the region and the cases near it.
func (f *figure) top() float64 {
	high := 0.0
	for _, p := range f.s.Pieces {
		high = max(high, f.y(p.FromKPa), f.y(p.ToKPa))
	}
	for _, p := range f.s.Points {
		if y := f.y(p.KPa); high == 0 || y < 1.5*high {
			high = max(high, y)
		}
	}
	if high <= 0 {
		high = f.y(100)
	}
	step := math.Pow(10, math.Floor(math.Log10(high)))
	return math.Ceil(high*1.2/step*5) / 5 * step
}
