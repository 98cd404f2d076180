package suggest

import (
	"fmt"
	"strconv"
	"strings"

	"gopkg.in/yaml.v3"
)

// endCopy asks for an end like the one at path, of another material, when the part is written. The seal comes with it;
// where it has none, from the end at other; a dash there means no seal.
type endCopy struct{ path, other, material string }

// endTag marks an end that is still to be copied: what the other changes make of the neighbour is then copied too.
const endTag = "!end"

// insert puts parts into a run before the part at the index.
func insert(run string, at int, parts *yaml.Node) edit {
	return edit{path: "runs." + run + ".parts", key: "[" + strconv.Itoa(at) + "]", value: parts}
}

func (e edit) inserts() bool { return strings.HasPrefix(e.key, "[") }

// at is the index before which the edit inserts.
func (e edit) at() int {
	i, err := strconv.Atoi(strings.Trim(e.key, "[]"))
	if err != nil {
		return -1
	}
	return i
}

// noted is a mapping in block style in which what is not a matter of choice carries a note.
func noted(pairs []string) *yaml.Node {
	n := &yaml.Node{Kind: yaml.MappingNode}
	for i := 0; i+1 < len(pairs); i += 2 {
		v := &yaml.Node{Kind: yaml.ScalarNode, Value: pairs[i+1]}
		if words, ok := strings.CutPrefix(pairs[i+1], "["); ok {
			v = list(strings.Split(strings.TrimSuffix(words, "]"), ", ")...)
		}
		if note := notes[pairs[i]]; note != "" {
			v.LineComment = "# " + note
		}
		n.Content = append(n.Content, &yaml.Node{Kind: yaml.ScalarNode, Value: pairs[i]}, v)
	}
	return n
}

var notes = map[string]string{
	"material": byPlate, "wetted": byReliefPaper, "rated": byPlate, "evidence": "to be obtained", "lowest": byPlate, "highest": byPlate, "set": byReliefPaper,
	"area": byReliefPaper, "kdr": byReliefPaper, "isolatable": "to be fitted so", "tested": "to be done and recorded",
	"test_interval": "to be set by the site", "bonded": "to be done and measured", "oxygen_clean": "to be shown by its certificate",
}

// withEnds adds two ends that are copied when the part is written.
func withEnds(n *yaml.Node, key1 string, end1 endCopy, key2 string, end2 endCopy) *yaml.Node {
	for _, x := range []struct {
		key string
		end endCopy
	}{{key1, end1}, {key2, end2}} {
		words := strings.Join([]string{x.end.path, x.end.other, x.end.material}, "|")
		n.Content = append(n.Content, &yaml.Node{Kind: yaml.ScalarNode, Value: x.key}, &yaml.Node{Kind: yaml.ScalarNode, Tag: endTag, Value: words})
	}
	return n
}

// insertInto writes the new parts into the list, with their ends copied from the sheet as it now is.
func (e edit) insertInto(root, at *yaml.Node) error {
	if at.Kind != yaml.SequenceNode || e.at() < 0 || e.at() > len(at.Content) {
		return fmt.Errorf("the sheet has no %s%s to put a part before", e.path, e.key)
	}
	parts := clone(e.value)
	for _, p := range parts.Content {
		for i := 1; i < len(p.Content); i += 2 {
			if p.Content[i].Tag != endTag {
				continue
			}
			end, err := copyEnd(root, p.Content[i].Value)
			if err != nil {
				return err
			}
			p.Content[i] = end
		}
	}
	at.Content = append(at.Content[:e.at():e.at()], append(parts.Content, at.Content[e.at():]...)...)
	return nil
}
