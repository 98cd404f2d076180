package facts

import (
	"fmt"
	"maps"
	"slices"
	"strings"
)

// Question is what one rule wants to know: of which subjects, under which conditions, and which facts it cannot do
// without.
type Question struct {
	subject string
	of      *collection
	scope   []condition
	needs   []need

	own, ofLine mask // the needs of the subject and of the line
}

// need is one fact that a rule cannot do without.
type need struct {
	path   string // collection.field
	ask    string
	ofLine bool // a fact of the line, whatever the subject
	read   reader
}

// NewQuestion reads the subject, scope and needs of a rule. The error names every one that does not fit the facts.
func NewQuestion(subject string, scope, needs []string) (*Question, error) {
	s := collections[subject]
	if s == nil {
		return nil, fmt.Errorf("subject %q is not a collection of facts: use one of %s", subject, strings.Join(Collections(), ", "))
	}
	q, faults := &Question{subject: subject, of: places[subject]}, []string{}
	for _, text := range scope {
		c, err := conditionOf(s, text)
		if err != nil {
			faults = append(faults, err.Error())
		}
		q.scope = append(q.scope, c)
	}
	for _, path := range needs {
		n, err := needOf(subject, path)
		if err != nil {
			faults = append(faults, err.Error())
		}
		q.needs = append(q.needs, n)
		if n.ofLine {
			q.ofLine |= 1 << n.read
		} else {
			q.own |= 1 << n.read
		}
	}
	if len(faults) > 0 {
		return nil, fmt.Errorf("%s", strings.Join(faults, "; "))
	}
	return q, nil
}

func needOf(subject, path string) (need, error) {
	collection, key, _ := strings.Cut(path, ".")
	if collection != subject && collection != "line" {
		return need{}, fmt.Errorf("need %q is not a fact of %s or of line", path, subject)
	}
	f, ok := collections[collection].find(key)
	if !ok {
		return need{}, fmt.Errorf("need %q is not a fact: %s has %s", path, collection, collections[collection].keys(true))
	}
	if !f.optional {
		return need{}, fmt.Errorf("need %q is always known: take it out of needs", path)
	}
	return need{path, f.ask, collection == "line", reader(f.index)}, nil
}

// Collections are the names of what a rule can judge, sorted.
func Collections() []string {
	return slices.Sorted(maps.Keys(collections))
}

func (s *shape) find(key string) (field, bool) {
	i, ok := s.at[key]
	if !ok {
		return field{}, false
	}
	return s.fields[i], true
}

// keys lists the optional or the other keys, for messages.
func (s *shape) keys(optional bool) string {
	var out []string
	for _, f := range s.fields {
		if f.optional == optional {
			out = append(out, f.key)
		}
	}
	return strings.Join(out, ", ")
}
