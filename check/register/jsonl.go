package register

import (
	"encoding/json"
	"io"

	"lineworthy/check/report"
)

// Row is what the verdict table has of one sheet.
type Row struct {
	Path       string      `json:"path"`
	Line       string      `json:"line"`
	Title      string      `json:"title"`
	Word       report.Word `json:"verdict"` // empty when the sheet could not be judged
	AsOf       string      `json:"as_of"`
	Stops      int         `json:"stops"`
	Conditions int         `json:"conditions"`
	Missing    int         `json:"missing"`
	Confirm    int         `json:"to_confirm"`
	First      string      `json:"first_reason"`
	Sum        string      `json:"sheet_sha256"`
}

func row(e *Entry) Row {
	first := e.First
	if e.bad() {
		first = e.Faults[0]
	}
	return Row{e.Path, e.Line, e.Title, e.Word, e.AsOf, e.Stops, e.Conditions, e.Missing, len(e.Confirm), first, e.Sum}
}

// Totals closes the register: how many sheets there are of each kind.
type Totals struct {
	AsOf   string         `json:"as_of"`
	Sheets int            `json:"sheets"`
	Counts map[string]int `json:"counts"`
	Bad    int            `json:"bad_sheets"`
	Faulty int            `json:"no_verdict_by_fault_of_the_tool"`
}

func (r *Register) totals() Totals {
	t := Totals{AsOf: r.day.String(), Sheets: len(r.places), Counts: map[string]int{}}
	for _, w := range words {
		t.Counts[string(w)] = r.Count(w)
	}
	t.Bad, t.Faulty = r.Bad()
	return t
}

var words = []report.Word{report.Unfit, report.Unproven, report.Conditional, report.Fit}

// tabled is a row with the name of its table.
type tabled struct {
	Table string `json:"table"`
	Row   any    `json:"row"`
}

// jsonl writes one object a line: the name of its table and the row.
func (r *Register) jsonl(w io.Writer, table string) error {
	e := json.NewEncoder(w)
	e.SetEscapeHTML(false)
	err := r.each(table, func(table string, row any) error {
		return e.Encode(tabled{table, row})
	})
	if err == nil && table == "" {
		err = e.Encode(tabled{"totals", r.totals()})
	}
	return err
}

// Fault is one fault of a sheet.
type Fault struct {
	Path string `json:"path"`
	Text string `json:"fault"`
}

// each goes through the rows of one table, or of all.
func (r *Register) each(table string, visit func(string, any) error) error {
	for _, t := range Tables {
		if table != "" && table != t {
			continue
		}
		if err := r.table(t, func(row any) error { return visit(t, row) }); err != nil {
			return err
		}
	}
	return nil
}

func (r *Register) table(name string, visit func(any) error) error {
	switch name {
	case "verdicts":
		return every(r.Rows(), func(x Row) error { return visit(x) })
	case "faults":
		return every(r.faults(), func(e *Entry) error {
			return list(e.Faults, func(f string) error { return visit(Fault{e.Path, f}) })
		})
	case "due":
		return every(r.Due(), func(d DueLine) error { return visit(d) })
	case "evidence":
		return list(r.Evidence(), func(e Evidence) error { return visit(e) })
	case "hoses":
		all, err := r.Meetings()
		if err != nil {
			return err
		}
		return list(all, func(m Meeting) error { return visit(m) })
	}
	if !r.Compared() {
		return nil
	}
	if err := every(r.Changes(), func(c Change) error { return visit(c) }); err != nil {
		return err
	}
	gone, err := r.Gone()
	if err != nil {
		return err
	}
	return list(gone, func(c Change) error { return visit(c) })
}

func list[T any](all []T, visit func(T) error) error {
	for _, x := range all {
		if err := visit(x); err != nil {
			return err
		}
	}
	return nil
}

func every[T any](all func(func(T, error) bool), visit func(T) error) (err error) {
	all(func(x T, fault error) bool {
		if err = fault; err == nil {
			err = visit(x)
		}
		return err == nil
	})
	return err
}
