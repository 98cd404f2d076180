package report

import "strings"

// Paper lays out a report that is about more than one verdict, or about a part of one, as the reports of a verdict are
// laid out: as text for a terminal or as Markdown. All text is made safe to print.
type Paper struct {
	p *page
	d *markdown // nil for text
}

// NewPaper starts an empty report.
func NewPaper(o Options, asMarkdown bool) *Paper {
	if asMarkdown {
		return &Paper{d: &markdown{}}
	}
	return &Paper{p: newPage(o)}
}

// Title heads the report; the word gives its colour on a terminal.
func (r *Paper) Title(word Word, head, text string) {
	head, text = clean(head), clean(text)
	if r.d != nil {
		r.d.WriteString("# " + escape(head) + ": " + escape(text) + "\n")
		return
	}
	rule := strings.Repeat("=", r.p.width)
	r.p.lines(rule)
	r.p.headed(wordStyle[word], head+"  ", text)
	r.p.lines(rule)
}

// Section opens a part of the report with what it comes to.
func (r *Paper) Section(head, text string) {
	head, text = clean(head), clean(text)
	if r.d == nil {
		r.p.section(bold, strings.ToUpper(head)+":", text)
		return
	}
	r.d.para("## " + escape(head))
	r.d.para(escape(text))
}

// Para is a paragraph, set in below its label in a text.
func (r *Paper) Para(label, text string) {
	label, text = clean(label), clean(text)
	if r.d == nil {
		r.p.text(label, text)
		return
	}
	r.d.para(escape(strings.TrimSpace(label) + " " + text))
}

// Bullets is a list.
func (r *Paper) Bullets(items []string) {
	if r.d != nil {
		r.d.bullets(cleaned(items))
		return
	}
	for _, item := range cleaned(items) {
		r.p.text("- ", item)
	}
}

// Table is a table without the columns that no row fills; nothing without rows.
func (r *Paper) Table(head []string, rows [][]string) {
	var safe [][]string
	for _, row := range rows {
		safe = append(safe, cleaned(row))
	}
	switch {
	case len(rows) == 0:
	case r.d != nil:
		r.d.table(head, safe)
	default:
		r.p.lines("")
		r.p.table(head, safe)
	}
}

// Blank is an empty line of a text.
func (r *Paper) Blank() {
	if r.d == nil {
		r.p.lines("")
	}
}

// String is the report so far.
func (r *Paper) String() string {
	if r.d != nil {
		return r.d.String()
	}
	return r.p.String()
}

func cleaned(items []string) []string {
	out := make([]string, len(items))
	for i, item := range items {
		out[i] = clean(item)
	}
	return out
}

// Cited is a basis with its document, edition, clause and how it is known.
func Cited(b Basis) string { return cite(b) }

// Grouped are the findings as the reports number them, from 1: those of one rule stand together.
func Grouped(v *Verdict) [][]Finding {
	var out [][]Finding
	for _, s := range severities {
		for _, g := range groups(v, s) {
			out = append(out, g.items)
		}
	}
	return out
}

// Place is what a finding is about: the part, the thing within it, the operating case.
func Place(f Finding) string { return place(f) }
