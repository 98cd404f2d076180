package sheet

import (
	"slices"
	"strings"
	"unicode/utf8"

	"gopkg.in/yaml.v3"
)

const longestName = 60

// name says whether a key the author chose can stand as a name in messages and paths.
func (r *reader) name(key *yaml.Node, at place) bool {
	text := ""
	switch {
	case isMerge(key), key.Kind == yaml.AliasNode:
		return false // a fault already
	case key.Kind != yaml.ScalarNode:
		text = "a list or mapping stands where a name is wanted"
	case isEmpty(key):
		text = "a name is missing before the colon"
	case utf8.RuneCountInString(key.Value) > longestName:
		text = quote(key.Value) + " is longer than 60 characters"
	case shown(key.Value) != key.Value, strings.TrimSpace(key.Value) != key.Value:
		text = quote(key.Value) + " holds line breaks, tabs or hidden characters, or spaces at an end"
	default:
		return true
	}
	r.fault(posOf(key), at.path, text, "write a short name such as "+nameExample)
	return false
}

const nameExample = "day-tank"

// word says whether the text is one of the words the key may hold.
func (r *reader) word(text string, f *field, at place) bool {
	if len(f.words) == 0 || slices.Contains(f.words, strings.TrimSpace(text)) {
		return true
	}
	hint := "the words are " + strings.Join(f.words, ", ")
	if meant := r.nearest(text, f.words); meant != "" {
		hint = "did you mean " + meant + "? " + hint
	}
	r.fault(at.pos, at.path, quote(text)+" is not a word for "+f.key, hint)
	return false
}

func withArticle(noun string) string {
	if strings.ContainsRune("aeiou", rune(noun[0])) {
		return "an " + noun
	}
	return "a " + noun
}

func orList(words []string) string {
	last := len(words) - 1
	if last == 0 {
		return words[0]
	}
	return strings.Join(words[:last], ", ") + " or " + words[last]
}
