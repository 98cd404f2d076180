package report

import (
	"regexp"
	"strings"
)

var (
	federalCode = regexp.MustCompile(`^\d+ CFR\b`)
	practised   = "common practice"
)

// warning is what a reader should do before leaning on a document, by how it is known.
var warning = map[string]string{
	"recalled": "from memory, read the document",
	"restated": "from a summary, read the document",
}

// cite names a document, its edition and clause, and how it is known. The federal code was read in a yearly
// edition that may have been changed since, so its reader is sent to the current one.
func cite(b Basis) string {
	if b.Standing == "practice" && b.Document == practised {
		return practised + ", no document"
	}
	text := b.Document
	if edition := strings.TrimPrefix(b.Edition, "CFR "); edition != "" {
		text += " (" + edition + ")"
	}
	if b.Clause != "" {
		text += ", " + b.Clause
	}
	text += ", " + b.Standing
	if hint := warning[b.Standing]; hint != "" {
		text += ": " + hint
	}
	if federalCode.MatchString(b.Document) {
		text += "; check the current code"
	}
	return text
}

// where is the document and place to look a value up in.
func where(c Confirm) string {
	if c.Clause == "" {
		return c.Source
	}
	return c.Source + ", " + c.Clause
}
