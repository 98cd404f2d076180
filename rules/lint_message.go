package rules

import (
	"regexp"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
)

var placeholder = regexp.MustCompile(`\{([a-z0-9_]+)\}`)

// message checks that each report can fill the message, and that what was found is a plain object.
func (l *lint) message() {
	row := 1
	if rest := placeholder.ReplaceAllString(l.rule.Message, ""); strings.ContainsAny(rest, "{}") {
		l.add(row, "message: a placeholder is {key} in lower case, with a key of the report")
	}
	for _, r := range l.mod.Rules {
		if r.Head.Name != "report" || r.Head.Key == nil {
			continue
		}
		keys, ok := l.keys(r)
		if !ok {
			continue
		}
		for _, m := range placeholder.FindAllStringSubmatch(l.rule.Message, -1) {
			if !slices.Contains(keys, m[1]) {
				l.add(r.Location.Row, "message wants {%s}, this report has only %s", m[1], strings.Join(keys, ", "))
			}
		}
		l.compared(r.Location.Row, keys)
	}
}

// keys are those of the object in the head of a report.
func (l *lint) keys(r *ast.Rule) ([]string, bool) {
	o, ok := r.Head.Key.Value.(ast.Object)
	if !ok {
		l.add(r.Location.Row, "write the object of the report in its head, so that its keys can be checked")
		return nil, false
	}
	var keys []string
	for _, k := range o.Keys() {
		s, ok := k.Value.(ast.String)
		if !ok {
			l.add(r.Location.Row, "a key of a report is a plain string")
			return nil, false
		}
		keys = append(keys, string(s))
	}
	slices.Sort(keys)
	if !slices.Contains(keys, "subject") {
		l.add(r.Location.Row, "the report lacks subject: the id of what was judged")
	}
	return keys, true
}

// compared wants have_x beside need_x, which the reports turn into a margin.
func (l *lint) compared(row int, keys []string) {
	for _, k := range keys {
		for _, pair := range [][2]string{{"have_", "need_"}, {"need_", "have_"}} {
			if rest, ok := strings.CutPrefix(k, pair[0]); ok && !slices.Contains(keys, pair[1]+rest) {
				l.add(row, "%s stands alone: the report shows need, have and margin, add %s%s", k, pair[1], rest)
			}
		}
	}
}
