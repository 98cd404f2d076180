package facts

import (
	"bytes"
	"encoding/json"
)

// node is one JSON Schema, with its keywords in a fixed order.
type node struct {
	Dialect    string           `json:"$schema,omitempty"`
	Title      string           `json:"title,omitempty"`
	Ref        string           `json:"$ref,omitempty"`
	Type       string           `json:"type,omitempty"`
	Shortest   int              `json:"minLength,omitempty"`
	Note       string           `json:"description,omitempty"`
	Enum       []string         `json:"enum,omitempty"`
	Items      *node            `json:"items,omitempty"`
	Closed     *bool            `json:"additionalProperties,omitempty"`
	Required   []string         `json:"required,omitempty"`
	Properties map[string]*node `json:"properties,omitempty"`
	Defs       map[string]*node `json:"$defs,omitempty"`
}

// JSONSchema is the JSON Schema (draft 2020-12) of Facts. Rules are compiled against it, so that a misspelt fact does not
// compile; other programs can check facts with it. An unknown fact is absent: nothing is ever null.
func JSONSchema() []byte {
	defs := map[string]*node{}
	top := nodeOf(whole, defs)
	top.Dialect = "https://json-schema.org/draft/2020-12/schema"
	top.Title = Schema
	top.Properties["schema"].Enum = []string{Schema}
	delete(defs, whole.name)
	top.Defs = defs
	var b bytes.Buffer
	enc := json.NewEncoder(&b)
	enc.SetEscapeHTML(false)
	enc.SetIndent("", "  ")
	if err := enc.Encode(top); err != nil {
		panic(err) // only strings and maps of them
	}
	return b.Bytes()
}

func nodeOf(s *shape, defs map[string]*node) *node {
	n := &node{Type: "object", Closed: new(bool), Properties: map[string]*node{}}
	defs[s.name] = n
	for _, f := range s.fields {
		n.Properties[f.key] = fieldNode(f, defs)
		if !f.optional {
			n.Required = append(n.Required, f.key)
		}
	}
	return n
}

func fieldNode(f field, defs map[string]*node) *node {
	n := &node{Note: f.ask}
	switch f.form {
	case integer:
		n.Type = "integer"
	case answer:
		n.Type = "boolean"
	case word:
		n.Type, n.Enum = "string", f.words
		if f.optional {
			n.Shortest = 1 // an empty word would be a known nothing
		}
	case wordList:
		n.Type, n.Items = "array", &node{Type: "string", Enum: f.words}
	case objects:
		n.Type, n.Items = "array", refTo(f.of, defs)
	case object:
		n = refTo(f.of, defs)
	}
	return n
}

func refTo(s *shape, defs map[string]*node) *node {
	if defs[s.name] == nil {
		nodeOf(s, defs)
	}
	return &node{Ref: "#/$defs/" + s.name}
}
