package report

import (
	"bytes"
	"encoding/xml"
	"io"
	"strings"
)

// JUnit writes one test suite for the line with one case for each rule and subject, in the XML that build servers read;
// there is no standard for it (practice, no source). A finding that stops the line or sets a condition is a failure, a gap
// in knowledge an error, and what does not apply or is still to be confirmed is skipped: only what was judged and found
// good passes. Options do not change it.
func JUnit(w io.Writer, v *Verdict, _ Options) error { return junit(w, v) }

// junit writes one suite for each line.
func junit(w io.Writer, vs ...*Verdict) error {
	var all junitSuites
	for _, v := range vs {
		v, err := ready(v)
		if err != nil {
			return err
		}
		all.add(newSuite(v))
	}
	var b bytes.Buffer
	b.WriteString(xml.Header)
	e := xml.NewEncoder(&b)
	e.Indent("", "  ")
	if err := e.Encode(all); err != nil {
		return err
	}
	b.WriteString("\n")
	_, err := w.Write(b.Bytes())
	return err
}

func newSuite(v *Verdict) junitSuite {
	s := junitSuite{Name: strings.TrimSpace(v.Line + " " + v.Title), Timestamp: v.AsOf + "T00:00:00", Out: strings.Join(cautions(v), "\n")}
	s.Properties = []junitProperty{{"verdict", string(v.Word)}, {"reason", v.Reason}, {"sheet", v.Sheet}}
	for _, row := range digestRows(v.Digests, true) {
		s.Properties = append(s.Properties, junitProperty{"sha256 " + row[0], row[1]})
	}
	found := map[judgement][]Finding{}
	for _, f := range v.Findings {
		key := judgement{f.Rule, f.Subject}
		found[key] = append(found[key], f)
	}
	done := map[judgement]bool{}
	for _, j := range v.Judged {
		s.rule(v, j, found, done)
	}
	s.rest(v, found, done)
	for _, c := range v.Confirm {
		s.add(junitCase{Class: confirmRule, Name: c.What, Skipped: &junitSkipped{"to confirm: " + where(c) + " (" + c.Standing + ")"}})
	}
	return s
}

// judgement is one rule applied to one subject.
type judgement struct{ rule, subject string }

// rule adds the cases of one rule. When it found more than is listed as findings, the rest are values to confirm, and which
// of its subjects those are is not known here: then none of them may pass.
func (s *junitSuite) rule(v *Verdict, j Judged, found map[judgement][]Finding, done map[judgement]bool) {
	listed := 0
	for _, f := range v.Findings {
		if f.Rule == j.Rule {
			listed++
		}
	}
	for _, subject := range j.Judged {
		key := judgement{j.Rule, subject}
		c := judgedCase(key, found[key])
		if j.Found > listed && len(found[key]) == 0 {
			c.Skipped = &junitSkipped{"see the values to confirm"}
		}
		s.once(c, done)
	}
	for _, subject := range j.CouldNot {
		s.once(gapCase(v, judgement{j.Rule, subject}), done)
	}
	for _, subject := range j.NotApplicable {
		s.once(junitCase{Class: j.Rule, Name: subject, Skipped: &junitSkipped{"did not apply"}}, done)
	}
}

// rest adds findings and gaps of rules that do not list the subject.
func (s *junitSuite) rest(v *Verdict, found map[judgement][]Finding, done map[judgement]bool) {
	for _, f := range v.Findings {
		key := judgement{f.Rule, f.Subject}
		s.once(judgedCase(key, found[key]), done)
	}
	for _, u := range v.Unjudged {
		for _, rule := range u.Rules {
			s.once(gapCase(v, judgement{rule, u.Subject}), done)
		}
		if len(u.Rules) == 0 {
			s.add(gapCase(v, judgement{unknownRule, u.Subject}))
		}
	}
}

func (s *junitSuite) once(c junitCase, done map[judgement]bool) {
	key := judgement{c.Class, c.Name}
	if !done[key] {
		done[key] = true
		s.add(c)
	}
}
