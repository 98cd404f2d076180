package rules

import (
	"cmp"
	"regexp"
	"slices"
	"strconv"
	"strings"
)

// Citation is one place in a document with the rules that rest on it.
type Citation struct {
	Basis
	Rules []string `json:"rules"` // sorted
}

// Law is the index of the rules by paragraph: every place that a rule cites, by document and clause in the order a
// reader looks for. Common practice, which is no document, is left out.
func (s Set) Law() []Citation {
	at := map[Basis]*Citation{}
	for _, r := range s.rules {
		for _, b := range r.Basis {
			if b.Standing == "practice" {
				continue
			}
			if at[b] == nil {
				at[b] = &Citation{Basis: b}
			}
			at[b].Rules = append(at[b].Rules, r.ID)
		}
	}
	var out []Citation
	for _, c := range at {
		out = append(out, *c)
	}
	slices.SortFunc(out, func(a, b Citation) int {
		return cmp.Or(natural(a.Document, b.Document), natural(a.Clause, b.Clause), cmp.Compare(a.Edition, b.Edition), cmp.Compare(a.Standing, b.Standing))
	})
	return out
}

var runOfDigits = regexp.MustCompile(`\d+|\D+`)

// natural compares text with its numbers by value: 46 CFR 38 stands before 46 CFR 151.
func natural(a, b string) int {
	return slices.CompareFunc(runOfDigits.FindAllString(strings.ToLower(a), -1), runOfDigits.FindAllString(strings.ToLower(b), -1),
		func(x, y string) int {
			n, errX := strconv.Atoi(x)
			m, errY := strconv.Atoi(y)
			if errX == nil && errY == nil {
				return cmp.Compare(n, m)
			}
			return cmp.Compare(x, y)
		})
}
