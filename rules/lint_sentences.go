package rules

import (
	"regexp"
	"slices"
	"strings"
)

// section is a law named down to its section, which may be cited whole.
var section = regexp.MustCompile(`^\d+ CFR \d+\.[0-9-]+$`)

func (l *lint) sentences(row int) {
	r := &l.rule
	r.Message, r.Action = strings.TrimSpace(r.Message), strings.TrimSpace(r.Action)
	for key, text := range map[string]string{"title": r.Title, "description": r.Description, "message": r.Message, "action": r.Action} {
		if text == "" {
			l.add(row, "%s is empty: a technician reads it", key)
		}
	}
	if strings.HasSuffix(r.Title, ".") || strings.Contains(r.Title, "\n") {
		l.add(row, "the title is one line without a full stop")
	}
	if !slices.Contains(severities, r.Severity) {
		l.add(row, "severity %q is not one of %s", r.Severity, strings.Join(severities, ", "))
	}
	if len(r.Basis) == 0 {
		l.add(row, "basis is empty: name the document, or common practice with standing practice")
	}
}

func (l *lint) basis(row int, b Basis) {
	if b.Document == "" {
		l.add(row, "a basis names no document")
	}
	known := standings
	if l.ofSite() {
		known = append([]string{"site"}, standings...) // the site's own document
	}
	if !slices.Contains(known, b.Standing) {
		l.add(row, "standing %q of %s is not one of %s", b.Standing, b.Document, strings.Join(known, ", "))
	}
	if b.Clause == "" && b.Standing != "site" && b.Standing != "practice" && !section.MatchString(b.Document) {
		l.add(row, "basis %s has no clause: say where in it, or lower its standing to practice", b.Document)
	}
}
