package compare

import (
	"fmt"
	"strconv"
	"strings"

	"lineworthy/check/report"
)

// Options is how a review is laid out.
type Options struct {
	report.Options
	Markdown bool
}

// Text writes the review for people.
func (r *Review) Text(o Options) string {
	p := report.NewPaper(o.Options, o.Markdown)
	p.Title(r.New.Word, strings.ToUpper(fmt.Sprintf("%s to %s", r.Old.Word, r.New.Word)), r.Old.Line+" compared with "+r.New.Line)
	p.Para("Old: ", sideLine(r.Old))
	p.Para("New: ", sideLine(r.New))
	for _, part := range []func(*report.Paper, *Review, bool){
		textWorse, textRests, textKind, textTime, textChanges, textFindings, textConfirm, textMissing, textMargins, textRecord,
	} {
		part(p, r, o.Full)
	}
	p.Section("Caution", "")
	p.Bullets(r.Cautions)
	return p.String()
}

func sideLine(s Side) string {
	return fmt.Sprintf("%s, judged for %s by %s: %s. %s", s.File, s.AsOf, s.Tool, s.Word, s.Reason)
}

func textWorse(p *report.Paper, r *Review, _ bool) {
	if len(r.Worse) == 0 {
		p.Section("Worse", "in nothing that was judged.")
		return
	}
	p.Section("Worse", "in "+count(len(r.Worse), "way.", "ways."))
	p.Bullets(r.Worse)
}

func textRests(p *report.Paper, r *Review, full bool) {
	if r.Kind != nil {
		return
	}
	p.Section("What the verdicts rest on", blame(r.Rests))
	var rows [][]string
	for _, x := range r.Rests {
		rows = append(rows, []string{x.What, cut(x.Was, full), cut(x.Now, full)})
	}
	p.Table([]string{"What", "Was", "Is"}, rows)
}

// cut shortens a SHA-256 sum to what can be compared by eye.
func cut(s string, full bool) string {
	switch {
	case s == "":
		return "not used"
	case len(s) == 64 && !full:
		return s[:12]
	}
	return s
}

func textKind(p *report.Paper, r *Review, _ bool) {
	if r.Kind == nil {
		return
	}
	p.Section("Replacement in kind", r.Kind.says())
	if r.Kind.Conflict != "" {
		p.Para("Mind: ", r.Kind.Conflict+".")
	}
	p.Para("Basis: ", report.Cited(r.Kind.Basis)+". By this comparison only: "+r.Kind.Decides+".")
}

func (k *Kind) says() string {
	switch k.Answer {
	case NotInKind:
		return "no. What differs: " + strings.Join(k.Because, ", ") + "."
	case NotShown:
		return "not shown. " + strings.Join(k.Because, "; ") + "."
	case InKind:
		return "yes, as far as the sheets tell: nothing of the design differs."
	}
	return "nothing was replaced and nothing of the design differs."
}

func textTime(p *report.Paper, r *Review, _ bool) {
	if r.Time != nil {
		p.Section("Temporary change", r.Time.Says)
	}
}

func textChanges(p *report.Paper, r *Review, _ bool) {
	if r.Kind == nil {
		return
	}
	for _, design := range []bool{true, false} {
		head, none := "Changes of the design", "none."
		if !design {
			head = "Changes of names, marks, dates and papers"
		}
		var rows [][]string
		for _, c := range r.Changes {
			if c.Design == design {
				rows = append(rows, []string{c.Thing, c.key(), c.was(), c.now(), lines(c)})
			}
		}
		if len(rows) > 0 {
			none = strconv.Itoa(len(rows)) + "."
		}
		p.Section(head, none)
		p.Table([]string{"Thing", "Key", "Was", "Is", "Lines"}, rows)
	}
}

func (c Change) key() string {
	if c.What == "changed" {
		return c.Key
	}
	return c.What
}

func (c Change) was() string {
	if c.What == "changed" && c.Was == "" {
		return "not stated"
	}
	return c.Was
}

func (c Change) now() string {
	if c.What == "changed" && c.Now == "" {
		return "not stated"
	}
	return c.Now
}

// lines are the places in the old and in the new sheet.
func lines(c Change) string {
	at := func(n int) string {
		if n == 0 {
			return "-"
		}
		return strconv.Itoa(n)
	}
	return at(c.OldLine) + ", " + at(c.NewLine)
}
