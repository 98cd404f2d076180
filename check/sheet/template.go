package sheet

import (
	"bytes"
	_ "embed"
)

//go:embed template.yaml
var template []byte

// Template is a commented sheet of an invented line, to start a new one from.
func Template() []byte { return bytes.Clone(template) }
