package explain

import (
	"fmt"
	"strings"

	"lineworthy/check/report"
)

// Text writes the answer for people.
func (a *Answer) Text(o report.Options, asMarkdown bool) string {
	p := report.NewPaper(o, asMarkdown)
	p.Title(a.Word, strings.ToUpper(a.Kind)+" "+a.Name, a.Says)
	if a.Kind == "finding" {
		for _, c := range a.Chains {
			c.text(p)
		}
	} else {
		a.textThing(p)
	}
	p.Section("Caution", "")
	p.Bullets(a.Cautions)
	return p.String()
}

func (c Chain) text(p *report.Paper) {
	p.Section(c.Subject, c.Message+".")
	p.Section("1 on the sheet", orNone(len(c.Sheet), "no value of the sheet by itself; the finding comes from what is absent or from the line as a whole."))
	p.Table([]string{"Key", "Value", "Where"}, writtenRows(c.Sheet))
	p.Section("2 in the catalog and the papers", orNone(len(c.Rests), "no row is needed for it."))
	p.Table([]string{"Entry", "What", "Document", "How known"}, valueRows(c.Rests))
	p.Section("3 worked out", orNone(len(c.Numbers)+len(c.Methods), "nothing: it is a plain question of yes or no."))
	var rows [][]string
	for _, n := range c.Numbers {
		rows = append(rows, []string{n.Name, n.Value})
	}
	p.Table([]string{"What", "Value"}, rows)
	for _, m := range c.Methods {
		p.Para("How:   ", m.How+" ("+m.Source+", "+m.Standing+").")
	}
	c.textRule(p)
}

func (c Chain) textRule(p *report.Paper) {
	p.Section("4 the rule", c.Rule.ID+": "+c.Rule.Title+".")
	when := "Always."
	if len(c.Rule.When) > 0 {
		when = strings.Join(c.Rule.When, "; ") + "."
	}
	p.Para("Looks at: ", c.Rule.LooksAt+".")
	p.Para("Judges if: ", when)
	p.Para("Why: ", c.Rule.Why)
	p.Para("Effect: ", c.Rule.Effect)
	p.Para("Do: ", c.Rule.Action)
	for _, b := range c.Basis {
		p.Para("Basis: ", report.Cited(b))
	}
}

func (a *Answer) textThing(p *report.Paper) {
	p.Para("Where: ", a.Position+". The line as a whole is "+string(a.Word)+".")
	if len(a.Beside) > 0 {
		p.Section("What stands against it", "")
		p.Bullets(a.Beside)
	}
	if len(a.Missing) > 0 {
		p.Section("What is not known of it", "")
		for _, g := range a.Missing {
			p.Bullets([]string{g.Subject + ": " + g.Why + ". Find out: " + g.Ask + fmt.Sprintf(" (rules that wait for it: %d).", g.Rules)})
		}
	}
	a.textFigures(p)
	p.Section("Judged by", fmt.Sprintf("%d rules.", len(a.Judged)))
	var items []string
	for _, j := range a.Judged {
		found := "not found"
		if j.Found {
			found = "FOUND"
		}
		items = append(items, j.Title+": "+found+" ("+j.Rule+")")
	}
	p.Bullets(items)
	p.Section("What this rests on", orNone(len(a.Rests), "no value of its own."))
	p.Table([]string{"What", "Document", "How known"}, restRows(a.Rests))
	p.Section("On the sheet", "")
	p.Table([]string{"Key", "Value", "Where"}, writtenRows(a.Sheet))
}

func (a *Answer) textFigures(p *report.Paper) {
	var holds, ranges, pairs [][]string
	for _, h := range a.Holds {
		holds = append(holds, []string{h.What, h.Case, known(h.Have), known(h.Need), known(h.Margin)})
	}
	for _, r := range a.Ranges {
		ranges = append(ranges, []string{r.What, r.From + " to " + r.To, r.Sees, r.Margin})
	}
	for _, x := range a.Pairs {
		pairs = append(pairs, []string{x.Layer, x.Material + " in " + x.Fluid, known(x.Rating), x.To, x.Sees, x.Known})
	}
	for _, t := range []struct {
		head  string
		names []string
		rows  [][]string
	}{
		{"Pressure", []string{"What", "Case", "Have", "Need", "Margin"}, holds},
		{"Temperature", []string{"What", "Permitted", "Sees", "Margin"}, ranges},
		{"Materials", []string{"Where", "Material", "Rating", "Up to", "Sees", "By"}, pairs},
	} {
		if len(t.rows) > 0 {
			p.Section(t.head, "")
			p.Table(t.names, t.rows)
		}
	}
}
