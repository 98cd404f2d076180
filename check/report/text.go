package report

import (
	"io"
	"strings"
)

// Text writes the report for a terminal or a printer: words carry everything, colour only repeats it.
func Text(w io.Writer, v *Verdict, o Options) error {
	v, err := ready(v)
	if err != nil {
		return err
	}
	p := newPage(o)
	for _, part := range []func(*page, *Verdict){
		textHead, textGoverning, textFindings, textConfirm, textMissing, textJudged, textCases, textFlips, textCautions, textDigests,
	} {
		part(p, v)
	}
	_, err = io.WriteString(w, p.String())
	return err
}

func textHead(p *page, v *Verdict) {
	rule := strings.Repeat("=", p.width)
	p.lines(rule)
	p.headed(wordStyle[v.Word], capitals(v.Word)+"  ", v.Line+"\u00a0 "+v.Title)
	p.lines(rule)
	p.text("", sheetLine(v))
	p.lines("")
	p.text("", meaning[v.Word]+" "+v.Reason)
}

// sheetLine is what was judged, for which day and under which law.
func sheetLine(v *Verdict) string {
	line := "Sheet " + v.Sheet + ", judged for " + v.AsOf
	if len(v.Regimes) > 0 {
		line += " under " + strings.Join(v.Regimes, ", ")
	}
	return line + "."
}

func textGoverning(p *page, v *Verdict) {
	p.lines("")
	g := v.Governing
	if g == nil {
		p.text("Least to spare: ", "not known for this line.")
		return
	}
	p.text("Least to spare: ", governing(g))
	p.text("                ", spaced(measures(g.Have, g.Need, g.Margin)))
}

// governing names the part, what of it gives way and the case that takes it there.
func governing(g *Governing) string {
	text := g.Part
	if g.What != "" {
		text += ", " + g.What
	}
	if g.Case != "" {
		text += ", in the case " + g.Case
	}
	return text
}

// measures are the cells for have, need and margin; one that is not known is empty.
func measures(have, need, margin string) []string {
	cells := []string{"have\u00a0", "need\u00a0", "margin\u00a0"}
	for i, value := range []string{have, need, margin} {
		if value == "" {
			cells[i] = ""
		} else {
			cells[i] += bound(value)
		}
	}
	return cells
}

// bound keeps a number and its unit on one line, unless it is not that but a sentence.
func bound(s string) string {
	if runes(s) > 24 {
		return s
	}
	return strings.ReplaceAll(s, " ", "\u00a0")
}
