package sequence

import (
	"bytes"
	"errors"
	"fmt"
	"io"

	"gopkg.in/yaml.v3"
)

// Step is one thing a person does.
type Step struct {
	Do       string `yaml:"do" json:"do"`                                 // one of Actions
	Run      string `yaml:"run,omitempty" json:"run,omitempty"`           // wanted for the item source
	Item     string `yaml:"item,omitempty" json:"item,omitempty"`         // part id, vessel, or source
	Pressure string `yaml:"pressure,omitempty" json:"pressure,omitempty"` // of set, e.g. 2 bar(g); none backs off, nothing is that of the sheet
	Quantity string `yaml:"quantity,omitempty" json:"quantity,omitempty"` // of transfer and flush, e.g. 900 L
	Fluid    string `yaml:"fluid,omitempty" json:"fluid,omitempty"`       // of flush: its name under fluids; may be left away when there is one
	To       string `yaml:"to,omitempty" json:"to,omitempty"`             // of flush: drain when it leaves the line before the destination
	Slowly   bool   `yaml:"slowly,omitempty" json:"slowly,omitempty"`     // of open: over seconds, not with a jerk
	Text     string `yaml:"text,omitempty" json:"text,omitempty"`         // for the reader; judged by nobody

	line int
}

// Sequence is what a file holds.
type Sequence struct {
	Line  string `yaml:"line" json:"line"`
	Steps []Step `yaml:"steps" json:"steps"`
}

// Actions are the words of do, with what each wants as item.
func Actions() []string {
	return []string{"check", "bond", "connect", "open", "close", "set", "start", "stop", "transfer", "drain", "flush", "vent", "disconnect"}
}

// UnmarshalYAML keeps the line of the file, so that a message can name it.
func (s *Step) UnmarshalYAML(n *yaml.Node) error {
	type plain Step
	if n.Kind != yaml.MappingNode {
		return fmt.Errorf("line %d: a step is written like {do: open, item: V1}", n.Line)
	}
	for i := 0; i < len(n.Content); i += 2 {
		switch k := n.Content[i]; k.Value {
		case "do", "run", "item", "pressure", "quantity", "fluid", "to", "slowly", "text":
		default:
			return fmt.Errorf("line %d: a step has no %q: use do, run, item, pressure, quantity, fluid, to, slowly, text", k.Line, k.Value)
		}
	}
	err := n.Decode((*plain)(s))
	s.line = n.Line
	return err
}

// Read reads a sequence. The error says what is wrong with the text; whether the items are on the sheet is for Play.
func Read(text []byte) (*Sequence, error) {
	var s Sequence
	d := yaml.NewDecoder(bytes.NewReader(text))
	d.KnownFields(true)
	if err := d.Decode(&s); err != nil {
		if errors.Is(err, io.EOF) {
			return nil, errors.New("the file is empty: write line and steps, as the plan command does with --format yaml")
		}
		return nil, err
	}
	if len(s.Steps) == 0 {
		return nil, errors.New("there are no steps: write them like {do: open, item: V1}")
	}
	return &s, nil
}
