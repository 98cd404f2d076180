package facts

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"reflect"
	"unicode/utf8"
)

// Read reads facts from JSON as strictly as rules need it: an unknown or doubled key, a missing required key, null, a
// number in quotes or with a fraction, a word that is none of those permitted, two subjects of one id, and anything
// behind the end are errors. All errors are given at once, each with its path.
func Read(data []byte) (*Facts, error) {
	if !utf8.Valid(data) {
		return nil, errors.New("facts: not UTF-8 text")
	}
	d := &decoder{json: json.NewDecoder(bytes.NewReader(data))}
	d.json.UseNumber()
	f := &Facts{}
	d.object(reflect.ValueOf(f).Elem(), whole, "")
	if d.broken == nil {
		if _, err := d.json.Token(); err != io.EOF {
			d.fault("", "something follows the end of the facts")
		}
		d.named(f)
	}
	if err := errors.Join(append(d.faults, d.broken)...); err != nil {
		return nil, err
	}
	return f, nil
}

// decoder reads tokens into a value along its shape.
type decoder struct {
	json   *json.Decoder
	faults []error
	broken error // no valid JSON: nothing more can be read
}

func (d *decoder) fault(path, format string, args ...any) {
	at := ""
	if path != "" {
		at = path + ": "
	}
	d.faults = append(d.faults, fmt.Errorf("facts: %s%s", at, fmt.Sprintf(format, args...)))
}

// next is the next token, nil when there is none.
func (d *decoder) next() json.Token {
	if d.broken != nil {
		return nil
	}
	t, err := d.json.Token()
	if err != nil {
		d.broken = fmt.Errorf("facts: at byte %d: %w", d.json.InputOffset(), err)
		return nil
	}
	return t
}

// skip leaves out the rest of a value whose first token was t.
func (d *decoder) skip(t json.Token) {
	depth := 0
	for ; d.broken == nil; t = d.next() {
		switch t {
		case json.Delim('{'), json.Delim('['):
			depth++
		case json.Delim('}'), json.Delim(']'):
			depth--
		}
		if depth == 0 {
			return
		}
	}
}

// named wants the schema that is known, and different ids in each collection.
func (d *decoder) named(f *Facts) {
	if f.Schema != Schema {
		d.fault("schema", "is %q, this program reads %q", f.Schema, Schema)
	}
	for _, c := range Collections() {
		seen := map[string]bool{}
		for _, id := range f.Subjects(c) {
			if seen[id] {
				d.fault(c, "two have the id %q", id)
			}
			seen[id] = true
		}
	}
}
