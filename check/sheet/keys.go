package sheet

import (
	"fmt"
	"reflect"
	"slices"
	"strings"

	"gopkg.in/yaml.v3"
)

// mapping is one mapping with known keys while it is read.
type mapping struct {
	*reader
	shape   *shape
	v       reflect.Value
	at      place
	kind    string          // kind of part; empty when it is not a part or its kind is not known
	written map[string]Pos  // keys read so far
	meant   map[string]bool // keys that a misspelt key stands for, so not missing as well
	excused bool            // a merge, refused already, may stand for any key
}

func (r *reader) mapping(n *yaml.Node, v reflect.Value, at place) {
	s := shapeOf(v.Type())
	m := &mapping{reader: r, shape: s, v: v, at: at, kind: kindOf(n, s), written: map[string]Pos{}, meant: map[string]bool{}}
	for i := 0; i+1 < len(n.Content); i += 2 {
		m.pair(n.Content[i], n.Content[i+1])
	}
	m.missing()
}

// kindOf looks ahead for the kind of a part, for its keys may come in any order.
func kindOf(n *yaml.Node, s *shape) string {
	if !s.kinded() {
		return ""
	}
	for i := 0; i+1 < len(n.Content); i += 2 {
		if word := strings.TrimSpace(n.Content[i+1].Value); n.Content[i].Value == "kind" && slices.Contains(s.byKey["kind"].words, word) {
			return word
		}
	}
	return ""
}

func (m *mapping) pair(key, n *yaml.Node) {
	if isMerge(key) || key.Kind == yaml.AliasNode {
		m.excused = true
		return
	}
	f, known := m.shape.byKey[key.Value]
	switch {
	case !known:
		m.unknown(key)
	case !f.takes(m.kind):
		m.stray(key, f)
	case m.once(key, m.written, m.at):
		m.known(key, n, f)
	}
}

func (m *mapping) known(key, n *yaml.Node, f *field) {
	at := m.at.key(f.key, posOf(key))
	if f.none != "" && n.Kind == yaml.ScalarNode && n.Value == "none" {
		m.line.Pos[at.path] = at.pos
		m.v.FieldByName(f.none).Set(reflect.ValueOf(Of[bool]{V: true, Set: true, Pos: posOf(n), Text: n.Value}))
		return
	}
	m.value(n, m.v.Field(f.index), f, at)
}

func (m *mapping) unknown(key *yaml.Node) {
	if key.Kind != yaml.ScalarNode {
		m.fault(posOf(key), m.at.path, "a list or mapping stands where a key is wanted", m.takes())
		return
	}
	hint := m.takes()
	if meant := m.nearest(key.Value, m.shape.keys(m.kind)); meant != "" {
		m.meant[meant] = true
		m.told[m.at.key(meant, Pos{}).path] = true
		hint = "did you mean " + meant + "?"
		if m.kind != "" {
			hint += " " + m.takes()
		}
	}
	m.fault(posOf(key), m.at.key(shown(key.Value), Pos{}).path, "unknown key", hint)
}

// stray refuses a key of another kind of part: it would be read by nobody.
func (m *mapping) stray(key *yaml.Node, f *field) {
	text := fmt.Sprintf("belongs to %s, not to %s", withArticle(orList(f.kinds)), withArticle(m.kind))
	m.fault(posOf(key), m.at.key(f.key, Pos{}).path, text, m.takes())
}

// takes lists the keys that may be written here.
func (m *mapping) takes() string {
	subject := "the keys here are "
	if m.kind != "" {
		subject = withArticle(m.kind) + " takes "
	}
	return subject + strings.Join(m.shape.keys(m.kind), ", ")
}

func (m *mapping) missing() {
	for i := range m.shape.fields {
		f := &m.shape.fields[i]
		if _, written := m.written[f.key]; f.required && !written && !m.meant[f.key] && !m.excused {
			at := m.at.key(f.key, m.at.pos)
			m.fault(at.pos, at.path, "missing", "write "+example(f, m.v.Field(f.index).Type()))
		}
	}
}

// once refuses a key that is written twice, for only one of the two would count.
func (r *reader) once(key *yaml.Node, written map[string]Pos, at place) bool {
	first, twice := written[key.Value]
	if twice {
		text := fmt.Sprintf("written twice, on lines %d and %d", first.Line, key.Line)
		r.fault(posOf(key), at.key(shown(key.Value), Pos{}).path, text, "keep the one that is true")
		return false
	}
	written[key.Value] = posOf(key)
	return true
}
