package catalog

import (
	"cmp"
	"slices"
	"strings"
	"unicode"
)

// Rank says how well a name fits what was typed; lower is better.
type Rank int

// The ranks, best first.
const (
	Exact  Rank = iota // the whole id, name, CAS number, UN number or standard
	Prefix             // the start of one
	Word               // every typed word starts a word of it
	Near               // a few letters off
)

// String is the rank as a person reads it.
func (r Rank) String() string {
	return [...]string{"exact", "starts with it", "has the words", "spelled nearly so"}[r]
}

// Match is one entry that a search found.
type Match struct {
	Kind, ID string
	By       string // the name that fits, in the form in which names are compared
	Rank     Rank
}

// shortest is the length below which a typed word must be a whole word: two letters start half the catalog.
const shortest = 3

// Search returns the entries of every kind whose id, name, other name, CAS number, UN number, standard or
// document fits, best first. Near misspellings are returned only if nothing fits better.
func (c *Catalog) Search(typed string) []Match {
	key := normal(typed)
	terms := wordsIn(key)
	if len(terms) == 0 {
		return nil
	}
	found := c.best(func(n named) (Rank, bool) { return fit(key, terms, n.name) })
	if len(found) == 0 {
		found = c.Nearly(typed, misspelt(key))
	}
	return found
}

// Nearly returns the entries of every kind with a name at most so many letters off, nearest first. A number
// has no near ones and is none: one digit further is another substance.
func (c *Catalog) Nearly(typed string, letters int) []Match {
	key := normal(typed)
	if bareNumber.MatchString(key) || len(key) > longest {
		return nil
	}
	steps := map[string]int{}
	found := c.best(func(n named) (Rank, bool) {
		if bareNumber.MatchString(n.name) {
			return Near, false
		}
		d := distance(key, n.name)
		at := n.kind + "/" + n.id
		if old, ok := steps[at]; !ok || d < old {
			steps[at] = d
		}
		return Near, d <= letters
	})
	slices.SortStableFunc(found, func(a, b Match) int { return steps[a.Kind+"/"+a.ID] - steps[b.Kind+"/"+b.ID] })
	return found
}

// misspelt is how many wrong letters still look like a slip of the finger.
func misspelt(key string) int { return min(2, (len([]rune(key))+1)/4) }

// best keeps for every entry the name that fits best.
func (c *Catalog) best(fits func(named) (Rank, bool)) []Match {
	at := map[entry]int{}
	var found []Match
	for _, kind := range Kinds {
		for _, n := range c.namesOfKind(kind) {
			rank, ok := fits(n)
			if !ok {
				continue
			}
			m := Match{n.kind, n.id, n.name, rank}
			i, again := at[entry{n.kind, n.id}]
			switch {
			case !again:
				at[entry{n.kind, n.id}] = len(found)
				found = append(found, m)
			case better(m, found[i]):
				found[i] = m
			}
		}
	}
	slices.SortStableFunc(found, func(a, b Match) int {
		return cmp.Or(int(a.Rank-b.Rank), slices.Index(Kinds, a.Kind)-slices.Index(Kinds, b.Kind), strings.Compare(a.ID, b.ID))
	})
	return found
}

func better(a, b Match) bool {
	return cmp.Or(int(a.Rank-b.Rank), len(a.By)-len(b.By), strings.Compare(a.By, b.By)) < 0
}

func fit(key string, terms []string, name string) (Rank, bool) {
	switch {
	case key == name:
		return Exact, true
	case len(key) >= shortest && strings.HasPrefix(name, key):
		return Prefix, true
	}
	words := wordsIn(name)
	for _, t := range terms {
		if !slices.ContainsFunc(words, func(w string) bool { return w == t || len(t) >= shortest && strings.HasPrefix(w, t) }) {
			return 0, false
		}
	}
	return Word, true
}

// wordsIn splits a name at everything that is neither letter nor digit, but keeps decimals like 1.4404 whole.
func wordsIn(name string) []string {
	return strings.FieldsFunc(name, func(r rune) bool { return r != '.' && !unicode.IsLetter(r) && !unicode.IsDigit(r) })
}

// Collective reports whether the name is a UN number that stands for many substances and so names none of them.
func Collective(name string) bool {
	return slices.Contains(collective, strings.TrimPrefix(normal(name), "un-"))
}

// Title is the name of the entry as its file writes it; for a document its title. The error is that of the look-up.
func (c *Catalog) Title(kind, id string) (string, error) {
	switch kind {
	case Fluids:
		return title(c.Fluid(id))(func(f *Fluid) string { return f.Name })
	case Materials:
		return title(c.Material(id))(func(m *Material) string { return m.Name })
	case Hoses:
		return title(c.Hose(id))(func(h *Hose) string { return h.Name })
	case Connections:
		return title(c.Connection(id))(func(k *Connection) string { return k.Name })
	case Seals:
		return title(c.Seal(id))(func(s *Seal) string { return s.Name })
	}
	return title(c.Source(id))(func(s *Source) string { return s.Document })
}

func title[T any](v *T, err error) func(func(*T) string) (string, error) {
	return func(name func(*T) string) (string, error) {
		if err != nil {
			return "", err
		}
		return name(v), nil
	}
}
