package facts

import (
	"fmt"
	"reflect"
	"slices"
	"strings"
)

// reader is the place of a field in its struct.
type reader int

// condition is one line of a scope: a subject is judged only where all hold.
type condition struct {
	not    bool
	any    []string // words that satisfy it; none for yes or no
	ofLine bool
	form   form
	read   reader
}

// conditionOf reads "needs_seal", "!open_point", "kind=relief|valve", "line.carries_toxic" or "regime=29 CFR 1910.111".
func conditionOf(s *shape, text string) (condition, error) {
	key, value, given := strings.Cut(text, "=")
	var c condition
	key, c.not = strings.CutPrefix(key, "!")
	if given {
		c.any = strings.Split(value, "|")
	}
	if given && key == "regime" {
		key = "line.regimes"
	}
	if rest, ok := strings.CutPrefix(key, "line."); ok {
		key, c.ofLine, s = rest, true, collections["line"]
	}
	f, ok := s.find(key)
	if !ok {
		return c, fmt.Errorf("scope %q: %s has no fact %q, it has %s", text, s.name, key, s.keys(false))
	}
	c.form, c.read = f.form, reader(f.index)
	return c, c.fits(text, f, given)
}

func (c condition) fits(text string, f field, given bool) error {
	switch {
	case f.optional:
		return fmt.Errorf("scope %q may be unknown: a scope must be decidable, put it in needs", text)
	case given && f.form != word && f.form != wordList:
		return fmt.Errorf("scope %q: %s is not a word, write %q or %q", text, f.key, f.key, "!"+f.key)
	case !given && f.form != answer:
		return fmt.Errorf("scope %q: %s is not a yes or no, write %q", text, f.key, f.key+"=word|word")
	}
	for _, w := range c.any {
		if len(f.words) > 0 && !slices.Contains(f.words, w) {
			return fmt.Errorf("scope %q: %s is never %q, it is one of %s", text, f.key, w, strings.Join(f.words, ", "))
		}
	}
	return nil
}

// holds says whether the condition is true of a subject (or of the line).
func (c condition) holds(v reflect.Value) bool {
	v = v.Field(int(c.read))
	var ok bool
	switch c.form {
	case answer:
		ok = v.Bool()
	case word:
		ok = slices.Contains(c.any, v.String())
	case wordList:
		ok = slices.ContainsFunc(v.Interface().([]string), func(s string) bool { return slices.Contains(c.any, s) })
	}
	return ok != c.not
}
