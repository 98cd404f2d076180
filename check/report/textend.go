package report

import (
	"fmt"
	"maps"
	"slices"
	"strconv"
	"strings"
)

func textJudged(p *page, v *Verdict) {
	p.section(bold, "WHAT WAS JUDGED:", judgedLine(v))
	if !p.full {
		p.text("", "The full report lists every rule.")
		return
	}
	p.lines("")
	p.table(judgedHead, judgedRows(v))
}

// judgedLine sums up what the rules were applied to, so that a short report is not taken for a thorough one.
func judgedLine(v *Verdict) string {
	var judged, beside, short, open int
	for _, j := range v.Judged {
		if len(j.Judged) > 0 {
			judged++
		}
		if len(j.CouldNot) > 0 {
			short++
		}
		if len(j.Judged)+len(j.CouldNot) == 0 {
			beside++
		}
		open += len(j.CouldNot)
	}
	if len(v.Judged) == 0 {
		return "nothing. No rule was applied."
	}
	text := number(judged, "rule") + " of " + strconv.Itoa(len(v.Judged)) + " judged " + number(things(v), "thing") + "."
	if beside > 0 {
		text += " " + number(beside, "rule") + " did not apply to this line."
	}
	if short > 0 {
		text += " " + number(short, "rule") + " could not judge " + number(open, "thing") + "."
	}
	return text
}

var judgedHead = []string{"Rule", "Looks for", "If found", "Judged", "Could not judge", "Did not apply to", "Findings"}

func judgedRows(v *Verdict) [][]string {
	var rows [][]string
	for _, j := range v.Judged {
		rows = append(rows, []string{j.Rule, j.Title, j.Severity, list(j.Judged), list(j.CouldNot), list(j.NotApplicable), strconv.Itoa(j.Found)})
	}
	return rows
}

func list(names []string) string { return strings.Join(names, ", ") }

var caseHead = []string{"Run", "From", "Case", "Pressure", "Temperature", "Cause"}

func caseRows(v *Verdict) [][]string {
	var rows [][]string
	for _, c := range v.Cases {
		rows = append(rows, []string{c.Run, c.From, c.Case, bound(c.Pressure), bound(c.Temperature), c.Cause})
	}
	return rows
}

func textCases(p *page, v *Verdict) {
	if len(v.Cases) == 0 {
		p.section(bold, "PRESSURE CASES:", "none was worked out.")
		return
	}
	p.section(bold, "PRESSURE CASES:", "what the line can see.")
	p.lines("")
	p.table(caseHead, caseRows(v))
}

var flipHead = []string{"Input", "Now", "Changes at", "Change", "The line is then"}

// textFlips is left out where nobody asked for it.
func textFlips(p *page, v *Verdict) {
	if len(v.Flips) == 0 {
		return
	}
	p.section(bold, "WHAT WOULD CHANGE THE ANSWER:", "each number alone, the rest as it is, nearest first.")
	p.lines("")
	var rows [][]string
	for _, f := range v.Flips {
		rows = append(rows, []string{f.Input, bound(f.Now), bound(f.At), fmt.Sprintf("%+.1f %%", float64(f.Permille)/10), string(f.Word)})
	}
	p.table(flipHead, rows)
}

func textCautions(p *page, v *Verdict) {
	p.section(bold, "CAUTION", "")
	for _, c := range cautions(v) {
		p.text("- ", c)
	}
}

func textDigests(p *page, v *Verdict) {
	p.section(bold, "RECORD", "")
	p.text("Made by ", v.Tool.Name+" "+v.Tool.Version+" with "+v.Tool.Engine+".")
	if p.full {
		for _, row := range digestRows(v.Digests, true) {
			p.lines("SHA-256 "+row[1], "        "+row[0])
		}
		return
	}
	p.text("SHA-256 ", digestLine(v.Digests))
}

// digestLine keeps each name with its sum when the line is broken.
func digestLine(d Digests) string {
	var out []string
	for _, row := range digestRows(d, false) {
		out = append(out, strings.ReplaceAll(row[0]+" "+row[1], " ", "\u00a0"))
	}
	return strings.Join(out, ", ")
}

// digestRows are what the verdict rests on, each with its sum: enough of it to compare by eye, or all of it.
func digestRows(d Digests, full bool) [][]string {
	rows := [][]string{{"sheet", d.Sheet}, {"worked-out values", d.Facts}, {"rules", d.Rules}}
	if d.Site != "" {
		rows = append(rows, []string{"site", d.Site})
	}
	for _, id := range slices.Sorted(maps.Keys(d.Catalog)) {
		rows = append(rows, []string{id, d.Catalog[id]})
	}
	for _, row := range rows {
		if !full {
			row[1] = row[1][:min(12, len(row[1]))]
		}
	}
	return rows
}
