package sheet

import (
	"fmt"
	"reflect"
	"strings"

	"gopkg.in/yaml.v3"
)

// reader fills a Line from YAML nodes and gathers every fault on the way.
type reader struct {
	file   string
	line   *Line
	faults Problems
	told   map[string]bool // paths with a fault at or below them, so that one slip is told once
}

// place is where a value stands in the sheet and in the file.
type place struct {
	path string
	pos  Pos
}

func (p place) key(key string, pos Pos) place {
	if p.path != "" {
		key = p.path + "." + key
	}
	return place{key, pos}
}

func (r *reader) fault(pos Pos, path, text, hint string) {
	r.faults = append(r.faults, Problem{r.file, pos.Line, pos.Col, path, text, hint})
	for end := len(path); end > 0; end = strings.LastIndexByte(path[:end], '.') {
		r.told[path[:end]] = true
	}
}

func (r *reader) sheet(root *yaml.Node) {
	r.structure(root, 1)
	sheet := &field{key: "the sheet", form: objectForm, required: true}
	r.value(root, reflect.ValueOf(r.line).Elem(), sheet, place{"", Pos{1, 1}})
	r.references()
	r.bounds()
}

// value reads one node into v. Aliases are faults already and hold nothing to read.
func (r *reader) value(n *yaml.Node, v reflect.Value, f *field, at place) {
	r.line.Pos[at.path] = at.pos
	if n.Kind == yaml.AliasNode {
		return
	}
	if isEmpty(n) {
		r.empty(v, f, at)
		return
	}
	if v.Kind() == reflect.Pointer {
		v.Set(reflect.New(v.Type().Elem()))
		v = v.Elem()
	}
	switch f.form {
	case leafForm:
		r.leaf(n, v, f, at)
	case objectForm:
		r.object(n, v, f, at)
	case namesForm:
		r.names(n, v, f, at)
	case listForm:
		r.list(n, v, f, at)
	}
}

func (r *reader) empty(v reflect.Value, f *field, at place) {
	hint := "leave the key out if it is not known"
	if f.required {
		hint = "write " + example(f, v.Type())
	}
	r.fault(at.pos, at.path, "nothing written after "+f.key, hint)
}

// isEmpty finds a key without a value: written so, as ~ or null, or as empty quotes.
func isEmpty(n *yaml.Node) bool {
	return n.Kind == yaml.ScalarNode && (n.Tag == "!!null" || strings.TrimSpace(n.Value) == "")
}

func (r *reader) leaf(n *yaml.Node, v reflect.Value, f *field, at place) {
	if n.Kind != yaml.ScalarNode {
		r.unwanted(n, v, f, at)
		return
	}
	at.pos = posOf(n)
	r.line.Pos[at.path] = at.pos
	if strings.ContainsFunc(n.Value, hidden) {
		r.fault(at.pos, at.path, quote(n.Value)+" holds a hidden control character", "write plain text")
		return
	}
	if !r.word(n.Value, f, at) {
		return
	}
	if err := v.Addr().Interface().(leaf).read(n.Value, at.pos, f); err != nil {
		r.fault(at.pos, at.path, shownError(err), "")
	}
}

// shownError keeps a message on its one line, whatever the author typed.
func shownError(err error) string { return strings.Join(strings.Fields(err.Error()), " ") }

func (r *reader) object(n *yaml.Node, v reflect.Value, f *field, at place) {
	switch {
	case n.Kind == yaml.MappingNode:
		r.mapping(n, v, at)
	case n.Kind == yaml.ScalarNode && f.scalar != "":
		short := shapeOf(v.Type()).byKey[f.scalar]
		r.value(n, v.Field(short.index), short, at.key(short.key, posOf(n)))
	default:
		r.unwanted(n, v, f, at)
	}
}

func (r *reader) names(n *yaml.Node, v reflect.Value, f *field, at place) {
	if n.Kind != yaml.MappingNode || f.required && len(n.Content) == 0 {
		r.unwanted(n, v, f, at)
		return
	}
	v.Set(reflect.MakeSlice(v.Type(), 0, len(n.Content)/2))
	written := map[string]Pos{}
	for i := 0; i+1 < len(n.Content); i += 2 {
		if key := n.Content[i]; r.name(key, at) && r.once(key, written, at) {
			r.entry(key, n.Content[i+1], v, at)
		}
	}
}

func (r *reader) entry(key, n *yaml.Node, v reflect.Value, at place) {
	item := reflect.New(v.Type().Elem())
	target := reflect.ValueOf(item.Interface().(named).entry(key.Value, posOf(key))).Elem()
	f := &field{key: key.Value, form: formOf(target.Type())}
	r.value(n, target, f, at.key(shown(key.Value), posOf(key)))
	v.Set(reflect.Append(v, item.Elem()))
}

// list reads a list, or the one item of a list that may be written without its dash.
func (r *reader) list(n *yaml.Node, v reflect.Value, f *field, at place) {
	switch {
	case n.Kind == yaml.MappingNode && f.single:
		r.alone(n, v, f, at)
		return
	case n.Kind != yaml.SequenceNode, f.required && len(n.Content) == 0:
		r.unwanted(n, v, f, at)
		return
	}
	v.Set(reflect.MakeSlice(v.Type(), len(n.Content), len(n.Content)))
	item := f.item(v)
	for i, content := range n.Content {
		r.value(content, v.Index(i), item, place{fmt.Sprintf("%s[%d]", at.path, i), posOf(content)})
	}
}

// alone reads the one item that stands for a list of one; its path has no number.
func (r *reader) alone(n *yaml.Node, v reflect.Value, f *field, at place) {
	v.Set(reflect.MakeSlice(v.Type(), 1, 1))
	r.value(n, v.Index(0), f.item(v), at)
}

// item is the field of one item of a list.
func (f *field) item(list reflect.Value) *field {
	item := *f
	item.form, item.required = formOf(list.Type().Elem()), false
	return &item
}
