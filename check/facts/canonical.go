package facts

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"fmt"
	"reflect"
)

// JSON gives the facts as one line of canonical JSON: keys in the order of the struct, lists never null, nothing
// escaped for HTML. Equal facts give equal bytes. The error is that of the JSON encoder.
func (f *Facts) JSON() ([]byte, error) {
	whole := *f
	fillLists(reflect.ValueOf(&whole).Elem())
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	if err := e.Encode(&whole); err != nil {
		return nil, fmt.Errorf("facts: %w", err)
	}
	return bytes.TrimRight(b.Bytes(), "\n"), nil
}

// Digest is the SHA-256 in hex of the canonical JSON.
func (f *Facts) Digest() (string, error) {
	text, err := f.JSON()
	if err != nil {
		return "", err
	}
	sum := sha256.Sum256(text)
	return hex.EncodeToString(sum[:]), nil
}

// fillLists makes every list that is nil an empty one. Lists of structs are copied before they are changed.
func fillLists(v reflect.Value) {
	for i := range v.NumField() {
		f := v.Field(i)
		switch f.Kind() {
		case reflect.Struct:
			fillLists(f)
		case reflect.Slice:
			copied := reflect.MakeSlice(f.Type(), f.Len(), f.Len())
			reflect.Copy(copied, f)
			f.Set(copied)
			if f.Type().Elem().Kind() == reflect.Struct {
				for k := range f.Len() {
					fillLists(f.Index(k))
				}
			}
		}
	}
}
