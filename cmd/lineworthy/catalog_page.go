package main

import (
	"fmt"
	"io"
	"slices"
	"strings"
	"text/tabwriter"

	"lineworthy/catalog"
)

// page lays out one entry: sections of labelled values, each with how it is known and a number that leads to
// its document at the end.
type page struct {
	cat       *catalog.Catalog
	out       strings.Builder
	tab       *tabwriter.Writer
	documents []string // ids, in the order of first mention
}

func newPage(c *catalog.Catalog) *page {
	p := &page{cat: c}
	p.tab = tabwriter.NewWriter(&p.out, 0, 8, 2, ' ', 0)
	return p
}

// title is the first line: what the entry is called, and its kind and id.
func (p *page) title(kind, id, name string, also []string) {
	fmt.Fprintf(p.tab, "%s (%s %s)\n", name, one(kind), id)
	if len(also) > 0 {
		for _, line := range folded("also called " + strings.Join(also, ", ")) {
			fmt.Fprintf(p.tab, "  %s\n", line)
		}
	}
	p.end()
}

// section starts a new block of values; a block without values leaves no heading.
func (p *page) section(name string, fill func()) {
	before := p.out.Len()
	fmt.Fprintf(&p.out, "\n%s\n", name)
	after := p.out.Len()
	fill()
	p.end()
	if p.out.Len() == after {
		text := p.out.String()[:before]
		p.out.Reset()
		p.out.WriteString(text)
	}
}

// end closes the columns of a block; writing to a string cannot fail.
func (p *page) end() { _ = p.tab.Flush() }

// plain writes a value that needs no evidence.
func (p *page) plain(label, value string) {
	for i, line := range folded(value) {
		if i > 0 {
			label = ""
		}
		if line != "" {
			fmt.Fprintf(p.tab, "  %s\t%s\n", label, line)
		}
	}
}

// value writes a value with how it is known, and its note below.
func (p *page) value(label, value string, o catalog.Origin) {
	fmt.Fprintf(p.tab, "  %s\t%s\t%s\n", label, value, p.known(o))
	if o.Note != "" {
		p.below("note: " + o.Note)
	}
}

// told writes running text with how it is known behind it.
func (p *page) told(label, text string, o catalog.Origin) {
	p.plain(label, text+" ("+p.known(o)+")")
	if o.Note != "" {
		p.below("note: " + o.Note)
	}
}

// below writes running text under the value before it.
func (p *page) below(text string) {
	for _, line := range folded(text) {
		fmt.Fprintf(p.tab, "  \t%s\n", line)
	}
}

// known says in words how a value is known, with the number of its document.
func (p *page) known(o catalog.Origin) string {
	words := standingWords[o.Standing]
	if o.Sure != "" && o.Standing != catalog.Published {
		words += ", " + sureWords[o.Sure]
	}
	if o.Source == "" {
		return words
	}
	if _, err := p.cat.Source(o.Source); err != nil {
		return words + ": " + strings.TrimSpace(o.Source+" "+o.Clause) // a site names its evidence as it likes
	}
	return strings.TrimSpace(fmt.Sprintf("%s %s %s", words, p.number(o.Source), o.Clause))
}

// number is the mark by which the list of documents is entered.
func (p *page) number(source string) string {
	if !slices.Contains(p.documents, source) {
		p.documents = append(p.documents, source)
	}
	return fmt.Sprintf("[%d]", slices.Index(p.documents, source)+1)
}

// finish adds the documents and writes the page.
func (p *page) finish(w io.Writer) error {
	p.section("Documents", func() {
		for _, id := range p.documents {
			if s, err := p.cat.Source(id); err == nil {
				fmt.Fprintf(p.tab, "  %s\t%s\n", p.number(id), documentLine(s))
			}
		}
	})
	fmt.Fprintf(&p.out, "\nA screening aid: ask for the maker's data, and confirm what is recalled before relying on it.\n")
	_, err := io.WriteString(w, p.out.String())
	return err
}

func documentLine(s *catalog.Source) string {
	line := s.Document
	if s.Edition != "" {
		line += ", " + s.Edition
	}
	return line + ": " + viaWords[s.Via]
}
