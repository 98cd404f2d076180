package report

import "strings"

// Terminal codes (ECMA-48 SGR, recalled): bold, and bold with a colour.
const (
	plainStyle = "\x1b[0m"
	bold       = "\x1b[1m"
	red        = "\x1b[1;31m"
	green      = "\x1b[1;32m"
	yellow     = "\x1b[1;33m"
	magenta    = "\x1b[1;35m"
)

var wordStyle = map[Word]string{Unfit: red, Unproven: magenta, Conditional: yellow, Fit: green}

var severityStyle = map[string]string{stop: red, condition: yellow, note: bold}

// page gathers the lines of a report, so that nothing is written when something goes wrong.
type page struct {
	strings.Builder
	width  int
	colour bool
	full   bool
}

func newPage(o Options) *page { return &page{width: o.width(), colour: o.Colour, full: o.Full} }

// lines writes lines as they are; the no-break spaces that steered the wrapping become plain again.
func (p *page) lines(lines ...string) {
	for _, line := range lines {
		p.WriteString(strings.TrimRight(strings.ReplaceAll(line, "\u00a0", " "), " "))
		p.WriteString("\n")
	}
}

// text is a paragraph with a label in front and its further lines set in below the text.
func (p *page) text(label, text string) {
	p.lines(wrap(label, strings.Repeat(" ", runes(label)), text, p.width)...)
}

// headed is a paragraph whose head may be coloured; the colour is put on after the lines are set.
func (p *page) headed(style, head, text string) {
	lines := wrap(head, "  ", text, p.width)
	if word := strings.TrimRight(head, " "); p.colour {
		lines[0] = style + word + plainStyle + strings.TrimPrefix(lines[0], word)
	}
	p.lines(lines...)
}

// section opens a part of the report.
func (p *page) section(style, head, text string) {
	p.lines("")
	p.headed(style, head+" ", text)
}

func (p *page) table(head []string, rows [][]string) {
	p.lines(columns(head, rows, p.width)...)
}
