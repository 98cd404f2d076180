package sheet

import (
	"bytes"
	"encoding/json"
	"reflect"
	"slices"
	"strings"
)

// schemaNode is one JSON Schema; the encoder sorts its keywords.
type schemaNode map[string]any

// JSONSchema is the JSON Schema (draft 2020-12) of a line sheet, by which an editor completes keys and words and flags
// slips. It knows the form of a value, not whether the sheet makes sense: that is for the reader. It is worked out from
// the tags that the reader obeys, so that the two cannot part ways; sheet.schema.json is a copy. An error is a fault in
// the tool.
func JSONSchema() ([]byte, error) {
	defs := schemaNode{}
	root := defineObject(reflect.TypeFor[Line](), defs)
	root["$schema"] = "https://json-schema.org/draft/2020-12/schema"
	root["title"] = "line sheet"
	root["description"] = "One pressurised transfer line, from where the fluid starts to where it ends."
	root["$defs"] = defs
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	err := e.Encode(root)
	return b.Bytes(), err
}

// defineObject is the schema of a mapping with known keys.
func defineObject(t reflect.Type, defs schemaNode) schemaNode {
	s := shapeOf(t)
	properties, required := schemaNode{}, []string{}
	for i := range s.fields {
		f := &s.fields[i]
		property := valueNode(f, t.Field(f.index).Type, defs)
		if note := schemaNotes[t.Name()+"."+f.key]; note != "" {
			property["description"] = note
		}
		properties[f.key] = property
		if f.required {
			required = append(required, f.key)
		}
	}
	n := schemaNode{"type": "object", "properties": properties, "additionalProperties": false}
	if len(required) > 0 {
		n["required"] = required
	}
	if s.kinded() {
		n["allOf"] = kindRules(s)
	}
	if t == reflect.TypeFor[Source]() {
		n["oneOf"] = []schemaNode{{"required": []string{"vessel"}}, {"required": []string{"cylinder"}}, {"required": []string{"supply"}}}
	}
	return n
}

// kindRules forbid, for each kind of part, the keys of the other kinds.
func kindRules(s *shape) []schemaNode {
	var rules []schemaNode
	for _, kind := range s.byKey["kind"].words {
		strange := schemaNode{}
		for _, f := range s.fields {
			if !f.takes(kind) {
				strange[f.key] = false
			}
		}
		rules = append(rules, schemaNode{
			"if":   schemaNode{"properties": schemaNode{"kind": schemaNode{"const": kind}}, "required": []string{"kind"}},
			"then": schemaNode{"properties": strange},
		})
	}
	return rules
}

func valueNode(f *field, t reflect.Type, defs schemaNode) schemaNode {
	if t.Kind() == reflect.Pointer {
		t = t.Elem()
	}
	switch f.form {
	case objectForm:
		n := refTo(t, defs)
		if f.scalar != "" {
			return schemaNode{"anyOf": []schemaNode{{"type": "string", "pattern": someText}, n}}
		}
		return n
	case namesForm:
		v, _ := t.Elem().FieldByName("V")
		return schemaNode{
			"type": "object", "additionalProperties": refTo(v.Type, defs), "propertyNames": schemaNode{"maxLength": longestName, "minLength": 1},
		}
	case listForm:
		return listNode(f, t, defs)
	}
	return leafNode(f, t)
}

func listNode(f *field, t reflect.Type, defs schemaNode) schemaNode {
	item := *f
	item.form = formOf(t.Elem())
	items := valueNode(&item, t.Elem(), defs)
	list := schemaNode{"type": "array", "items": items}
	if f.required {
		list["minItems"] = 1
	}
	choices := []schemaNode{list}
	if f.single {
		choices = append(choices, items)
	}
	if f.none != "" {
		choices = append(choices, schemaNode{"const": "none"})
	}
	if len(choices) == 1 {
		return list
	}
	return schemaNode{"anyOf": choices}
}

func refTo(t reflect.Type, defs schemaNode) schemaNode {
	if defs[t.Name()] == nil {
		defs[t.Name()] = schemaNode{} // a mark, for a type may lead back to itself
		defs[t.Name()] = defineObject(t, defs)
	}
	return schemaNode{"$ref": "#/$defs/" + t.Name()}
}

func leafNode(f *field, t reflect.Type) schemaNode {
	v, _ := t.FieldByName("V")
	how, n := leafForms[v.Type], schemaNode{}
	switch {
	case len(f.words) > 0:
		return schemaNode{"enum": slices.Clone(f.words)}
	case v.Type.Kind() == reflect.Bool:
		return schemaNode{"enum": []any{true, false, "yes", "no"}}
	case len(how.types) == 1:
		n["type"] = how.types[0]
	default:
		n["type"] = how.types
	}
	if n["pattern"] = how.pattern; f.key == "as_of" {
		n["pattern"] = fullDate
	}
	if example := exampleLeaf(f, t); strings.Trim(example, ".") != "" {
		n["examples"] = []string{example}
	}
	return n
}
