package report

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"lineworthy/check/units"
)

// regionPlot is the region as the page draws it, on a field of 720 by 330 units.
type regionPlot struct {
	Empty, Span, Note, Desc string
	Inside, Upper           string
	Vapours                 []string // paths
	Names                   string   // of the vapours
	Marks                   []plotMark
	Across, Upward          []tick
	Temperature, Pressure   string
	Breaks, Cases           *table
	left, right, high       float64 // of the axes, in the units of the sheet
	u                       Units
}

// plotMark is one case: a shape that tells held from not held without colour, and its number in the table.
type plotMark struct {
	X, Y         int
	Number, Held string
	Off          bool
}

type tick struct {
	At   int
	Text string
}

const (
	plotLeft, plotRight  = 64, 704
	plotTop, plotBottom  = 12, 280
	roomAbove            = 1.2
	mostOver, cellsAside = 1.5, 24
)

func newRegionPlot(v *Verdict) *regionPlot {
	r := v.Region
	if r == nil {
		return nil
	}
	p := &regionPlot{Empty: r.Empty, Span: r.Span, Temperature: v.Units.Temperature, Pressure: v.Units.Pressure, u: v.Units}
	if !r.Complete {
		p.Note = "Not every rating or limit is known: the region can only be smaller."
	}
	p.Breaks, p.Cases = breakTable(r), regionCases(r)
	if !p.scale(r) {
		return p
	}
	p.Upper = p.path(r.Upper)
	if n := len(r.Upper); n > 1 {
		p.Inside = fmt.Sprintf("%s L%d %d L%d %d Z", p.Upper, p.x(r.Upper[n-1].CK), plotBottom, p.x(r.Upper[0].CK), plotBottom)
	}
	p.curves(r)
	p.marks(r)
	p.Desc = p.describe(r)
	return p
}

func (p *regionPlot) inX(ck int64) float64 {
	x, _ := units.Temperature(float64(ck) / 100).In(units.Unit(p.u.Temperature))
	return x
}

func (p *regionPlot) inY(kpa int64) float64 {
	y, _ := units.GaugePressure(kpa * 1000).In(units.Unit(p.u.Pressure))
	return y
}

// scale takes in the region and every case that is not far above it.
func (p *regionPlot) scale(r *Region) bool {
	p.left, p.right = math.Inf(1), math.Inf(-1)
	see := func(s Spot, most float64) {
		p.left, p.right = min(p.left, p.inX(s.CK)), max(p.right, p.inX(s.CK))
		if y := p.inY(s.KPa); p.high == 0 || y <= most*p.high {
			p.high = max(p.high, y)
		}
	}
	for _, s := range r.Upper {
		see(s, math.Inf(1))
	}
	for _, c := range r.Cases {
		see(c.At, mostOver)
	}
	if math.IsInf(p.left, 0) || p.high <= 0 {
		return false
	}
	aside := max(5, 0.08*(p.right-p.left))
	p.left, p.right, p.high = p.left-aside, p.right+aside, p.high*roomAbove
	for _, t := range rounds(p.left, p.right) {
		p.Across = append(p.Across, tick{p.across(t), strconv.FormatFloat(t, 'f', -1, 64)})
	}
	for _, t := range rounds(0, p.high) {
		p.Upward = append(p.Upward, tick{p.upward(t), strconv.FormatFloat(t, 'f', -1, 64)})
	}
	return true
}

// rounds are about six round values between two.
func rounds(lo, hi float64) (out []float64) {
	step := math.Pow(10, math.Floor(math.Log10((hi-lo)/4)))
	for _, m := range []float64{1, 2, 5, 10} {
		if (hi-lo)/(step*m) <= 7 {
			step *= m
			break
		}
	}
	for i := math.Ceil(lo / step); i*step <= hi; i++ {
		out = append(out, math.Round(i*step*1e6)/1e6+0) // +0: no minus before a zero
	}
	return out
}

func (p *regionPlot) across(x float64) int {
	return plotLeft + int(math.Round((x-p.left)/(p.right-p.left)*(plotRight-plotLeft)))
}

func (p *regionPlot) upward(y float64) int {
	return plotBottom - int(math.Round(min(y, p.high)/p.high*(plotBottom-plotTop)))
}

func (p *regionPlot) x(ck int64) int  { return p.across(p.inX(ck)) }
func (p *regionPlot) y(kpa int64) int { return p.upward(p.inY(kpa)) }

func (p *regionPlot) path(spots []Spot) string {
	var b strings.Builder
	for i, s := range spots {
		b.WriteString(map[bool]string{true: "M", false: " L"}[i == 0])
		fmt.Fprintf(&b, "%d %d", p.x(s.CK), p.y(s.KPa))
	}
	return b.String()
}
