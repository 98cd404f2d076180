package main

import (
	"context"
	"errors"
	"fmt"

	"lineworthy/check/approval"
	"lineworthy/check/report"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

const answerSchema = "lineworthy/approval-answer/1"

// The answers about an approval, worst first. The first that applies is the status.
const (
	statusTampered   = "tampered"
	statusUnsigned   = "unsigned"
	statusIncomplete = "incomplete"
	statusExpired    = "expired"
	statusStale      = "stale"
	statusRefused    = "refused"
	statusValid      = "valid"
)

var worstFirst = []string{statusTampered, statusUnsigned, statusIncomplete, statusExpired, statusStale, statusRefused}

// answer is what verify found. Approval and Subject are nil when nothing in the envelope is to be believed.
type answer struct {
	Schema      string                `json:"schema"`
	File        string                `json:"file"`
	Status      string                `json:"status"`
	Reasons     []string              `json:"reasons"`
	AsOf        string                `json:"as_of"`
	Signatures  int                   `json:"signatures"`
	Signers     []approval.Signer     `json:"signers"`
	Subject     *approval.Subject     `json:"subject,omitempty"`
	Approval    *approval.Approval    `json:"approval,omitempty"`
	Compared    bool                  `json:"compared"` // whether a sheet was given
	Differences []approval.Difference `json:"differences"`
	Today       *todays               `json:"today,omitempty"` // nil when the line could not be judged again
	found       map[string]bool
}

// todays is what the line is judged to be on the day of the question.
type todays struct {
	Verdict     report.Word `json:"verdict"`
	Changed     bool        `json:"changed"`
	NotAccepted []string    `json:"not_accepted"` // conditions nobody accepted
}

func (a *answer) say(status, format string, args ...any) {
	if a.found == nil {
		a.found = map[string]bool{}
	}
	a.found[status] = true
	a.Reasons = append(a.Reasons, fmt.Sprintf(format, args...))
}

func (a *answer) sum() {
	a.Status = statusValid
	for _, s := range worstFirst {
		if a.found[s] {
			a.Status = s
			return
		}
	}
}

func (a *answer) signed() (n int) {
	for _, s := range a.Signers {
		if s.Signed {
			n++
		}
	}
	return n
}

// dates looks at all that can be said without the sheet.
func (a *answer) dates(need int) {
	if need == 0 {
		need = len(a.Signers)
	}
	if n := a.signed(); n < need {
		a.say(statusIncomplete, "%d of the %d keys given signed it, and %d are needed", n, len(a.Signers), need)
	}
	for _, why := range a.Approval.Ended(a.AsOf) {
		a.say(statusExpired, "%s", why)
	}
	if a.AsOf < a.Approval.AsOf {
		a.say(statusStale, "it is given for %s, which is still to come", a.Approval.AsOf)
	}
	if a.Approval.Decision != approval.Approved {
		a.say(statusRefused, "the decision is a refusal: the line is not approved")
	}
}

// compare puts the sheet as it is now beside what was signed, and judges it again for both days.
func (a *answer) compare(ctx context.Context, f verifyFlags, path string, on units.Date) error {
	line, sum, err := readSheet(path)
	var faulty sheet.Problems
	if err != nil && (sum == "" || !errors.As(err, &faulty)) {
		return err
	}
	a.Compared = true
	if sum != a.Subject.Digest.SHA256 {
		a.Differences = append(a.Differences, approval.Difference{What: "sheet", Signed: a.Subject.Digest.SHA256, Now: sum})
	}
	if line != nil && line.ID.Set && line.ID.V != a.Approval.Line {
		a.say(statusStale, "the sheet given is of line %s, and the approval of line %s: it says nothing of that line", line.ID.V, a.Approval.Line)
	}
	if err == nil {
		err = a.again(ctx, f, line, on)
	}
	if errors.As(err, &faulty) {
		a.say(statusStale, "the sheet cannot be judged now: %s", faulty)
		err = nil
	}
	for _, d := range a.Differences {
		a.say(statusStale, "changed since: %s", d.What)
	}
	return err
}

func (a *answer) again(ctx context.Context, f verifyFlags, line *sheet.Line, on units.Date) error {
	engine, err := newEngine(ctx, checkFlags{asOf: f.asOf, site: f.site, rules: f.rules})
	if err != nil {
		return err
	}
	then, err := units.ParseDate(a.Approval.AsOf)
	if err != nil {
		return err
	}
	v, err := judgeOn(ctx, engine, line, then)
	if err != nil {
		return err
	}
	a.Differences = append(a.Differences, a.Approval.Differences(v)...)
	if v, err = judgeOn(ctx, engine, line, on); err != nil {
		return err
	}
	a.today(v)
	return nil
}

func (a *answer) today(v *report.Verdict) {
	a.Today = &todays{v.Word, v.Word != a.Approval.Verdict, []string{}}
	if a.Today.Changed {
		a.say(statusStale, "judged for %s the line is %s; it was %s", v.AsOf, v.Word, a.Approval.Verdict)
	}
	if a.Approval.Decision != approval.Approved {
		return
	}
	for _, c := range approval.Open(approval.Conditions(v), a.Approval.Conditions, "") {
		a.Today.NotAccepted = append(a.Today.NotAccepted, c.Name)
		a.say(statusStale, "a condition that nobody accepted: %s", c.Name)
	}
}
