package catalog

import (
	"slices"
	"strings"
)

// need is a word that only does something if a fluid carries it.
type need struct {
	at   spot
	word string
}

// word checks words of which the program knows a closed list.
func (l *linter) word(s spot) {
	at, w := s.owner+"."+s.key, s.node.Value
	known, ok := words[at]
	id, oneFluid := strings.CutPrefix(w, "fluid:")
	switch {
	case !ok:
	case oneFluid:
		l.refer(s, Fluids, id)
	case !slices.Contains(known, w):
		l.fault(s, "%s is %q; want one of %s", s.key, w, strings.Join(known, ", "))
	}
	switch at {
	case "fluidFile.services":
		l.offered[w] = true
	case "Exclusion.service":
		l.needed = append(l.needed, need{s, w})
	}
}

// deadWords finds exclusions that no fluid can ever meet: they look like a safeguard and are none. Bars on
// constituents are left out, because a site may add the material.
func (l *linter) deadWords() {
	for _, n := range l.needed {
		if !l.offered[n.word] && !slices.Contains(formWords, n.word) && !strings.HasPrefix(n.word, "fluid:") {
			l.fault(n.at, "no fluid of the catalog is used as %q, so this never applies", n.word)
		}
	}
}
