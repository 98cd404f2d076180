package report

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"reflect"
	"strings"
)

// JSON writes the verdict document itself, indented, the same bytes for the same verdict; options do not change it.
func JSON(w io.Writer, v *Verdict, _ Options) error {
	if _, err := ready(v); err != nil {
		return err
	}
	same := func(s string) string { return s }
	return encode(w, copyOf(v, same))
}

func encode(w io.Writer, v any) error {
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	if err := e.Encode(v); err != nil {
		return err
	}
	_, err := w.Write(b.Bytes())
	return err
}

// Read takes a verdict document back. Keys that are unknown, twice there or missing, values of another kind and
// a word that what stands below it denies are all refused, with every fault named.
func Read(data []byte) (*Verdict, error) {
	if err := syntax(data); err != nil {
		return nil, err
	}
	if err := edition(data); err != nil {
		return nil, err
	}
	var s strict
	if s.value(data, reflect.TypeFor[Verdict](), ""); len(s.faults) > 0 {
		return nil, fmt.Errorf("this is no verdict document: %s", strings.Join(s.faults, "; "))
	}
	v := new(Verdict)
	if err := json.Unmarshal(data, v); err != nil {
		return nil, fmt.Errorf("this is no verdict document: %w", err)
	}
	if err := sound(v); err != nil {
		return nil, err
	}
	return v, nil
}

// edition tells a document of another program version from a faulty one before its keys are looked at.
func edition(data []byte) error {
	var head struct {
		Schema string `json:"schema"`
	}
	_ = json.Unmarshal(data, &head) // another kind of document is told about later, key by key
	family := strings.TrimSuffix(Schema, "1")
	if number, ok := strings.CutPrefix(head.Schema, family); ok && head.Schema != Schema {
		return fmt.Errorf("the document is %q, but this program reads %q: use the program that wrote it (format %s), or judge the sheet again",
			head.Schema, Schema, number)
	}
	return nil
}

// syntax says where the text stops being JSON.
func syntax(data []byte) error {
	var any json.RawMessage
	err := json.Unmarshal(data, &any)
	if err == nil {
		return nil
	}
	var at *json.SyntaxError
	if !errors.As(err, &at) {
		return fmt.Errorf("this is no JSON: %w", err)
	}
	before := data[:min(int(at.Offset), len(data))]
	line := 1 + bytes.Count(before, []byte("\n"))
	column := len(before) - 1 - bytes.LastIndexByte(before, '\n')
	return fmt.Errorf("this is no JSON: line %d, column %d: %s", line, column, at)
}
