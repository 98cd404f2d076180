package facts

import "slices"

// Fact is what is known beforehand of one fact: for whoever writes or checks rules.
type Fact struct {
	Path     string   // collection.field
	Optional bool     // left out when it is not known
	Number   bool     // an integer in the unit its name ends in
	Word     bool     // a word, or a list of words
	Words    []string // the only words it can be; empty for any
	Ask      string   // who can supply it
}

// Find looks a fact up by the collection and the field.
func Find(collection, key string) (Fact, bool) {
	s := collections[collection]
	if s == nil {
		return Fact{}, false
	}
	f, ok := s.find(key)
	if !ok {
		return Fact{}, false
	}
	return Fact{
		Path: collection + "." + key, Optional: f.optional, Ask: f.ask, Words: slices.Clone(f.words),
		Number: f.form == integer, Word: f.form == word || f.form == wordList,
	}, true
}
