package window

import (
	"encoding/json"
	"fmt"
	"io"
	"strings"
)

// Only leaves nothing but the named run or section. The error names those there are.
func (r *Result) Only(id string) error {
	var names []string
	for _, s := range r.Scopes {
		if strings.EqualFold(s.ID, id) {
			r.Scopes = []Scope{s}
			return nil
		}
		names = append(names, fmt.Sprintf("%q", s.ID))
	}
	return fmt.Errorf("the line has no run or section %q: it has %s", id, strings.Join(names, ", "))
}

// Write writes the result as text, json, svg or png. A picture shows the first scope.
func (r *Result) Write(w io.Writer, format string) error {
	switch format {
	case "text":
		return Text(w, r)
	case "json":
		e := json.NewEncoder(w)
		e.SetEscapeHTML(false)
		e.SetIndent("", "  ")
		return e.Encode(r)
	case "svg":
		return SVG(w, r)
	case "png":
		return PNG(w, r)
	}
	return fmt.Errorf("no such format: %s", format)
}
