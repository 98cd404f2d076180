package inspect

import (
	"errors"
	"fmt"
	"strings"

	"gopkg.in/yaml.v3"

	"lineworthy/check/units"
)

// Reading is one filled-in place of the record.
type Reading struct {
	Item   string `json:"item"`
	Key    string `json:"key"`
	Text   string `json:"reading"`
	Expect string `json:"sheet,omitempty"` // what the sheet says
	line   int
	same   bool // as the sheet says
}

// Filled is a record that was read into the sheet.
type Filled struct {
	Day      units.Date
	Readings []Reading
	Open     []string   // what was not read or not done
	Rejected []Rejected // what the sheet has no place for
	list     *List
}

// Rejected is one thing that takes the line out of use.
type Rejected struct {
	Item   string `json:"item"`
	Says   string `json:"says"`
	Do     string `json:"do"`
	Source string `json:"source"`
}

// Merge reads the record and writes its readings into the sheet of the list. The error names every place that cannot be
// read, with its line; the list is of no use then.
func (l *List) Merge(text []byte) (*Filled, error) {
	r, err := open(text)
	if err != nil {
		return nil, err
	}
	if err := l.same(r); err != nil {
		return nil, err
	}
	f := &Filled{list: l, Readings: []Reading{}, Open: []string{}, Rejected: []Rejected{}}
	var bad []error
	if f.Day, err = units.ParseDate(r.day); err != nil || f.Day.MonthOnly {
		bad = append(bad, errors.New("day: write the day of the inspection, like 2026-11-25"))
	}
	bad = append(bad, f.items(r.items)...)
	bad = append(bad, f.tests(r.tests)...)
	bad = append(bad, f.holds(r.holds)...)
	return f, errors.Join(bad...)
}

// same says why a record belongs to another list. Its readings mean nothing here then, and are not gone into.
func (l *List) same(r record) error {
	switch {
	case r.line != l.Line:
		return fmt.Errorf("the record is of line %q, and the sheet of line %q: give the record of this sheet", r.line, l.Line)
	case r.sum == "":
		return errors.New("sheet_sha256 is missing, which says which sheet the record was printed from: print the list anew with --format yaml")
	case r.sum != l.Sum:
		return errors.New("the sheet was changed since this record was printed (its SHA-256 differs): print the list anew and read again what changed")
	}
	return nil
}

// pairs are the keys and texts of one entry of the record.
func pairs(n *yaml.Node) (id string, line int, out []Reading, err error) {
	if n.Kind != yaml.MappingNode {
		return "", n.Line, nil, fmt.Errorf("line %d: write it as id and readings", n.Line)
	}
	seen := map[string]bool{}
	for i := 0; i+1 < len(n.Content); i += 2 {
		k, v := n.Content[i], n.Content[i+1]
		if seen[k.Value] {
			return id, n.Line, nil, fmt.Errorf("line %d: %s is given twice", k.Line, k.Value)
		}
		seen[k.Value] = true
		if k.Value == "id" || k.Value == "run" {
			if id, err = name(v); err != nil {
				return id, n.Line, nil, err
			}
			continue
		}
		text, err := scalar(v)
		if err != nil {
			return id, n.Line, nil, fmt.Errorf("line %d: %s: %w", v.Line, k.Value, err)
		}
		out = append(out, Reading{Key: k.Value, Text: text, line: v.Line})
	}
	if id == "" {
		return "", n.Line, nil, fmt.Errorf("line %d: an entry without its id: write it as the form has it", n.Line)
	}
	return id, n.Line, out, nil
}

// scalar is a text, or a list of texts with commas between.
func scalar(v *yaml.Node) (string, error) {
	switch {
	case v.Kind == yaml.ScalarNode && v.Tag == "!!null":
		return "", nil
	case v.Kind == yaml.ScalarNode:
		return plain(v.Value)
	case v.Kind == yaml.SequenceNode:
		var words []string
		for _, x := range v.Content {
			if x.Kind != yaml.ScalarNode {
				return "", errors.New("write words with commas between")
			}
			words = append(words, x.Value)
		}
		return plain(strings.Join(words, ", "))
	}
	return "", errors.New("write one word or number")
}

// plain takes line ends and spaces together, as in a remark of several lines.
func plain(text string) (string, error) {
	text = strings.Join(strings.Fields(text), " ")
	return text, Printable(text)
}
