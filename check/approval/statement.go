package approval

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"regexp"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"lineworthy/check/report"
	"lineworthy/check/units"
)

// The types of an in-toto Statement v1 and of what it says here. The .invalid name leads nowhere (RFC 2606): it is a
// name, not an address.
const (
	StatementType = "https://in-toto.io/Statement/v1"
	PredicateType = "https://lineworthy.invalid/approval/v1"
)

// Statement is what is signed: the sheet, and what somebody decided about it.
type Statement struct {
	Type          string    `json:"_type"`
	Subject       []Subject `json:"subject"` // one: the sheet
	PredicateType string    `json:"predicateType"`
	Predicate     Approval  `json:"predicate"`
}

// Subject is a file by name and digest.
type Subject struct {
	Name   string `json:"name"`
	Digest Sum    `json:"digest"`
}

// Sum is a digest as in-toto writes it: the algorithm against lower-case hex.
type Sum struct {
	SHA256 string `json:"sha256"`
}

// Decision is what somebody decided.
type Decision string

// The two decisions.
const (
	Approved Decision = "approved"
	Refused  Decision = "refused"
)

// Approval is who decided what, on which knowledge, and until when.
type Approval struct {
	Line       string      `json:"line"`
	Who        string      `json:"who"`
	Role       string      `json:"role"`
	Decision   Decision    `json:"decision"`
	Note       string      `json:"note,omitempty"`
	Verdict    report.Word `json:"verdict"`
	AsOf       string      `json:"as_of"`           // day the line was judged for, 2006-01-02
	Until      string      `json:"until,omitempty"` // last day it holds, 2006-01-02; empty: no end is set
	Conditions []Accepted  `json:"conditions"`
	Digests    Digests     `json:"digests"`
	Tool       report.Tool `json:"tool"`
}

// Accepted is one condition, why it is met or borne, and the last day for which that holds.
type Accepted struct {
	Condition string `json:"condition"`
	Says      string `json:"says"`
	Reason    string `json:"reason"`
	Until     string `json:"until"` // 2006-01-02
}

// Digests are SHA-256 in hex of all that the decision rests on. Sheet is that of the file, byte for byte.
type Digests struct {
	Sheet   string            `json:"sheet"`
	Facts   string            `json:"facts"`
	Rules   string            `json:"rules"`
	Catalog map[string]string `json:"catalog"`
	Site    string            `json:"site,omitempty"`
}

// New states a decision about a sheet with the given name and SHA-256. Who, Role, Decision, Note, Until and Conditions
// are taken from a, the rest from the verdict.
func New(name, sum string, v *report.Verdict, a Approval) (*Statement, error) {
	a.Line, a.Verdict, a.AsOf, a.Tool = v.Line, v.Word, v.AsOf, v.Tool
	a.Digests = Digests{Sheet: sum, Facts: v.Digests.Facts, Rules: v.Digests.Rules, Catalog: v.Digests.Catalog, Site: v.Digests.Site}
	if a.Conditions == nil {
		a.Conditions = []Accepted{}
	}
	s := &Statement{StatementType, []Subject{{name, Sum{sum}}}, PredicateType, a}
	if err := s.check(); err != nil {
		return nil, err
	}
	return s, nil
}

func (s *Statement) bytes() ([]byte, error) {
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	err := e.Encode(s)
	return bytes.TrimSuffix(b.Bytes(), []byte("\n")), err
}

// parse takes the one form that bytes writes: a second key of the same name, say, could mean one thing here and another elsewhere.
func parse(payload []byte) (*Statement, error) {
	var s Statement
	if err := json.Unmarshal(payload, &s); err != nil {
		return nil, fmt.Errorf("its content is no statement: %w", err)
	}
	again, err := s.bytes()
	if err != nil {
		return nil, err
	}
	if !bytes.Equal(again, payload) {
		return nil, errors.New("its content is not an approval as this program states it; a newer version may be needed")
	}
	if err := s.check(); err != nil {
		return nil, err
	}
	return &s, nil
}

var (
	sumForm = regexp.MustCompile(`^[0-9a-f]{64}$`)
	words   = []report.Word{report.Fit, report.Conditional, report.Unproven, report.Unfit}
)

// check names all faults at once.
func (s *Statement) check() error {
	var faults []error
	say := func(wrong bool, format string, args ...any) {
		if wrong {
			faults = append(faults, fmt.Errorf(format, args...))
		}
	}
	a := s.Predicate
	say(s.Type != StatementType || s.PredicateType != PredicateType, "it is a %s about %s, not an approval", s.Type, s.PredicateType)
	say(len(s.Subject) != 1 || s.Subject[0].Digest.SHA256 != a.Digests.Sheet, "it is not about one sheet")
	say(!sumForm.MatchString(a.Digests.Sheet), "the digest of the sheet is no SHA-256")
	say(a.Decision != Approved && a.Decision != Refused, "decision %q: want approved or refused", a.Decision)
	say(!slices.Contains(words, a.Verdict), "%q is no verdict", a.Verdict)
	say(day(a.AsOf) != nil, "as-of: %v", day(a.AsOf))
	say(a.Until != "" && day(a.Until) != nil, "until: %v", day(a.Until))
	say(a.Until != "" && a.Until < a.AsOf, "until %s is before the day it is given for, %s", a.Until, a.AsOf)
	faults = append(faults, text("who", a.Who), text("role", a.Role), text("line", a.Line), text("tool", a.Tool.Version))
	for _, subject := range s.Subject {
		faults = append(faults, text("name of the sheet", subject.Name))
	}
	if a.Note != "" {
		faults = append(faults, text("note", a.Note))
	}
	for _, c := range a.Conditions {
		faults = append(faults, text("reason for "+c.Condition, c.Reason), text("condition", c.Condition))
		say(day(c.Until) != nil, "%s: until: %v", c.Condition, day(c.Until))
	}
	return errors.Join(faults...)
}

// day wants a whole date: the last day of a month and its first are four weeks apart.
func day(s string) error {
	d, err := units.ParseDate(s)
	if err == nil && (d.MonthOnly || d.String() != s) {
		err = fmt.Errorf("%q: write the day too, like 2026-11-25", s)
	}
	return err
}

const longest = 500 // characters

// text keeps out what a terminal would act on and what nobody would read.
func text(what, s string) error {
	hidden := func(r rune) bool { return !unicode.IsGraphic(r) }
	switch {
	case strings.TrimSpace(s) == "":
		return fmt.Errorf("%s: nothing is said", what)
	case !utf8.ValidString(s) || strings.ContainsFunc(s, hidden):
		return fmt.Errorf("%s: it holds characters that cannot be printed", what)
	case utf8.RuneCountInString(s) > longest:
		return fmt.Errorf("%s: it is longer than %d characters", what, longest)
	}
	return nil
}
