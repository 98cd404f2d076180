package report

import (
	"bytes"
	_ "embed"
	"reflect"
	"slices"
)

//go:embed verdict.schema.json
var verdictSchema []byte

// VerdictSchema is the JSON Schema (draft 2020-12) of the verdict document that JSON writes.
func VerdictSchema() []byte { return slices.Clone(verdictSchema) }

// generateSchema works the schema out from the Go types, so that the two cannot part ways.
func generateSchema() ([]byte, error) {
	defs := map[string]any{}
	root := define(reflect.TypeFor[Verdict](), defs)
	root["$schema"] = "https://json-schema.org/draft/2020-12/schema"
	root["title"] = "lineworthy verdict"
	root["$defs"] = defs
	var b bytes.Buffer
	err := encode(&b, root)
	return b.Bytes(), err
}

// define is the schema of a struct; what it is made of goes to defs.
func define(t reflect.Type, defs map[string]any) map[string]any {
	properties, required := map[string]any{}, []string{}
	for _, f := range fieldsOf(t) {
		property := describe(f.typ, defs)
		for key, value := range narrower[t.Name()+"."+f.name] {
			property[key] = value
		}
		properties[f.name] = property
		if f.required {
			required = append(required, f.name)
		}
	}
	return map[string]any{"type": "object", "properties": properties, "required": required, "additionalProperties": false}
}

func describe(t reflect.Type, defs map[string]any) map[string]any {
	switch t.Kind() {
	case reflect.Pointer:
		return describe(t.Elem(), defs)
	case reflect.Struct:
		if defs[t.Name()] == nil {
			defs[t.Name()] = define(t, defs)
		}
		return map[string]any{"$ref": "#/$defs/" + t.Name()}
	case reflect.Slice:
		return map[string]any{"type": "array", "items": describe(t.Elem(), defs)}
	case reflect.Map:
		return map[string]any{"type": "object", "additionalProperties": describe(t.Elem(), defs)}
	case reflect.String:
		return map[string]any{"type": "string"}
	case reflect.Bool:
		return map[string]any{"type": "boolean"}
	}
	return map[string]any{"type": "integer"}
}
