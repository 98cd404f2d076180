// Package oracle states once more, in plain Go, what every rule decides: a second opinion that the rules are compared
// with, and the least work that judging a line takes, which the speed of a batch is compared with. It is no part of the
// program. Each decision is written by hand from the purpose of its rule, and shares no code with the rules engine.
package oracle

import (
	"cmp"
	"encoding/json"
	"fmt"
	"slices"
)

// rank is the severity of a rule, worst first.
type rank int

const (
	stop rank = iota
	condition
	note
)

func (r rank) String() string { return [...]string{"stop", "condition", "note"}[r] }

// rule is one decision: it looks at a whole line, and says what it finds and what it lacks.
type rule struct {
	id    string // area/fault
	rank  rank
	judge func(*line)
}

// all are the rules in the order of their ids, which is the order in which missing facts are told.
var all = ordered(connection, expansion, flow, identity, inspection, isolation, marking, material, pressure, record,
	relief, seal, service, static, surge, temperature)

func ordered(areas ...[]rule) []rule {
	rules := slices.Concat(areas...)
	slices.SortFunc(rules, func(a, b rule) int { return cmp.Compare(a.id, b.id) })
	return rules
}

// Severities are all the rules that have a decision here, with how bad it is to break one.
func Severities() map[string]string {
	out := make(map[string]string, len(all))
	for _, r := range all {
		out[r.id] = r.rank.String()
	}
	return out
}

// Read reads the facts of one line. It trusts them to be well formed: an error is text that is no JSON or does not fit
// the types.
func Read(text []byte) (*Facts, error) {
	f := &Facts{}
	if err := json.Unmarshal(text, f); err != nil {
		return nil, fmt.Errorf("oracle: %w", err)
	}
	return f, nil
}

// Decide appends the answer to one line to b, in the form of lineworthy batch and without the end of the line.
func (f *Facts) Decide(b []byte, at string) []byte {
	l := line{Facts: f}
	for i := range all {
		l.rule = &all[i]
		l.rule.judge(&l)
	}
	slices.SortStableFunc(l.found, finding.compare)
	l.found = slices.CompactFunc(l.found, finding.equal) // the same said twice is said once
	return l.append(b, at)
}

// verdict: any stop is unfit, else anything missing unproven, else any condition conditional.
func (l *line) verdict() string {
	worst := note
	for _, x := range l.found {
		worst = min(worst, x.rule.rank)
	}
	switch {
	case worst == stop:
		return "unfit"
	case len(l.missing) > 0:
		return "unproven"
	case worst == condition:
		return "conditional"
	}
	return "fit"
}
