package inspect

import (
	"fmt"
	"slices"
	"strings"

	"lineworthy/check/sheet"
)

// Field is one reading that is asked for.
type Field struct {
	Key    string // of the record
	Verb   string // look, read, measure
	Label  string // what to do
	Expect string // what the sheet says; empty when it does not
	put    func(text string) error
	same   func(text string) bool          // whether the sheet says that too, in whatever words
	unlike func(text string) (says string) // why the thing is out of use when it is not as the sheet says; empty when it is not
	mend   string                          // what to do about it
	doubt  func(text string) string        // why the reading shows nothing; empty when it does
}

// The verbs, in the order of a walk.
const (
	Look    = "look"
	Read    = "read"
	Measure = "measure"
)

// leaf is a reading that has a place in the sheet.
func leaf[T any](key, verb, label string, of *sheet.Of[T], parse func(string) (T, error)) Field {
	f := Field{Key: key, Verb: verb, Label: label}
	was := *of
	if of.Set {
		f.Expect = of.Text
	}
	f.put = func(text string) error {
		v, err := parse(text)
		if err == nil {
			*of = sheet.Of[T]{V: v, Set: true, Pos: of.Pos, Text: text}
		}
		return err
	}
	f.same = func(text string) bool {
		v, err := parse(text)
		return err == nil && was.Set && alike(v, was.V)
	}
	return f
}

// list is a reading of several words, divided by commas.
func list(key, verb, label string, of *[]sheet.Of[string], allowed []string) Field {
	f := Field{Key: key, Verb: verb, Label: label, Expect: joined(*of)}
	f.same = func(text string) bool { return alike(text, f.Expect) }
	f.put = func(text string) error {
		pos := sheet.Pos{}
		if len(*of) > 0 {
			pos = (*of)[0].Pos
		}
		var out []sheet.Of[string]
		for _, w := range strings.Split(text, ",") {
			v, err := oneOf(allowed)(strings.TrimSpace(w))
			if err != nil {
				return err
			}
			out = append(out, sheet.Of[string]{V: v, Set: true, Pos: pos, Text: v})
		}
		*of = out
		return nil
	}
	return f
}

func joined(of []sheet.Of[string]) string {
	var out []string
	for _, w := range of {
		out = append(out, w.V)
	}
	return strings.Join(out, ", ")
}

// oneOf takes any text when no words are given.
func oneOf(allowed []string) func(string) (string, error) {
	return func(text string) (string, error) {
		if len(allowed) > 0 {
			text = strings.ToLower(text)
		}
		if len(allowed) > 0 && !slices.Contains(allowed, text) {
			return "", fmt.Errorf("%q is not known here: use %s", text, strings.Join(allowed, ", "))
		}
		return text, nil
	}
}

func yes(text string) (bool, error) {
	switch strings.ToLower(text) {
	case "yes", "true":
		return true, nil
	case "no", "false":
		return false, nil
	}
	return false, fmt.Errorf("%q: write yes or no", text)
}
