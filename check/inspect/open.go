package inspect

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"gopkg.in/yaml.v3"
)

// record is the file as it is written.
type record struct {
	line, sum, day      string
	items, tests, holds []*yaml.Node
}

var recordKeys = []string{"line", "sheet_sha256", "day", "items", "leak_tests", "holds"}

// open takes the one document of the file apart. What stands in a second one would be passed over, so there is none.
func open(text []byte) (r record, err error) {
	var doc, more yaml.Node
	d := yaml.NewDecoder(bytes.NewReader(text))
	switch err := d.Decode(&doc); {
	case errors.Is(err, io.EOF):
		return r, errors.New("the record is empty: write one with --format yaml")
	case err != nil && !utf8.Valid(text):
		return r, errors.New("it holds bytes that are no UTF-8 text: save it as UTF-8 and give it again")
	case err != nil:
		return r, fmt.Errorf("it is no YAML: %s", strings.TrimPrefix(err.Error(), "yaml: "))
	}
	if err := d.Decode(&more); !errors.Is(err, io.EOF) {
		return r, errors.New("something follows the record, from a line --- on: a file holds one record, so put it into a file of its own")
	}
	if doc.Content[0].Kind != yaml.MappingNode {
		return r, errors.New("it is no inspection record: write one with --format yaml")
	}
	return r, r.take(doc.Content[0].Content)
}

func (r *record) take(pairs []*yaml.Node) error {
	var bad []error
	seen := map[string]bool{}
	for i := 0; i+1 < len(pairs); i += 2 {
		k, v := pairs[i], pairs[i+1]
		switch {
		case !slices.Contains(recordKeys, k.Value):
			bad = append(bad, fmt.Errorf("line %d: a record has no %q: use %s", k.Line, k.Value, strings.Join(recordKeys, ", ")))
		case seen[k.Value]:
			bad = append(bad, fmt.Errorf("line %d: %s is given twice", k.Line, k.Value))
		default:
			bad = append(bad, r.put(k.Value, v))
		}
		seen[k.Value] = true
	}
	return errors.Join(bad...)
}

func (r *record) put(key string, v *yaml.Node) (err error) {
	words := map[string]*string{"line": &r.line, "sheet_sha256": &r.sum, "day": &r.day}
	lists := map[string]*[]*yaml.Node{"items": &r.items, "leak_tests": &r.tests, "holds": &r.holds}
	if at := words[key]; at != nil {
		*at, err = name(v)
		return err
	}
	if v.Kind != yaml.SequenceNode && v.Tag != "!!null" {
		return fmt.Errorf("line %d: %s: write it as a list, as the form has it", v.Line, key)
	}
	*lists[key] = v.Content
	return nil
}

// name is a text exactly as it is written, for it has to be that of the list.
func name(v *yaml.Node) (string, error) {
	switch {
	case v.Kind != yaml.ScalarNode:
		return "", fmt.Errorf("line %d: write one word here, as the form has it", v.Line)
	case v.Tag == "!!null":
		return "", nil
	}
	return v.Value, nil
}

const longest = 500 // characters of one reading or name

// Printable keeps out of a record what a terminal would act on and what nobody would read.
func Printable(text string) error {
	switch {
	case !utf8.ValidString(text) || strings.ContainsFunc(text, func(r rune) bool { return !unicode.IsGraphic(r) }):
		return errors.New("it holds characters that cannot be printed")
	case utf8.RuneCountInString(text) > longest:
		return fmt.Errorf("it is longer than %d characters", longest)
	}
	return nil
}
