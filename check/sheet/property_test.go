package sheet

import (
	"reflect"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gopkg.in/yaml.v3"
	"pgregory.net/rapid"
)

// written key of a sheet: its node, the mapping it stands in and what the sheet knows of it.
type writtenKey struct {
	parent *yaml.Node
	index  int // of the key in the parent's content
	field  field
	known  []string
}

func (k writtenKey) node() *yaml.Node { return k.parent.Content[k.index] }

// writtenKeys walks node and type side by side, apart from the reader under test.
func writtenKeys(n *yaml.Node, t reflect.Type) (keys []writtenKey) {
	for t.Kind() == reflect.Pointer {
		t = t.Elem()
	}
	switch {
	case n.Kind == yaml.ScalarNode:
	case n.Kind == yaml.SequenceNode:
		for _, item := range n.Content {
			keys = append(keys, writtenKeys(item, t.Elem())...)
		}
	case t.Kind() == reflect.Slice && formOf(t) == namesForm:
		value, _ := t.Elem().FieldByName("V")
		for i := 1; i < len(n.Content); i += 2 {
			keys = append(keys, writtenKeys(n.Content[i], value.Type)...)
		}
	case t.Kind() == reflect.Slice:
		keys = writtenKeys(n, t.Elem())
	default:
		keys = keysOfObject(n, t)
	}
	return keys
}

func keysOfObject(n *yaml.Node, t reflect.Type) (keys []writtenKey) {
	s := shapeOf(t)
	for i := 0; i < len(n.Content); i += 2 {
		f := s.byKey[n.Content[i].Value]
		keys = append(keys, writtenKey{n, i, *f, s.keys("")})
		keys = append(keys, writtenKeys(n.Content[i+1], t.Field(f.index).Type)...)
	}
	return keys
}

func templateKeys(t require.TestingT) (*yaml.Node, []writtenKey) {
	root, problem := document("t.yaml", Template())
	require.Nil(t, problem)
	return root, writtenKeys(root, reflect.TypeFor[Line]())
}

// misspell changes, drops, doubles or swaps one letter after the first.
func misspell(t *rapid.T, key string) string {
	at := rapid.IntRange(1, len(key)-1).Draw(t, "at")
	switch rapid.IntRange(0, 3).Draw(t, "slip") {
	case 0:
		return key[:at] + "q" + key[at+1:]
	case 1:
		return key[:at] + key[at+1:]
	case 2:
		return key[:at] + key[at:at+1] + key[at:]
	}
	return key[:at-1] + key[at:at+1] + key[at-1:at] + key[at+1:]
}

// Any one key misspelt is a fault at that key which names the right one.
func TestMisspeltKey(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		_, keys := templateKeys(t)
		key := rapid.SampledFrom(keys).Draw(t, "key")
		typo := misspell(t, key.field.key)
		if len(key.field.key) < 3 || slices.Contains(key.known, typo) {
			t.Skip("too short to be recognised, or another key")
		}
		rows := strings.Split(string(Template()), "\n")
		row, column := []rune(rows[key.node().Line-1]), key.node().Column-1
		rows[key.node().Line-1] = string(row[:column]) + typo + string(row[column+len(key.field.key):])
		problems := faults(t, []byte(strings.Join(rows, "\n")))
		at := slices.IndexFunc(problems, func(p Problem) bool { return p.Line == key.node().Line && p.Col == column+1 })
		require.GreaterOrEqual(t, at, 0, "a fault at the key itself in\n%s", problems)
		assert.Contains(t, problems[at].Hint, "did you mean "+key.field.key+"?")
	})
}

// unreferenced keys can go without another place of the template pointing into nothing.
func unreferenced(key writtenKey) bool {
	return !slices.Contains([]string{"vessels", "points", "vessel", "cylinder"}, key.field.key)
}

// Any optional key may be left out; any needed one is missed by name.
func TestKeyLeftOut(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		root, keys := templateKeys(t)
		key := rapid.SampledFrom(keys).Draw(t, "key")
		key.parent.Content = slices.Delete(key.parent.Content, key.index, key.index+2)
		text, err := yaml.Marshal(root)
		require.NoError(t, err)
		_, err = Parse("t.yaml", text)
		switch {
		case key.field.required:
			assert.ErrorContains(t, err, key.field.key+": missing")
		case unreferenced(key):
			assert.NoError(t, err)
		}
	})
}

// The order of keys means nothing.
func TestKeyOrder(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		root, keys := templateKeys(t)
		mapping := rapid.SampledFrom(keys).Draw(t, "mapping").parent
		for i := 0; i < len(mapping.Content)/2; i += 2 {
			j := len(mapping.Content) - 2 - i
			mapping.Content[i], mapping.Content[j] = mapping.Content[j], mapping.Content[i]
			mapping.Content[i+1], mapping.Content[j+1] = mapping.Content[j+1], mapping.Content[i+1]
		}
		text, err := yaml.Marshal(root)
		require.NoError(t, err)
		_, err = Parse("t.yaml", text)
		assert.NoError(t, err)
	})
}
