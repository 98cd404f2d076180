package report

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
)

func textFindings(p *page, v *Verdict) {
	if len(v.Findings) == 0 {
		p.section(bold, "FINDINGS:", "none.")
	}
	n := 0
	for _, s := range severities {
		gs := groups(v, s)
		if len(gs) == 0 {
			continue
		}
		p.section(severityStyle[s], strings.ToUpper(s)+":", number(count(v, s), "finding")+". "+order[s])
		for _, g := range gs {
			n++
			p.lines("")
			textGroup(p, n, g)
		}
	}
}

func textGroup(p *page, n int, g group) {
	label := fmt.Sprintf("%2d. ", n)
	p.text(label, g.Title)
	cells := itemCells(g.items)
	for i, f := range g.items {
		if i == 0 || f.Message != g.items[i-1].Message {
			p.text("    - ", f.Message)
		}
		if !onlyPlace(cells[i]) || !mentions(f.Message, place(f)) {
			p.lines(aligned("      ", cells, i, p.width)...)
		}
	}
	p.text("    Do:    ", g.Action)
	label = "    Basis: "
	for _, b := range g.Basis {
		p.text(label, cite(b))
		label = "           "
	}
	p.text("    Rule:  ", g.Rule)
}

// itemCells are have, need, margin, place and sheet line of each finding of a group.
func itemCells(items []Finding) [][]string {
	var out [][]string
	for _, f := range items {
		cells := append(measures(f.Have, f.Need, f.Margin), place(f), sheetPlace(f.Position))
		out = append(out, cells)
	}
	return out
}

// onlyPlace is whether a row of itemCells has nothing but the place to tell.
func onlyPlace(cells []string) bool {
	return cells[0]+cells[1]+cells[2]+cells[4] == ""
}

func sheetPlace(at *Position) string {
	if at == nil {
		return ""
	}
	return "sheet\u00a0line\u00a0" + strconv.Itoa(at.Line)
}

// aligned is row i with its cells below those of the other rows, or simply one after the other when too wide.
func aligned(indent string, rows [][]string, i, width int) []string {
	_, rows = used(make([]string, len(rows[i])), rows)
	line := indent
	for c, cell := range rows[i] {
		widest := 0
		for _, r := range rows {
			widest = max(widest, runes(r[c]))
		}
		line += pad(cell, widest+gap+1)
	}
	switch line = strings.TrimRight(line, " "); {
	case line == "":
		return nil
	case runes(line) <= width:
		return []string{line}
	}
	return wrap(indent, indent, spaced(rows[i]), width)
}

// spaced sets the filled cells one after the other.
func spaced(cells []string) string {
	return strings.Join(slices.DeleteFunc(slices.Clone(cells), func(s string) bool { return s == "" }), ", ")
}
