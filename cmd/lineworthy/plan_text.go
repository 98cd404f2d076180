package main

import (
	"cmp"
	"fmt"
	"io"

	"gopkg.in/yaml.v3"

	"lineworthy/check/report"
	"lineworthy/check/sequence"
)

func writePlan(s streams, f planFlags, p *planned) error {
	switch f.format {
	case "json":
		return writeJSON(s.out, p)
	case "yaml":
		return writeSequence(s, p)
	}
	o := report.Options{Width: f.width, Colour: colour(s.out)}
	if o.Width == 0 {
		o.Width = width(s.out)
	}
	_, err := io.WriteString(s.out, planText(p, o))
	return err
}

// writeSequence writes the steps, and what is wrong with them where a person will see it.
func writeSequence(s streams, p *planned) error {
	for _, x := range p.Faults {
		fmt.Fprintf(s.err, "step %d: %s: %s\n", x.Step, x.Name, x.Says)
	}
	for _, x := range p.Open {
		fmt.Fprintln(s.err, "not known:", x)
	}
	fmt.Fprintf(s.out, "# Operating sequence of %s. Change it to suit, then: lineworthy plan SHEET --check THIS\n", p.Line)
	e := yaml.NewEncoder(s.out)
	e.SetIndent(2)
	return e.Encode(sequence.Sequence{Line: p.Line, Steps: p.Steps})
}

func planText(p *planned, o report.Options) string {
	r := report.NewPaper(o, false)
	word, head := report.Fit, "NO FAULT FOUND"
	switch {
	case len(p.Faults) > 0:
		word, head = report.Unfit, "FAULTS FOUND"
	case len(p.Open) > 0:
		word, head = report.Unproven, "NOT ALL KNOWN"
	}
	r.Title(word, head, "sequence of "+p.Line+" "+p.title)
	from := "Derived from the sheet " + p.Sheet + "."
	if p.Checked != "" {
		from = "Sequence " + p.Checked + ", played on the sheet " + p.Sheet + "."
	}
	r.Para("", from+" It does not say whether the line is fit: see lineworthy check.")
	var rows [][]string
	for _, x := range p.Figures {
		rows = append(rows, []string{x.Run, x.What, x.Says})
	}
	for _, x := range p.Total {
		rows = append(rows, []string{cmp.Or(x.Run, "whole"), totalOf(x), x.Says})
	}
	r.Table([]string{"Run", "What", "Planned"}, rows)
	planSteps(r, p)
	planFaults(r, p)
	planContents(r, p)
	r.Section("Caution", "follow the site's own procedure and permits where they ask for more.")
	r.Bullets(append(report.StandingCautions(), "The times follow from the planned flow alone. The play knows nothing of flow losses or of gas that lingers. A gauge at zero can be a blocked gauge: open the last connection as if it were under pressure."))
	return r.String()
}

func planSteps(r *report.Paper, p *planned) {
	r.Section("Steps", fmt.Sprintf("%d, in this order. Stop at any step that does not go as it says.", len(p.Says)))
	for i, says := range p.Says {
		r.Para(fmt.Sprintf("%3d. ", i+1), says)
		for _, x := range p.Efforts {
			if x.Step == i+1 {
				r.Para("     > ", x.Says)
			}
		}
		for _, x := range p.Faults {
			if x.Step == i+1 {
				r.Para("     ! ", x.Name+": "+x.Says)
			}
		}
	}
}

func totalOf(e sequence.Effort) string {
	if e.Run != "" {
		return "gas in all"
	}
	return "time in all"
}

// planContents shows what stands where after each flush and at the end.
func planContents(r *report.Paper, p *planned) {
	if len(p.Contents) == 0 {
		return
	}
	r.Section("What stands in the line", "by the play.")
	var rows [][]string
	for _, c := range p.Contents {
		after := fmt.Sprintf("step %d", c.Step)
		if c.Step > len(p.Steps) {
			after = "the end"
		}
		rows = append(rows, []string{after, c.From + " to " + c.To, c.Says})
	}
	r.Table([]string{"After", "Stretch", "Holds"}, rows)
}

func planFaults(r *report.Paper, p *planned) {
	if len(p.Faults) == 0 {
		r.Section("Faults", "none found.")
	} else {
		r.Section("Faults", fmt.Sprintf("%d. Put each right before the sequence is used.", len(p.Faults)))
	}
	for _, x := range p.Faults {
		at := fmt.Sprintf("step %d", x.Step)
		if x.Step > len(p.Steps) {
			at = "at the end"
		}
		r.Para("- ", at+": "+x.Name+". "+x.Says+".")
		r.Para("  Do:    ", x.Do)
		r.Para("  Basis: ", x.Source)
	}
	if len(p.Open) > 0 {
		r.Section("Not known", "what is not known is never counted as good.")
		r.Bullets(p.Open)
	}
}
