package oracle

import (
	"cmp"
	"slices"
)

// line is one line while it is judged.
type line struct {
	*Facts
	rule    *rule // whose turn it is
	found   []finding
	missing []Unknown
}

// finding is what a rule says of one subject.
type finding struct {
	rule                *rule
	subject, part, kase string
	figures             []figure // by key, numbers before words
}

// figure is one thing that a finding reports: a number with its unit in the key, or a word.
type figure struct {
	key, word string
	number    int64
	isWord    bool
}

func num(key string, n int64) figure { return figure{key: key, number: n} }
func word(key, w string) figure      { return figure{key: key, word: w, isWord: true} }

// find reports a subject that is no part of the line.
func (l *line) find(subject string, figures ...figure) {
	l.findAt(subject, "", "", figures...)
}

// findPart reports a part by its own name.
func (l *line) findPart(part string, figures ...figure) { l.findAt(part, part, "", figures...) }

// findAt reports a subject at a part, in one case of operation.
func (l *line) findAt(subject, part, kase string, figures ...figure) {
	l.found = append(l.found, finding{l.rule, subject, part, kase, figures})
}

// compare puts the worst first, then goes by rule, part, subject, case and what is reported.
func (x finding) compare(y finding) int {
	if x.rule != y.rule {
		return cmp.Or(int(x.rule.rank-y.rule.rank), cmp.Compare(x.rule.id, y.rule.id))
	}
	if by := cmp.Or(cmp.Compare(x.part, y.part), cmp.Compare(x.subject, y.subject), cmp.Compare(x.kase, y.kase)); by != 0 {
		return by
	}
	return slices.CompareFunc(x.figures, y.figures, figure.compare)
}

func (a figure) compare(b figure) int {
	return cmp.Or(cmp.Compare(a.number, b.number), cmp.Compare(a.word, b.word))
}

func (x finding) equal(y finding) bool { return x.compare(y) == 0 }

// need is a fact that a rule cannot do without.
type need struct {
	fact  string // collection.field
	known bool
}

func has[T any](fact string, v *T) need { return need{fact, v != nil} }
func said(fact, w string) need          { return need{fact, w != ""} }

// knows says whether all that is needed of a subject is known, and notes what is not. A note does not hold a line up.
func (l *line) knows(subject string, needs ...need) bool {
	all := true
	for _, n := range needs {
		if !n.known {
			all = false
			l.lack(subject, n.fact)
		}
	}
	return all
}

func (l *line) lack(subject, fact string) {
	if l.rule.rank == note {
		return
	}
	for i := range l.missing {
		if m := &l.missing[i]; m.Subject == subject && m.Fact == fact {
			return
		}
	}
	l.missing = append(l.missing, l.reason(subject, fact))
}

// reason is what the facts say of what is missing, else whom it is asked of.
func (l *line) reason(subject, fact string) Unknown {
	for _, u := range slices.Backward(l.Unknowns) {
		if u.Subject == subject && u.Fact == fact {
			return *u
		}
	}
	return Unknown{Subject: subject, Fact: fact, Why: "not stated", Ask: asks[fact]}
}

// under says whether the line names any of these laws.
func (l *line) under(laws ...string) bool {
	for _, r := range l.Line.Regimes {
		if slices.Contains(laws, r) {
			return true
		}
	}
	return false
}

// yes and no are answers that are known.
func yes(b *bool) bool { return b != nil && *b }
func no(b *bool) bool  { return b != nil && !*b }

// below and above compare a figure that is known.
func below(n *int64, limit int64) bool { return n != nil && *n < limit }
func above(n *int64, limit int64) bool { return n != nil && *n > limit }
