package inspect

import (
	"fmt"

	"lineworthy/check/report"
)

// Result is the verdict for the job on the day of the inspection, and what was recorded.
type Result struct {
	Line         string            `json:"line"`
	Sheet        string            `json:"sheet"`
	SheetSum     string            `json:"sheet_sha256"`
	Who          string            `json:"who"`
	Day          string            `json:"day"`
	Word         report.Word       `json:"verdict"`
	Reason       string            `json:"reason"`
	FromReadings []report.Finding  `json:"findings_from_readings"` // those the sheet alone does not give on that day
	FromSheet    []report.Finding  `json:"findings_of_the_sheet"`
	Rejected     []Rejected        `json:"rejected"`
	Unjudged     []report.Unjudged `json:"unjudged"`
	Open         []string          `json:"not_read"`
	Confirm      int               `json:"values_to_confirm"`
	Differs      []Reading         `json:"differs_from_sheet"`
	Readings     []Reading         `json:"readings"`
	Digests      report.Digests    `json:"digests"`
}

// Judge puts together what the rules say of the sheet with the readings in it, and what is judged here. Base is the verdict on
// the sheet without the readings, for the same day.
func (f *Filled) Judge(who string, base, now *report.Verdict) *Result {
	r := &Result{
		Line: f.list.Line, Sheet: f.list.Sheet, SheetSum: f.list.Sum, Who: who, Day: f.Day.String(), Word: now.Word, Reason: now.Reason,
		FromReadings: []report.Finding{}, FromSheet: []report.Finding{}, Rejected: f.Rejected, Unjudged: now.Unjudged, Open: f.Open,
		Confirm: len(now.Confirm), Readings: f.Readings, Digests: now.Digests, Differs: []Reading{},
	}
	known := map[[3]string]bool{} // a rule may find several things on one subject
	for _, x := range base.Findings {
		known[[3]string{x.Rule, x.Subject, x.Message}] = true
	}
	for _, x := range now.Findings {
		if known[[3]string{x.Rule, x.Subject, x.Message}] {
			r.FromSheet = append(r.FromSheet, x)
		} else {
			r.FromReadings = append(r.FromReadings, x)
		}
	}
	for _, x := range f.Readings {
		if x.Expect != "" && x.Expect != x.Text && !x.same {
			r.Differs = append(r.Differs, x)
		}
	}
	f.word(r)
	return r
}

// word lowers the verdict of the rules where the inspection rejects something or was not finished.
func (f *Filled) word(r *Result) {
	switch {
	case len(f.Rejected) > 0 && r.Word != report.Unfit:
		r.Word, r.Reason = report.Unfit, fmt.Sprintf("The inspection rejects %d of what was looked at.", len(f.Rejected))
	case r.Word == report.Unfit:
	case len(f.Open) > 0:
		r.Word, r.Reason = report.Unproven, fmt.Sprintf("%d of what the list asks for was not read, was not done or shows nothing.", len(f.Open))
	}
}
