package compare

import (
	"lineworthy/catalog"
	"lineworthy/check"
	"lineworthy/check/facts"
	"lineworthy/check/report"
	"lineworthy/check/sheet"
)

// Schema names the shape of the review document.
const Schema = "lineworthy/comparison/1"

// Input is one side of a comparison. Sheet and Facts are nil for a stored verdict.
type Input struct {
	Sheet   *sheet.Line
	Facts   *facts.Facts
	Verdict *report.Verdict
}

// Review is everything that differs between two sides.
type Review struct {
	Schema   string     `json:"schema"`
	Old      Side       `json:"old"`
	New      Side       `json:"new"`
	Worse    []string   `json:"worse"`   // in which ways the new side is worse; empty when in none
	Changes  []Change   `json:"changes"` // empty for stored verdicts
	Kind     *Kind      `json:"replacement,omitempty"`
	Findings []Move     `json:"findings"`
	Confirm  Shift      `json:"confirm"`
	Missing  Shift      `json:"missing"`
	Margins  []Margin   `json:"margins"` // of everything that holds pressure, where it differs
	Rests    []Rest     `json:"rests_on"`
	Record   []Entry    `json:"change_record"`
	Time     *Temporary `json:"temporary,omitempty"`
	Cautions []string   `json:"cautions"`
}

// Side is what one verdict comes to.
type Side struct {
	File      string            `json:"file"`
	Line      string            `json:"line"`
	AsOf      string            `json:"as_of"`
	Word      report.Word       `json:"verdict"`
	Reason    string            `json:"reason"`
	Tool      string            `json:"tool"`
	Governing *report.Governing `json:"governing,omitempty"`
}

// Shift are the things that come and those that go.
type Shift struct {
	Appear []string `json:"appear"`
	Clear  []string `json:"clear"`
}

// Sheets reviews the change from one judged sheet to another. The catalog says which names stand for the same entry.
func Sheets(before, after Input, c *catalog.Catalog) *Review {
	d := differ{old: before.Sheet, new: after.Sheet, names: names{c}}
	d.run()
	r := review(before, after, d.renamed)
	r.Changes = d.changes
	r.Kind = kindOf(d.changes, d.bare, after.Sheet.Change)
	r.Margins = margins(before, after, d.renamed)
	r.Time = temporary(after.Sheet, after.Verdict.AsOf)
	r.Record = record(r, after.Sheet)
	if r.Time != nil && r.Time.DaysLeft < 0 {
		r.Worse = append(r.Worse, "the temporary change is past its end date")
	}
	return r
}

// Verdicts reviews two stored verdicts: what they rest on and what that flips.
func Verdicts(before, after *report.Verdict) *Review {
	r := review(Input{Verdict: before}, Input{Verdict: after}, nil)
	r.Rests = rests(before, after)
	return r
}

func review(before, after Input, renamed []rename) *Review {
	r := &Review{
		Schema: Schema, Old: side(before.Verdict), New: side(after.Verdict), Worse: []string{}, Changes: []Change{},
		Margins: []Margin{}, Rests: []Rest{}, Record: []Entry{}, Cautions: after.Verdict.Cautions,
	}
	r.Findings = moves(before, after, renamed)
	r.Confirm = shift(confirms(before.Verdict, renamed), confirms(after.Verdict, nil))
	r.Missing = shift(gaps(before.Verdict, renamed), gaps(after.Verdict, nil))
	r.Worse = worse(r)
	return r
}

func side(v *report.Verdict) Side {
	return Side{v.Sheet, v.Line, v.AsOf, v.Word, v.Reason, v.Tool.Name + " " + v.Tool.Version, v.Governing}
}

// shown prints the quantities of one side in the units of its own sheet.
func (in Input) shown() check.Shown { return check.ShownAs(in.Sheet) }
