package sequence

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"strings"

	"gopkg.in/yaml.v3"
)

const stepForm = "a step is written like {do: open, item: V1}"

// Read reads a sequence. The error says what is wrong with the text, in its words and with its line; whether the items are
// on the sheet is for Play.
func Read(text []byte) (*Sequence, error) {
	d := yaml.NewDecoder(bytes.NewReader(text))
	var doc, more yaml.Node
	if err := d.Decode(&doc); errors.Is(err, io.EOF) {
		return nil, errors.New("the file is empty: write line and steps, as the plan command does with --format yaml")
	} else if err != nil {
		return nil, errors.New(strings.TrimPrefix(err.Error(), "yaml: "))
	}
	if !errors.Is(d.Decode(&more), io.EOF) {
		return nil, errors.New("there is more behind ---, which would not be played: write one sequence in a file")
	}
	return read(doc.Content[0])
}

func read(root *yaml.Node) (*Sequence, error) {
	var s Sequence
	err := pairs(root, "a sequence is written with the keys line and steps", func(key string, k, v *yaml.Node) (err error) {
		switch key {
		case "line":
			s.Line, err = word(k, v)
		case "steps":
			s.Steps, err = steps(v)
		default:
			err = fmt.Errorf("line %d: a sequence has no %q: use line and steps", k.Line, key)
		}
		return err
	})
	if err == nil && len(s.Steps) == 0 {
		err = errors.New("there are no steps: write them like {do: open, item: V1}")
	}
	return &s, err
}

func steps(n *yaml.Node) (out []Step, err error) {
	if n.Tag == "!!null" {
		return nil, nil
	}
	if n.Kind != yaml.SequenceNode {
		return nil, fmt.Errorf("line %d: steps is a list: begin each step with a dash, and "+stepForm, n.Line)
	}
	for _, x := range n.Content {
		s, err := step(x)
		if err != nil {
			return nil, err
		}
		out = append(out, s)
	}
	return out, nil
}

func step(n *yaml.Node) (s Step, err error) {
	s.line = n.Line
	into := map[string]*string{
		"do": &s.Do, "run": &s.Run, "item": &s.Item, "pressure": &s.Pressure, "quantity": &s.Quantity, "fluid": &s.Fluid, "to": &s.To, "text": &s.Text,
	}
	err = pairs(n, stepForm, func(key string, k, v *yaml.Node) (err error) {
		switch at := into[key]; {
		case at != nil:
			*at, err = word(k, v)
		case key != "slowly":
			err = fmt.Errorf("line %d: a step has no %q: use do, run, item, pressure, quantity, fluid, to, slowly, text", k.Line, key)
		case v.Decode(&s.Slowly) != nil:
			err = fmt.Errorf("line %d: slowly: %q: write yes or no", k.Line, v.Value)
		}
		return err
	})
	return s, err
}

// pairs goes through the keys of a mapping, each of which may stand once.
func pairs(n *yaml.Node, form string, visit func(key string, k, v *yaml.Node) error) error {
	at := n.Line
	if n.Kind == yaml.AliasNode {
		n = n.Alias
	}
	if n.Kind != yaml.MappingNode {
		return fmt.Errorf("line %d: %s", at, form)
	}
	seen := map[string]bool{}
	for i := 0; i < len(n.Content); i += 2 {
		k, v := n.Content[i], n.Content[i+1]
		if seen[k.Value] {
			return fmt.Errorf("line %d: %s is written twice: one of the two would be passed over", k.Line, k.Value)
		}
		seen[k.Value] = true
		if err := visit(k.Value, k, v); err != nil {
			return err
		}
	}
	return nil
}

// word is a plain value; nothing written is no value.
func word(k, v *yaml.Node) (string, error) {
	if v.Kind != yaml.ScalarNode {
		return "", fmt.Errorf("line %d: %s: write one word or quantity, not a list", k.Line, k.Value)
	}
	if v.Tag == "!!null" {
		return "", nil
	}
	return v.Value, nil
}
