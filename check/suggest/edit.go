package suggest

import (
	"bytes"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"gopkg.in/yaml.v3"
)

// edit writes one key of a sheet, or takes it out when the value is nil. The note becomes a comment beside it.
type edit struct {
	path, key string
	value     *yaml.Node
	note      string
}

func put(path, key, value, note string) edit {
	return edit{path, key, &yaml.Node{Kind: yaml.ScalarNode, Value: value}, note}
}

func drop(path string, keys ...string) (out []edit) {
	for _, k := range keys {
		out = append(out, edit{path: path, key: k})
	}
	return out
}

func list(words ...string) *yaml.Node {
	n := &yaml.Node{Kind: yaml.SequenceNode, Style: yaml.FlowStyle}
	for _, w := range words {
		n.Content = append(n.Content, &yaml.Node{Kind: yaml.ScalarNode, Value: w})
	}
	return n
}

// record is a mapping of key, value, key, value; an empty value is left out.
func record(pairs ...string) *yaml.Node {
	n := &yaml.Node{Kind: yaml.MappingNode, Style: yaml.FlowStyle}
	for i := 0; i+1 < len(pairs); i += 2 {
		if pairs[i+1] != "" {
			n.Content = append(n.Content, &yaml.Node{Kind: yaml.ScalarNode, Value: pairs[i]}, &yaml.Node{Kind: yaml.ScalarNode, Value: pairs[i+1]})
		}
	}
	return n
}

func parse(text []byte) (*yaml.Node, error) {
	var root yaml.Node
	if err := yaml.Unmarshal(text, &root); err != nil {
		return nil, err
	}
	if root.Kind != yaml.DocumentNode || len(root.Content) != 1 {
		return nil, fmt.Errorf("the sheet is no mapping")
	}
	return &root, nil
}

// changed is the text of the sheet with the edits made; root is left as it is. Comments stay where they stood.
func changed(root *yaml.Node, edits []edit, head string) ([]byte, error) {
	doc := clone(root)
	for i, e := range edits {
		if e.value == nil && writtenLater(edits[i:], e) {
			continue // the key keeps its place
		}
		if err := e.make(doc.Content[0]); err != nil {
			return nil, err
		}
	}
	if head != "" {
		doc.Content[0].HeadComment = strings.TrimSpace(head + "\n" + doc.HeadComment + "\n" + doc.Content[0].HeadComment)
		doc.HeadComment = ""
	}
	var b bytes.Buffer
	e := yaml.NewEncoder(&b)
	e.SetIndent(2)
	if err := e.Encode(doc); err != nil {
		return nil, err
	}
	return b.Bytes(), e.Close()
}

func writtenLater(edits []edit, e edit) bool {
	return slices.ContainsFunc(edits, func(x edit) bool { return x.path == e.path && x.key == e.key && x.value != nil })
}

func clone(n *yaml.Node) *yaml.Node {
	c := *n
	c.Content = make([]*yaml.Node, len(n.Content))
	for i, x := range n.Content {
		c.Content[i] = clone(x)
	}
	return &c
}

func (e edit) make(root *yaml.Node) error {
	at := root
	at.Style &^= yaml.FlowStyle
	for _, step := range steps(e.path) {
		next := child(at, step)
		if next == nil {
			if at.Kind != yaml.MappingNode || e.value == nil {
				if e.value == nil {
					return nil
				}
				return fmt.Errorf("the sheet has no %s to change", e.path)
			}
			next = &yaml.Node{Kind: yaml.MappingNode}
			at.Content = append(at.Content, &yaml.Node{Kind: yaml.ScalarNode, Value: step}, next)
		}
		if e.note != "" || next.Kind == yaml.SequenceNode {
			next.Style &^= yaml.FlowStyle // a comment beside a value needs a line of its own
		}
		at = next
	}
	if e.inserts() {
		return e.insertInto(root, at)
	}
	if at.Kind != yaml.MappingNode {
		return fmt.Errorf("the sheet has no mapping at %s", e.path)
	}
	e.set(at)
	return nil
}

func (e edit) set(at *yaml.Node) {
	for i := 0; i+1 < len(at.Content); i += 2 {
		if at.Content[i].Value != e.key {
			continue
		}
		if e.value == nil {
			at.Content = append(at.Content[:i:i], at.Content[i+2:]...)
			return
		}
		at.Content[i+1] = e.noted()
		return
	}
	if e.value != nil {
		at.Content = append(at.Content, &yaml.Node{Kind: yaml.ScalarNode, Value: e.key}, e.noted())
	}
}

func (e edit) noted() *yaml.Node {
	v := clone(e.value)
	if e.note != "" {
		v.LineComment = "# " + e.note
	}
	return v
}

// steps takes a path such as runs.liquid.parts[2].inlet apart; [2] is a step of its own.
func steps(path string) []string {
	return strings.FieldsFunc(strings.ReplaceAll(path, "[", ".["), func(r rune) bool { return r == '.' })
}

func child(n *yaml.Node, step string) *yaml.Node {
	if text, ok := strings.CutPrefix(step, "["); ok {
		i, err := strconv.Atoi(strings.TrimSuffix(text, "]"))
		if err != nil || n.Kind != yaml.SequenceNode || i >= len(n.Content) {
			return nil
		}
		return n.Content[i]
	}
	for i := 0; n.Kind == yaml.MappingNode && i+1 < len(n.Content); i += 2 {
		if n.Content[i].Value == step {
			return n.Content[i+1]
		}
	}
	return nil
}
