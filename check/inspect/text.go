package inspect

import (
	"fmt"
	"strings"

	"lineworthy/check/report"
)

const asks = "Before the job: look at, read and measure"

// Text is the list for a terminal or a printer.
func (l *List) Text(o report.Options) string {
	r := report.NewPaper(o, false)
	r.Title("", l.Line, asks+". "+l.Title)
	r.Para("", "Made from sheet "+l.Sheet+" for "+l.AsOf+", in walking order from source to destination.")
	r.Para("", l.Verdict)
	r.Section("Wear and have at hand", "the safety data sheet, section 8, is the authority; this list follows from the hazards in the catalog (practice).")
	for _, a := range l.Equipment {
		r.Para("- ", a.Text+" ("+a.Why+")")
	}
	r.Section("Take out of use", "and mark so what shows any of this. What holds for one item alone stands there.")
	for _, g := range l.Groups {
		for _, x := range g.Reject {
			r.Para("- ", g.Name+": "+x.Text+". "+x.Source)
		}
	}
	r.Section("Items", fmt.Sprintf("%d. [ ] is to be filled in.", len(l.Items)))
	for n, i := range l.Items {
		i.text(r, n+1)
	}
	l.testText(r)
	r.Section("Hold points", "nobody goes on before each is passed.")
	for _, h := range l.Holds {
		r.Para("[ ] ", h.ID+": "+h.Text)
	}
	r.Section("Caution", "local codes and the judgement of a competent person come first.")
	r.Bullets(cautions())
	return r.String()
}

func cautions() []string {
	return append(report.StandingCautions(), "A gas under test stores energy: keep everybody away while the pressure is raised, and look at joints only once it has stood. Resistance is measured with nothing in the line that burns.")
}

// title is the item as it is called.
func (i *Item) title() string {
	t := i.ID
	if !strings.HasPrefix(t, i.Kind+" ") {
		t = i.Kind + " " + t
	}
	if i.Name != "" {
		t += ", " + i.Name
	}
	if i.Run != "" {
		t += " (run " + i.Run + ")"
	}
	return t
}

func (i *Item) text(r *report.Paper, n int) {
	r.Blank()
	r.Para(fmt.Sprintf("%2d. ", n), i.title())
	for _, f := range i.Fields {
		says := f.Verb + ", " + f.Label
		if f.Expect != "" {
			says += ". Sheet: " + f.Expect
		}
		r.Para("    [ ] "+f.Key+": ", says)
	}
	for _, x := range i.Own {
		r.Para("    reject if ", x.Text+". "+x.Source)
	}
}

func (l *List) testText(r *report.Paper) {
	r.Section("Leak test", "before product enters; it proves no strength.")
	for _, t := range l.Tests {
		r.Para("[ ] ", "run "+t.Run+": "+orNone(t.Pressure)+" ("+t.Why+")")
		r.Para("    ", "with "+t.Fluid)
		r.Para("    ", t.How)
	}
}

// Text is the verdict for the job.
func (x *Result) Text(o report.Options) string {
	r := report.NewPaper(o, false)
	head := map[report.Word]string{report.Fit: "CLEARED", report.Conditional: "CLEARED, WITH CONDITIONS", report.Unproven: "NOT CLEARED: UNPROVEN", report.Unfit: "NOT CLEARED: UNFIT"}[x.Word]
	r.Title(x.Word, head, x.Line+", inspected on "+x.Day+" by "+x.Who)
	r.Para("", x.Reason)
	if x.Word == report.Fit || x.Word == report.Conditional {
		r.Para("", "This holds for the job of that day: look, read and measure again before the next.")
	}
	r.Section("From the readings", fmt.Sprintf("%d found.", len(x.FromReadings)+len(x.Rejected)))
	for _, f := range x.FromReadings {
		finding(r, f)
	}
	for _, j := range x.Rejected {
		r.Para("- ", "stop: "+j.Item+": "+j.Says)
		r.Para("  Do:    ", j.Do)
		r.Para("  Basis: ", j.Source)
	}
	if len(x.FromSheet) > 0 {
		r.Section("From the sheet", fmt.Sprintf("%d found, which the readings do not change.", len(x.FromSheet)))
		for _, f := range x.FromSheet {
			finding(r, f)
		}
	}
	x.rest(r)
	r.Section("Caution", "local codes and the judgement of a competent person come first.")
	r.Bullets(cautions())
	return r.String()
}

func finding(r *report.Paper, f report.Finding) {
	r.Para("- ", f.Severity+": "+f.Message)
	r.Para("  Do:    ", f.Action)
	for _, b := range f.Basis {
		r.Para("  Basis: ", report.Cited(b))
	}
	r.Para("  Rule:  ", f.Rule)
}

func (x *Result) rest(r *report.Paper) {
	if len(x.Open) > 0 {
		r.Section("Not read, not done or not shown", "what is not known is never counted as good.")
		r.Bullets(x.Open)
	}
	if len(x.Unjudged) > 0 {
		r.Section("Could not be judged", fmt.Sprintf("%d. See lineworthy check.", len(x.Unjudged)))
		for _, u := range x.Unjudged {
			r.Para("- ", u.Subject+": "+u.Why)
			if u.Ask != "" {
				r.Para("  Find out: ", u.Ask)
			}
		}
	}
	var rows [][]string
	for _, d := range x.Differs {
		rows = append(rows, []string{d.Item, d.Key, d.Expect, d.Text})
	}
	if len(rows) > 0 {
		r.Section("Differs from the sheet", "put the sheet right where the reading is right.")
		r.Table([]string{"Item", "Reading", "Sheet says", "Read"}, rows)
	}
	if x.Confirm > 0 {
		r.Section("To confirm", fmt.Sprintf("%d values of the catalog are still to be looked up, unless a signed approval accepts them: see lineworthy check and lineworthy verify.", x.Confirm))
	}
}
