package catalog

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"reflect"
	"regexp"
	"strconv"
	"strings"

	"gopkg.in/yaml.v3"
)

// decode reads a whole file into a pointer to its type and checks that the id is the file's name.
// The rows of a fluid stay text, see [Fluid.Rows].
func decode(path string, raw []byte, into any) error {
	if fluid, ok := into.(*Fluid); ok {
		raw, fluid.table = cut(path, raw)
	}
	if err := strict(path, raw, into); err != nil {
		return err
	}
	id := reflect.ValueOf(into).Elem().FieldByName("ID").String()
	if want := idOf(path); id != want {
		return Faults{{path, keyLine(raw, "id"), fmt.Sprintf("id is %q, but the file name says %q: make them equal", id, want)}}
	}
	return nil
}

// keyLine finds the line of a top-level key; 0 if it is not written.
func keyLine(raw []byte, key string) int {
	n := 0
	for line := range bytes.Lines(raw) {
		n++
		if bytes.HasPrefix(line, []byte(key+":")) {
			return n
		}
	}
	return 0
}

// strict decodes exactly one YAML document and refuses keys the type does not have.
func strict(path string, raw []byte, into any) error {
	d := yaml.NewDecoder(bytes.NewReader(raw))
	d.KnownFields(true)
	if err := d.Decode(into); err != nil {
		return explain(path, err, reflect.TypeOf(into))
	}
	if err := d.Decode(new(any)); !errors.Is(err, io.EOF) {
		return Faults{{path, 0, "want one YAML document in the file, found more"}}
	}
	return nil
}

var (
	atLine  = regexp.MustCompile(`^(?:yaml: )?(?:unmarshal errors:\s*)?(?:line (\d+): )?`)
	unknown = regexp.MustCompile(`^field (.+) not found in type \S*\.(\w+)$`)
)

// explain turns the parser's error into faults with the file and line, and unknown keys into a hint.
func explain(path string, err error, t reflect.Type) error {
	if errors.Is(err, io.EOF) {
		return Faults{{path, 0, "the file is empty"}}
	}
	texts := []string{err.Error()}
	if typed := (*yaml.TypeError)(nil); errors.As(err, &typed) {
		texts = typed.Errors
	}
	var faults Faults
	for _, text := range texts {
		m := atLine.FindStringSubmatch(text)
		line, _ := strconv.Atoi(m[1])
		faults = append(faults, Fault{path, line, hint(strings.TrimPrefix(text, m[0]), t)})
	}
	return faults
}

// hint names the nearest known key where the parser only says that one is unknown.
func hint(text string, t reflect.Type) string {
	m := unknown.FindStringSubmatch(text)
	if m == nil {
		return strings.ReplaceAll(text, "catalog.", "")
	}
	known := keysOf(t, m[2])
	best := ""
	for _, key := range known {
		if best == "" || distance(m[1], key) < distance(m[1], best) {
			best = key
		}
	}
	return fmt.Sprintf("unknown key %q; nearest: %s; all keys here: %s", m[1], best, strings.Join(known, ", "))
}
