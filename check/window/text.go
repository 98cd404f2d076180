package window

import (
	"fmt"
	"io"
	"math"
	"strings"
	"text/tabwriter"

	"lineworthy/check/units"
)

// Text writes the region as tables for a terminal or a printer, the sections after the runs they belong to.
func Text(w io.Writer, r *Result) error {
	p := &page{}
	p.say("ALLOWED PRESSURE AND TEMPERATURE  %s  %s", r.Line, r.Title)
	p.say("Sheet %s. Inside the region every part holds the pressure at that temperature; above it and beside it at least one does not.", r.Sheet)
	for _, s := range r.Scopes {
		p.scope(s, len(r.Scopes) > 1 && s.Kind == "section")
	}
	p.vapours(r.Vapours)
	p.say("\nCAUTION")
	for _, c := range r.Cautions {
		p.say("- %s", c)
	}
	_, err := io.WriteString(w, p.String())
	return err
}

type page struct{ strings.Builder }

func (p *page) say(format string, args ...any) { fmt.Fprintf(p, format+"\n", args...) }

// table sets rows in columns.
func (p *page) table(head string, rows [][]string) {
	t := tabwriter.NewWriter(p, 0, 0, 2, ' ', 0)
	fmt.Fprintln(t, "  "+strings.ReplaceAll(head, "|", "\t"))
	for _, row := range rows {
		fmt.Fprintln(t, "  "+strings.Join(row, "\t"))
	}
	_ = t.Flush()
}

func (p *page) scope(s Scope, brief bool) {
	title := map[string]string{"line": "THE WHOLE LINE", "run": "RUN " + s.ID, "section": "SECTION " + s.ID}[s.Kind]
	if s.Kind == "run" {
		title += ": " + s.From + " to " + s.To
	}
	p.say("\n%s", title)
	switch {
	case s.Empty != "":
		p.say("  No region: %s.", s.Empty)
	default:
		p.say("  %s", range1(s))
		p.table("Temperature|Allowed up to|Just above|Weakest from here on", breakRows(s))
	}
	p.unknown(s)
	p.points(s, brief)
	for _, m := range s.Curves {
		p.say("  The vapour pressure of %s reaches the limit at %s.", m.Fluid, m.Text)
	}
	p.suits(s)
}

// range1 is the span of temperature with what ends it on either side.
func range1(s Scope) string {
	return "From " + edgeText(s.Lowest, "no lowest temperature is stated") + " to " + edgeText(s.Highest, "no highest temperature is stated") + "."
}

func edgeText(e *Edge, none string) string {
	if e == nil {
		return "(" + none + ")"
	}
	why := "limit of "
	if !e.Limit {
		why = "nothing known beyond: "
	}
	return e.Text + " (" + why + few(e.By) + ")"
}

// few names at most three.
func few(names []string) string {
	if len(names) > 3 {
		return strings.Join(names[:3], ", ") + fmt.Sprintf(" and %d more", len(names)-3)
	}
	return strings.Join(names, ", ")
}

func breakRows(s Scope) (out [][]string) {
	for i, b := range s.Breaks {
		who := few(b.Weakest)
		if i == len(s.Breaks)-1 && i > 0 {
			who = "end of the region"
		}
		out = append(out, []string{b.Text, b.Allowed, b.Above, who})
	}
	return out
}

func (p *page) unknown(s Scope) {
	if !s.Known {
		p.say("  NOT COMPLETE: the region can only be smaller than shown, because not all is known:")
	} else if len(s.Unknown) > 0 {
		p.say("  Not known:")
	}
	for _, u := range s.Unknown {
		text := "  - " + strings.TrimSpace(u.Part+" "+u.What) + ": " + u.Why
		if u.Ask != "" {
			text += "; find out: " + u.Ask
		}
		p.say("%s", text)
	}
}

var heldWords = map[string]string{"yes": "held", "no": "NOT HELD", "not-known": "not known"}

// points lists every case; of a section beside others only those that are not held, and the one with the least to spare.
func (p *page) points(s Scope, brief bool) {
	var rows [][]string
	for _, x := range s.Points {
		if brief && x.Held == "yes" && x.spare != leastSpare(s.Points) {
			continue
		}
		name := x.Case
		if s.Kind == "line" {
			name = x.Run + ": " + name
		}
		rows = append(rows, []string{name, x.Text, heldWords[x.Held], x.Least, x.Margin})
	}
	if len(rows) > 0 {
		p.table("Case|Reaches|Held|Least to spare|Margin", rows)
	}
}

func leastSpare(ps []Point) units.PressureDifference {
	low := units.PressureDifference(math.Inf(1))
	for _, p := range ps {
		if p.Held == "yes" {
			low = min(low, p.spare)
		}
	}
	return low
}

// suits shows where the knowledge of material and fluid ends inside the region: no pressure makes up for that.
func (p *page) suits(s Scope) {
	var rows []string
	for _, x := range s.Suits {
		if s.Highest != nil && x.ToC != nil && *x.ToC >= s.Highest.C {
			continue
		}
		how := "suitable up to "
		switch {
		case x.ToC == nil:
			how = ""
		case x.Limited:
			how = "of limited use up to "
		}
		rows = append(rows, "  - "+x.Material+" in "+x.Fluid+": "+how+x.Text+" ("+few(x.Parts)+")")
	}
	if len(rows) > 0 {
		p.say("  Colder than the region ends what is known of materials:\n%s", strings.Join(rows, "\n"))
	}
}

func (p *page) vapours(vs []Vapour) {
	for _, v := range vs {
		if len(v.Points) == 0 {
			continue
		}
		p.say("\nVAPOUR PRESSURE of %s (%s), known from %.0f to %.0f °C", v.Fluid, strings.Join(v.Runs, ", "), v.FromC, v.ToC)
		if v.BoilsC != nil {
			p.say("  It boils at %s at the air pressure of the place.", v.BoilsAt)
		}
		var rows [][]string
		for _, x := range v.Rows {
			rows = append(rows, []string{x.Text, x.Gauge})
		}
		p.table("Temperature|Vapour pressure", rows)
	}
}
