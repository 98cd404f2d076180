package record

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"errors"
	"fmt"
	"regexp"
	"strings"
	"time"
)

// KindSetAside marks the line that names where the bytes of a write cut short were moved to.
const KindSetAside = "set-aside"

// maxLine bounds what a reader must hold, in bytes. A sheet of a megabyte fits several times.
const maxLine = 8 << 20

// Entry is one line of a record.
type Entry struct {
	Seq     int64           `json:"seq"`  // from 1
	Prev    string          `json:"prev"` // SHA-256 of the line before, hex
	Time    time.Time       `json:"time"` // as the caller gave it, UTC
	Kind    string          `json:"kind"`
	Payload json.RawMessage `json:"payload"`
}

// Item is what a caller wants recorded. Time is never taken from the clock here.
type Item struct {
	Time    time.Time
	Kind    string // lower-case letters, digits and hyphens
	Payload any    // anything encoding/json can write
}

var (
	kindForm = regexp.MustCompile(`^[a-z][a-z0-9-]{0,63}$`)
	origin   = strings.Repeat("0", 2*sha256.Size) // prev of the first line
)

const (
	sumKey = `,"sum":"`
	sumEnd = `"}` + "\n"
	sumLen = len(sumKey) + 2*sha256.Size + len(sumEnd)
)

func digest(b []byte) string {
	sum := sha256.Sum256(b)
	return hex.EncodeToString(sum[:])
}

// line writes the item as the line that follows the given one.
func (i Item) line(after last) ([]byte, error) {
	if i.Time.IsZero() || i.Time.Year() > 9999 {
		return nil, errors.New("a record needs the time of what it states, in the years 1 to 9999")
	}
	if !kindForm.MatchString(i.Kind) {
		return nil, fmt.Errorf("%q is no kind of record: use lower-case letters, digits and hyphens", i.Kind)
	}
	payload, err := compact(i.Payload)
	if err != nil {
		return nil, fmt.Errorf("what was to be recorded is no JSON: %w", err)
	}
	body, err := compact(Entry{Seq: after.seq + 1, Prev: after.sum, Time: i.Time, Kind: i.Kind, Payload: payload})
	if err != nil {
		return nil, err
	}
	body = bytes.TrimSuffix(body, []byte("}"))
	line := append(body, sumKey+digest(body)+sumEnd...)
	if len(line) > maxLine {
		return nil, fmt.Errorf("what was to be recorded is %d bytes long; a line may have %d", len(line), maxLine)
	}
	return line, nil
}

func compact(v any) ([]byte, error) {
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	err := e.Encode(v)
	return bytes.TrimSuffix(b.Bytes(), []byte("\n")), err
}

// parse reads one line with its line feed and proves its own sum. The error says in words what is wrong with it.
func parse(line []byte) (Entry, error) {
	var e Entry
	cut := len(line) - sumLen
	if cut < 0 || string(line[cut:]) != sumKey+digest(line[:max(cut, 0)])+sumEnd {
		return e, errors.New("its text does not fit its own sum: it was changed after it was written")
	}
	d := json.NewDecoder(bytes.NewReader(append(line[:cut:cut], '}')))
	d.DisallowUnknownFields()
	if err := d.Decode(&e); err != nil {
		return e, fmt.Errorf("it is no line of a record: %w", err)
	}
	return e, nil
}
