package suggest

import (
	"encoding/json"
	"fmt"
	"io"
	"slices"
	"strings"
)

// JSON writes the result as a document.
func JSON(w io.Writer, r *Result) error {
	e := json.NewEncoder(w)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	return e.Encode(r)
}

// Text writes the result for a terminal or a printer.
func Text(w io.Writer, r *Result) error {
	p := &page{}
	p.say("SUGGESTIONS for %s  %s", r.Line, r.Title)
	p.say("Sheet %s, judged for %s. Now: %s. %s", r.Sheet, r.AsOf, strings.ToUpper(string(r.Now)), r.Reason)
	p.wrap("", r.Caution)
	for i, o := range r.Offers {
		p.offer(i+1, o)
	}
	if len(r.Offers) == 0 {
		p.say("\nNo change of parts makes the line fitter than it is.")
	}
	p.nothing(r.Nothing)
	p.noPart(r.NoPart)
	p.say("\n%d changed sheets were judged by the rules that check uses.", r.Judged)
	_, err := io.WriteString(w, p.String())
	return err
}

type page struct{ strings.Builder }

func (p *page) say(format string, args ...any) { fmt.Fprintf(p, format+"\n", args...) }

const width = 100

// wrap sets text behind a mark, with further lines under its first word.
func (p *page) wrap(mark, text string) {
	line, indent := mark, strings.Repeat(" ", len([]rune(mark)))
	for i, word := range strings.Fields(text) {
		if i > 0 && len([]rune(line))+1+len([]rune(word)) > width {
			p.say("%s", line)
			line = indent + word
			continue
		}
		if i > 0 {
			line += " "
		}
		line += word
	}
	p.say("%s", line)
}

func (p *page) offer(n int, o Offer) {
	p.say("\n%d. %s with %s replaced, changed or added. %s", n, strings.ToUpper(string(o.Word)), things(o.Parts, "part"), o.Reason)
	if g := o.Worst; g != nil {
		p.wrap("   Least to spare: ", fmt.Sprintf("%s %s, have %s, need %s, margin %s", g.Part, g.What, g.Have, g.Need, g.Margin))
	}
	for _, c := range o.Changes {
		p.wrap("   Change  ", c.Where)
		if c.Before != "" {
			p.wrap("     from  ", c.Before)
		}
		p.wrap("     to    ", c.After)
	}
	p.items("   On the site, no part does it:", o.OnSite)
	p.items("   Needed before use:", o.Needs)
	var left []string
	for _, x := range o.Left {
		left = append(left, strings.ToUpper(x.Severity)+": "+x.Text)
	}
	p.items("   Still stands against it:", left)
	if len(o.Confirm) > 0 {
		p.say("   To confirm in the documents named by check: %s.", counts(o.Confirm))
	}
}

func (p *page) items(title string, rows []string) {
	if len(rows) == 0 {
		return
	}
	p.say("%s", title)
	for _, r := range rows {
		p.wrap("   - ", r)
	}
}

func counts(m map[string]int) string {
	var words []string
	for k, n := range m {
		words = append(words, fmt.Sprintf("%d %s", n, k))
	}
	slices.Sort(words)
	return strings.Join(words, ", ")
}

func things(n int, one string) string {
	if n == 1 {
		return "1 " + one
	}
	return fmt.Sprintf("%d %ss", n, one)
}

func (p *page) nothing(all []Nothing) {
	if len(all) == 0 {
		return
	}
	p.say("\nNOTHING IN THE CATALOG DOES")
	for _, n := range all {
		p.wrap("- ", fmt.Sprintf("%s: %s tried. What a part would have to meet:", n.Where, things(n.Tried, "way")))
		for _, w := range n.Wants {
			p.wrap("    ", w)
		}
		if n.Near != "" {
			p.wrap("    ", "Nearest: "+n.Near)
		}
	}
}

func (p *page) noPart(all []NoPart) {
	if len(all) == 0 {
		return
	}
	p.say("\nNOT CURED BY A PART")
	for _, n := range all {
		text := strings.ToUpper(n.Severity) + ": " + n.Text
		if n.Count > 1 {
			text += fmt.Sprintf(" (and %d more alike)", n.Count-1)
		}
		p.wrap("- ", text)
		p.wrap("  ", n.Action)
	}
}
