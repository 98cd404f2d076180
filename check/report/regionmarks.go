package report

import (
	"fmt"
	"strconv"
	"strings"
)

// curves draws vapour pressures as far as the field goes.
func (p *regionPlot) curves(r *Region) {
	var names []string
	for _, c := range r.Vapours {
		var in []Spot
		for _, s := range c.Spots {
			if x, y := p.inX(s.CK), p.inY(s.KPa); x >= p.left && x <= p.right && y >= 0 && y <= p.high {
				in = append(in, s)
			}
		}
		if len(in) > 1 {
			p.Vapours, names = append(p.Vapours, p.path(in)), append(names, c.Fluid)
		}
	}
	p.Names = strings.Join(names, ", ")
}

// marks sets a number beside each case; those that stand at one place share it.
func (p *regionPlot) marks(r *Region) {
	for i, c := range r.Cases {
		m := plotMark{X: p.x(c.At.CK), Y: p.y(c.At.KPa), Number: strconv.Itoa(i + 1), Held: c.Held, Off: p.inY(c.At.KPa) > p.high}
		near := -1
		for j, o := range p.Marks {
			if abs(o.X-m.X) < cellsAside && abs(o.Y-m.Y) < cellsAside/2 && o.Held == m.Held && o.Off == m.Off {
				near = j
			}
		}
		if near < 0 {
			p.Marks = append(p.Marks, m)
			continue
		}
		p.Marks[near].Number += ", " + m.Number
	}
}

func abs(n int) int { return max(n, -n) }

func (p *regionPlot) describe(r *Region) string {
	var b strings.Builder
	b.WriteString(r.Span)
	for _, x := range r.Breaks {
		fmt.Fprintf(&b, " At %s up to %s.", x.Temperature, x.Allowed)
	}
	for i, c := range r.Cases {
		fmt.Fprintf(&b, " Case %d, %s, %s: %s.", i+1, c.Case, c.Text, heldWords[c.Held])
	}
	return b.String()
}

var heldWords = map[string]string{"yes": "held", "no": "NOT HELD", "not-known": "not known"}

func breakTable(r *Region) *table {
	var rows [][]string
	for _, x := range r.Breaks {
		rows = append(rows, []string{x.Temperature, x.Allowed, x.Above, x.Weakest})
	}
	return newTable("region-breaks", "Where the upper side turns", []string{"Temperature", "Allowed up to", "Just above", "Weakest from here on"}, rows)
}

func regionCases(r *Region) *table {
	var rows [][]string
	for i, c := range r.Cases {
		rows = append(rows, []string{strconv.Itoa(i + 1), c.Run, c.Case, c.Text, heldWords[c.Held], c.Least, c.Spare})
	}
	return newTable("region-cases", "The numbered cases", []string{"No.", "Run", "Case", "Reaches", "Held", "Least to spare", "Margin"}, rows)
}
