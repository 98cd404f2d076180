package compare

import (
	"slices"
	"strconv"
	"strings"

	"lineworthy/check/report"
)

func textFindings(p *report.Paper, r *Review, full bool) {
	n := map[string]int{}
	for _, m := range r.Findings {
		n[m.Way]++
	}
	var said []string
	for _, w := range ways {
		if n[w] > 0 {
			said = append(said, strconv.Itoa(n[w])+" "+plural(w, n[w]))
		}
	}
	if len(said) == 0 {
		p.Section("Findings", "none before, none now.")
		return
	}
	p.Section("Findings", strings.Join(said, ", ")+".")
	for _, g := range together(r.Findings) {
		if g[0].Way == Stays && g[0].Severity == "note" && !full {
			continue
		}
		p.Blank()
		textMoves(p, g)
	}
}

// together gathers findings of one rule that go the same way.
func together(all []Move) [][]Move {
	var out [][]Move
	for _, m := range all {
		if n := len(out); n > 0 && out[n-1][0].Way == m.Way && out[n-1][0].Rule == m.Rule && out[n-1][0].Severity == m.Severity {
			out[n-1] = append(out[n-1], m)
			continue
		}
		out = append(out, []Move{m})
	}
	return out
}

// plural turns "clears" into "clear" for more than one.
func plural(way string, n int) string {
	switch {
	case n == 1:
		return way
	case way == Open:
		return "cannot be judged any more"
	}
	return strings.TrimSuffix(way, "s")
}

func textMoves(p *report.Paper, g []Move) {
	severity := g[0].Severity
	if g[0].Was != "" {
		severity = g[0].Was + ", now " + severity
	}
	p.Para(strings.ToUpper(g[0].Way)+" ("+severity+"): ", g[0].Title+" ("+g[0].Rule+").")
	var rows [][]string
	for _, m := range g {
		if m.Way != Clears && m.Way != Stays {
			p.Bullets([]string{m.Message})
		}
		rows = append(rows, []string{m.Place, m.Before.says(), m.After.says(), m.Why})
	}
	if bareRows(rows) {
		p.Para("At: ", places(rows))
		return
	}
	p.Table([]string{"Where", "Before", "After", "Why"}, rows)
}

// bareRows is whether the rows have nothing but the place to tell.
func bareRows(rows [][]string) bool {
	return !slices.ContainsFunc(rows, func(r []string) bool { return r[1]+r[2]+r[3] != "" })
}

func places(rows [][]string) string {
	var out []string
	for _, r := range rows {
		out = append(out, r[0])
	}
	return strings.Join(out, "; ")
}

func (r *Reading) says() string {
	if r == nil {
		return ""
	}
	return r.Margin + " (have " + r.Have + ", need " + r.Need + ")"
}

func textConfirm(p *report.Paper, r *Review, _ bool) {
	textShift(p, r.Confirm, "Values to confirm", "appear", "clear")
}

func textMissing(p *report.Paper, r *Review, _ bool) {
	textShift(p, r.Missing, "Facts that are missing", "are missing now and were not", "are known now")
}

func textShift(p *report.Paper, s Shift, head, come, gone string) {
	if len(s.Appear)+len(s.Clear) == 0 {
		p.Section(head, "as before.")
		return
	}
	p.Section(head, strconv.Itoa(len(s.Appear))+" "+come+", "+strconv.Itoa(len(s.Clear))+" "+gone+".")
	var items []string
	for _, x := range s.Appear {
		items = append(items, "new: "+x)
	}
	for _, x := range s.Clear {
		items = append(items, "gone: "+x)
	}
	p.Bullets(items)
}

func textMargins(p *report.Paper, r *Review, full bool) {
	p.Section("Least to spare", "")
	p.Para("Before: ", least(r.Old.Governing))
	p.Para("After:  ", least(r.New.Governing))
	switch {
	case len(r.Margins) == 0:
		return
	case !full:
		p.Para("", count(len(r.Margins), "margin differs", "margins differ")+"; the full report lists each.")
		return
	}
	var rows [][]string
	for _, m := range r.Margins {
		rows = append(rows, []string{m.What, m.Case, m.Before.margin(), m.After.margin()})
	}
	p.Table([]string{"What", "Case", "Margin before", "Margin after"}, rows)
}

func (r *Reading) margin() string {
	if r == nil {
		return "not known or not there"
	}
	return r.Margin + " (have " + r.Have + ", need " + r.Need + ")"
}

func least(g *report.Governing) string {
	if g == nil {
		return "not known."
	}
	return g.Part + ", " + g.What + ", in the case " + g.Case + ": have " + g.Have + ", need " + g.Need + ", margin " + g.Margin
}

func textRecord(p *report.Paper, r *Review, _ bool) {
	if r.Kind == nil {
		return
	}
	if len(r.Record) == 0 {
		p.Section("Change record", "29 CFR 1910.119(l) asks for none for this; keep the comparison with the papers of the line.")
		return
	}
	p.Section("Change record", "what it must hold where the site's procedure or 29 CFR 1910.119 calls for one.")
	var rows [][]string
	for _, e := range r.Record {
		rows = append(rows, []string{e.Item, e.Holds, e.Basis.Clause})
	}
	p.Table([]string{"Item", "What the sheets say of it", lawDocument}, rows)
}
