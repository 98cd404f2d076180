package sheet

import "gopkg.in/yaml.v3"

// maxDepth is twice what the deepest key of a sheet needs.
const maxDepth = 20

// structure refuses what YAML offers beyond plain lists and mappings: one value written in one place
// is what a reviewer can check, and it leaves no way to make a small file unfold into a huge one.
func (r *reader) structure(n *yaml.Node, depth int) {
	if depth > maxDepth {
		r.fault(posOf(n), "", "nested more than 20 deep", "check the indent")
		return
	}
	r.plain(n)
	for i, child := range n.Content {
		if n.Kind == yaml.MappingNode && i%2 == 1 && isMerge(n.Content[i-1]) {
			continue
		}
		r.structure(child, depth+1)
	}
}

func (r *reader) plain(n *yaml.Node) {
	const writeOut = "write the values out where they belong"
	switch {
	case n.Kind == yaml.AliasNode:
		r.fault(posOf(n), "", "the alias *"+shown(n.Value)+" is not read in a sheet", writeOut)
	case isMerge(n):
		r.fault(posOf(n), "", "the merge key << is not read in a sheet", writeOut)
	case n.Anchor != "":
		r.fault(posOf(n), "", "the anchor &"+shown(n.Anchor)+" is not read in a sheet", writeOut)
	case n.Style&yaml.TaggedStyle != 0:
		r.fault(posOf(n), "", "the tag "+shown(n.Tag)+" is not read in a sheet", "write the value alone; put text that starts with ! in quotes")
	}
}

func isMerge(n *yaml.Node) bool { return n.Kind == yaml.ScalarNode && n.Tag == "!!merge" }

func posOf(n *yaml.Node) Pos { return Pos{Line: n.Line, Col: n.Column} }
