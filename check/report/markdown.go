package report

import (
	"io"
	"strconv"
	"strings"
)

// Markdown writes the report for a record or a review page (CommonMark with pipe tables); the width is not used.
func Markdown(w io.Writer, v *Verdict, o Options) error {
	v, err := ready(v)
	if err != nil {
		return err
	}
	d := &markdown{full: o.Full}
	for _, part := range []func(*markdown, *Verdict){mdHead, mdFindings, mdOpen, mdJudged, mdEnd} {
		part(d, v)
	}
	_, err = io.WriteString(w, d.String())
	return err
}

func mdHead(d *markdown, v *Verdict) {
	d.WriteString("# " + capitals(v.Word) + ": " + escape(strings.TrimSpace(v.Line+" "+v.Title)) + "\n")
	d.para("**" + meaning[v.Word] + "** " + escape(v.Reason))
	d.para(escape(sheetLine(v)))
	if g := v.Governing; g != nil {
		d.table([]string{"Least to spare", "Have", "Need", "Margin"}, [][]string{{governing(g), g.Have, g.Need, g.Margin}})
	} else {
		d.para("Least to spare: not known for this line.")
	}
}

func mdFindings(d *markdown, v *Verdict) {
	d.para("## Findings")
	if len(v.Findings) == 0 {
		d.para("None.")
	}
	n := 0
	for _, s := range severities {
		for _, g := range groups(v, s) {
			n++
			mdGroup(d, n, g)
		}
	}
}

func mdGroup(d *markdown, n int, g group) {
	d.para("### " + strconv.Itoa(n) + ". " + strings.ToUpper(g.Severity) + ": " + escape(g.Title))
	var rows [][]string
	for _, f := range g.items {
		rows = append(rows, []string{place(f), f.Message, f.Have, f.Need, f.Margin, strings.TrimPrefix(sheetPlace(f.Position), "sheet\u00a0line\u00a0")})
	}
	d.table([]string{"Where", "What", "Have", "Need", "Margin", "Sheet line"}, rows)
	d.para("**Do:** " + escape(g.Action))
	var basis []string
	for _, b := range g.Basis {
		basis = append(basis, "Basis: "+cite(b))
	}
	d.bullets(append(basis, "Rule: "+g.Rule))
}

func mdOpen(d *markdown, v *Verdict) {
	d.para("## To confirm")
	if len(v.Confirm) == 0 {
		d.para("Nothing.")
	} else {
		d.table(confirmHead, confirmRows(v))
		d.para(escape(legend(v)))
	}
	d.para("## Could not be judged")
	gs := gaps(v)
	if len(gs) == 0 {
		d.para("Nothing was left open.")
		return
	}
	d.para(missingLine(len(gs)))
	var rows [][]string
	for _, m := range gs {
		rows = append(rows, []string{m.title(), m.ask, m.waiting(d.full)})
	}
	d.table([]string{"Not known", "Find out", "Waiting"}, rows)
}

func mdJudged(d *markdown, v *Verdict) {
	d.para("## What was judged")
	d.para(judgedLine(v))
	if d.full {
		d.table(judgedHead, judgedRows(v))
	}
	d.para("## Pressure cases")
	if len(v.Cases) == 0 {
		d.para("None was worked out.")
	}
	d.table(caseHead, caseRows(v))
}

func mdEnd(d *markdown, v *Verdict) {
	d.para("## Caution")
	d.bullets(cautions(v))
	d.para("## Record")
	d.para(escape("Made by " + v.Tool.Name + " " + v.Tool.Version + " with " + v.Tool.Engine + "."))
	d.table([]string{"SHA-256 of", "Sum"}, digestRows(v.Digests, d.full))
}
