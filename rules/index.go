package rules

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
)

// Rule is what a rule says of itself in its METADATA.
type Rule struct {
	ID          string   `json:"id"` // area/fault, the folder
	Title       string   `json:"title"`
	Description string   `json:"description"`
	Severity    string   `json:"severity"` // stop, condition or note
	Subject     string   `json:"subject"`  // the collection of facts it judges
	Scope       []string `json:"scope"`    // conditions on the subject, all of which must hold
	Needs       []string `json:"needs"`    // facts it cannot judge without
	Message     string   `json:"message"`
	Action      string   `json:"action"`
	Basis       []Basis  `json:"basis"`
}

// Basis is a document a rule rests on, and how that is known: published, restated, computed, recalled or practice.
type Basis struct {
	Document string `json:"document"`
	Edition  string `json:"edition"`
	Clause   string `json:"clause"`
	Standing string `json:"standing"`
}

// index is what was known of the rules when they were last checked in full.
type index struct {
	Digest string `json:"digest"`
	Rules  []Rule `json:"rules"`
}

// Index is what all rules say of themselves, sorted by id. The caller must not change it.
func (s Set) Index() []Rule { return s.rules }

// Modules are the texts, sorted by path. The caller must not change them.
func (s Set) Modules() []Module { return s.modules }

// Digest is the SHA-256 in hex of all texts and their paths.
func (s Set) Digest() string { return s.digest }

// Rule finds a rule by id.
func (s Set) Rule(id string) (Rule, bool) {
	i, ok := slices.BinarySearchFunc(s.rules, id, func(r Rule, id string) int { return cmp.Compare(r.ID, id) })
	if !ok {
		return Rule{}, false
	}
	return s.rules[i], true
}

// matches compares texts and index; every difference is a fault of the program.
func (s Set) matches(x index) error {
	listed := map[string]bool{}
	for _, r := range x.Rules {
		listed[r.ID] = true
	}
	var faults []string
	for _, m := range s.modules {
		if id, ok := m.id(); ok && !listed[id] {
			faults = append(faults, fmt.Sprintf("rule %s is not in the index", id))
		} else {
			delete(listed, id)
		}
	}
	for id := range listed {
		faults = append(faults, fmt.Sprintf("rule %s is in the index but its text is missing", id))
	}
	slices.Sort(faults)
	if len(faults) == 0 && x.Digest != s.digest {
		faults = append(faults, "the text of a rule is not the text that was checked (after a change: go test ./rules -update)")
	}
	if len(faults) > 0 {
		return fmt.Errorf("rules: %s", strings.Join(faults, "; "))
	}
	return nil
}
