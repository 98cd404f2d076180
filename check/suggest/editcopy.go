package suggest

import (
	"fmt"
	"strings"

	"gopkg.in/yaml.v3"
)

// ofAnEnd are the keys that a like end shares; a document speaks only for the end it was written for.
var ofAnEnd = []string{"standard", "number", "size", "class", "gender", "hand", "facing", "locked"}

func copyEnd(root *yaml.Node, words string) (*yaml.Node, error) {
	w := strings.SplitN(words, "|", 3)
	from := find(root, w[0])
	if from == nil || from.Kind != yaml.MappingNode || len(w) != 3 {
		return nil, fmt.Errorf("the sheet has no end %s for a new part to match", w[0])
	}
	out := &yaml.Node{Kind: yaml.MappingNode}
	for _, key := range ofAnEnd {
		if v := child(from, key); v != nil {
			out.Content = append(out.Content, &yaml.Node{Kind: yaml.ScalarNode, Value: key}, plain(v))
		}
	}
	out.Content = append(out.Content, &yaml.Node{Kind: yaml.ScalarNode, Value: "material"}, &yaml.Node{Kind: yaml.ScalarNode, Value: w[2]})
	if seal := sealFor(root, from, w[1]); seal != nil {
		out.Content = append(out.Content, &yaml.Node{Kind: yaml.ScalarNode, Value: "seal"}, seal)
	}
	return out, nil
}

func sealFor(root, from *yaml.Node, other string) *yaml.Node {
	if other == "-" {
		return nil
	}
	seal := child(from, "seal")
	if seal == nil && other != "" {
		if x := find(root, other); x != nil {
			seal = child(x, "seal")
		}
	}
	if seal == nil {
		return nil
	}
	seal = clone(seal)
	dropEvidence(seal)
	seal.LineComment = "# to be shown by its data sheet"
	return seal
}

func dropEvidence(n *yaml.Node) {
	edit{key: "evidence"}.set(n)
	n.Style |= yaml.FlowStyle
	for i, x := range n.Content {
		n.Content[i] = plain(x)
	}
}

// plain is a value without the comments that were written beside the old one.
func plain(n *yaml.Node) *yaml.Node {
	c := clone(n)
	c.HeadComment, c.LineComment, c.FootComment = "", "", ""
	return c
}

func find(root *yaml.Node, path string) *yaml.Node {
	for _, step := range steps(path) {
		if root = child(root, step); root == nil {
			return nil
		}
	}
	return root
}
