package inspect

import (
	"bytes"
	"errors"
	"fmt"
	"io"
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
}

// record is the file as it is written.
type record struct {
	Line  string      `yaml:"line"`
	Sum   string      `yaml:"sheet_sha256"`
	Day   string      `yaml:"day"`
	Items []yaml.Node `yaml:"items"`
	Tests []yaml.Node `yaml:"leak_tests"`
	Holds []yaml.Node `yaml:"holds"`
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
	var r record
	d := yaml.NewDecoder(bytes.NewReader(text))
	d.KnownFields(true)
	if err := d.Decode(&r); errors.Is(err, io.EOF) {
		return nil, errors.New("the record is empty: write one with --format yaml")
	} else if err != nil {
		return nil, err
	}
	f := &Filled{list: l, Readings: []Reading{}, Open: []string{}, Rejected: []Rejected{}}
	var bad []error
	if r.Line != l.Line {
		bad = append(bad, fmt.Errorf("the record is of line %q, and the sheet of line %q", r.Line, l.Line))
	}
	if r.Sum != l.Sum {
		bad = append(bad, errors.New("the sheet was changed since this record was printed (its SHA-256 differs): print the list anew and read again what changed"))
	}
	var err error
	if f.Day, err = units.ParseDate(r.Day); err != nil || f.Day.MonthOnly {
		bad = append(bad, errors.New("day: write the day of the inspection, like 2026-11-25"))
	}
	bad = append(bad, f.items(r.Items)...)
	bad = append(bad, f.tests(r.Tests)...)
	bad = append(bad, f.holds(r.Holds)...)
	return f, errors.Join(bad...)
}

// pairs are the keys and texts of one entry of the record.
func pairs(n yaml.Node) (id string, line int, out []Reading, err error) {
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
		text, err := scalar(v)
		if err != nil {
			return id, n.Line, nil, fmt.Errorf("line %d: %s: %w", v.Line, k.Value, err)
		}
		if k.Value == "id" || k.Value == "run" {
			id = text
			continue
		}
		out = append(out, Reading{Key: k.Value, Text: text, line: v.Line})
	}
	return id, n.Line, out, nil
}

// scalar is a text, or a list of texts with commas between.
func scalar(v *yaml.Node) (string, error) {
	switch {
	case v.Kind == yaml.ScalarNode && v.Tag == "!!null":
		return "", nil
	case v.Kind == yaml.ScalarNode:
		return strings.TrimSpace(v.Value), nil
	case v.Kind == yaml.SequenceNode:
		var words []string
		for _, x := range v.Content {
			if x.Kind != yaml.ScalarNode {
				return "", errors.New("write words with commas between")
			}
			words = append(words, x.Value)
		}
		return strings.Join(words, ", "), nil
	}
	return "", errors.New("write one word or number")
}
