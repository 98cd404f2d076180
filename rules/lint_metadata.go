package rules

import (
	"bytes"
	"encoding/json"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"lineworthy/check/facts"
)

var (
	severities = []string{"stop", "condition", "note"}
	standings  = []string{"published", "restated", "computed", "recalled", "practice"}
)

// custom is the closed set of what a rule says of itself beyond title and description.
type custom struct {
	Severity *string   `json:"severity"`
	Subject  *string   `json:"subject"`
	Scope    *[]string `json:"scope"`
	Needs    *[]string `json:"needs"`
	Absent   []string  `json:"absent"` // optional
	Message  *string   `json:"message"`
	Action   *string   `json:"action"`
	Basis    *[]Basis  `json:"basis"`
}

// metadata reads what the rule says of itself, and checks it.
func (l *lint) metadata() {
	l.rule = Rule{ID: l.id, Scope: []string{}, Needs: []string{}, Basis: []Basis{}}
	if len(l.mod.Annotations) != 1 || l.mod.Annotations[0].Scope != "package" {
		l.add(1, "want one METADATA block, above the package line")
		return
	}
	a := l.mod.Annotations[0]
	l.rule.Title, l.rule.Description = strings.TrimSpace(a.Title), strings.TrimSpace(a.Description)
	l.closed(a)
	l.custom(a)
	l.sentences(a.Location.Row)
	for _, b := range l.rule.Basis {
		l.basis(a.Location.Row, b)
	}
	if _, err := facts.NewQuestion(l.rule.Subject, l.rule.Scope, l.rule.Needs); err != nil {
		l.add(a.Location.Row, "%v", err)
	}
	for _, path := range l.absent {
		if c, key, _ := strings.Cut(path, "."); !optional(c, key) || slices.Contains(l.rule.Needs, path) {
			l.add(a.Location.Row, "absent: %s is not a fact that may be missing, or it is in needs as well", path)
		}
	}
}

func optional(collection, key string) bool {
	f, ok := facts.Find(collection, key)
	return ok && f.Optional
}

func (l *lint) closed(a *ast.Annotations) {
	row := a.Location.Row
	if len(a.Schemas) != 1 || a.Schemas[0].Path.String() != "input" || a.Schemas[0].Schema.String() != "schema.facts" {
		l.add(row, "want schemas: - input: schema.facts, or misspelt facts pass unseen")
	}
	if a.Entrypoint || len(a.Organizations) > 0 || len(a.RelatedResources) > 0 || len(a.Authors) > 0 || len(a.Labels) > 0 {
		l.add(row, "METADATA takes title, description, schemas and custom only: documents go into basis")
	}
}

func (l *lint) custom(a *ast.Annotations) {
	row := a.Location.Row
	text, err := json.Marshal(a.Custom)
	if err != nil {
		l.add(row, "custom: %v", err)
		return
	}
	var c custom
	dec := json.NewDecoder(bytes.NewReader(text))
	dec.DisallowUnknownFields()
	if err := dec.Decode(&c); err != nil {
		l.add(row, "custom takes severity, subject, scope, needs, absent, message, action, basis, all text in quotes: %v", err)
		return
	}
	r := &l.rule
	l.absent = c.Absent
	take(l, row, "severity", c.Severity, &r.Severity)
	take(l, row, "subject", c.Subject, &r.Subject)
	take(l, row, "scope", c.Scope, &r.Scope)
	take(l, row, "needs", c.Needs, &r.Needs)
	take(l, row, "message", c.Message, &r.Message)
	take(l, row, "action", c.Action, &r.Action)
	take(l, row, "basis", c.Basis, &r.Basis)
}

// take copies a key that must be there.
func take[T any](l *lint, row int, key string, from, to *T) {
	if from == nil {
		l.add(row, "custom lacks %s", key)
		return
	}
	*to = *from
}
