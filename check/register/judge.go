package register

import (
	"context"
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strconv"

	"lineworthy/catalog"
	"lineworthy/check/report"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

// Judge gives the verdict on one sheet. sheet.Problems is a fault of the sheet; any other error is one of the tool.
type Judge func(context.Context, *sheet.Line) (*report.Verdict, error)

// maxBytes is the size from which sheet.Read says that a file is too large.
const maxBytes = 1_000_000

// judging turns one file into an entry.
type judging struct {
	dir   string
	judge Judge
	cat   *catalog.Catalog
	basis string
	asOf  string
}

// read gives the text of a sheet and its digest, or the faults that keep it from being read.
func (j *judging) read(f found) (text []byte, sum string, faults error) {
	path := filepath.Join(j.dir, filepath.FromSlash(f.file))
	info, err := os.Stat(path)
	switch {
	case err != nil && isLink(path):
		return nil, "", sheet.Problems{{File: f.path, Text: "is a link, and what it names is not there"}}
	case err == nil && !info.Mode().IsRegular():
		return nil, "", sheet.Problems{{File: f.path, Text: "is no plain file, and was not read"}}
	case err == nil && info.Size() <= maxBytes:
		if text, err = os.ReadFile(path); err == nil {
			d := sha256.Sum256(text)
			return text, hex.EncodeToString(d[:]), nil
		}
	}
	_, err = sheet.Read(path) // says what is the matter
	return nil, "", relative(err, f.path)
}

// relative names the file as the register does. A sheet that can be read after all came or changed meanwhile.
func relative(err error, path string) error {
	if err == nil {
		return sheet.Problems{{File: path, Text: "changed while it was read", Hint: "look again"}}
	}
	var all sheet.Problems
	if !errors.As(err, &all) {
		return err
	}
	all = slices.Clone(all)
	for i := range all {
		all[i].File = path
	}
	return all
}

func isLink(path string) bool {
	info, err := os.Lstat(path)
	return err == nil && info.Mode()&os.ModeSymlink != 0
}

// entry judges the text. It never fails: what goes wrong is in the entry.
func (j *judging) entry(ctx context.Context, rel string, text []byte, sum string) (e *Entry) {
	e = &Entry{Path: rel, Sum: sum, Basis: j.basis, AsOf: j.asOf, Undated: true}
	defer func() {
		if p := recover(); p != nil {
			e = e.failed(fmt.Errorf("the program stumbled over it: %v", p))
		}
	}()
	line, err := sheet.Parse(rel, text)
	if err != nil {
		return e.failed(err)
	}
	e.Line, e.Title, e.Undated = line.ID.V, line.Title.V, !line.AsOf.Set
	v, err := j.judge(ctx, line)
	if err != nil {
		return e.failed(err)
	}
	e.sum(v)
	e.Due = due(line, v, j.cat)
	e.Hoses = hoses(line, j.cat)
	return e
}

func (e *Entry) failed(err error) *Entry {
	out := &Entry{Path: e.Path, Sum: e.Sum, Basis: e.Basis, AsOf: e.AsOf, Undated: true, Line: e.Line, Title: e.Title}
	var p sheet.Problems
	if !errors.As(err, &p) {
		out.Sum, out.Broken, out.Faults = "", true, []string{"no verdict: " + err.Error()} // tried again next time
		return out
	}
	for _, problem := range p {
		out.Faults = append(out.Faults, problem.Error())
	}
	return out
}

// sum takes from the verdict what the register needs.
func (e *Entry) sum(v *report.Verdict) {
	e.AsOf, e.Word, e.Missing = v.AsOf, v.Word, len(v.Unjudged)
	for _, f := range v.Findings {
		switch f.Severity {
		case "stop":
			e.Stops++
		case "condition":
			e.Conditions++
		}
		e.Found = append(e.Found, f.Severity+" "+f.Rule)
	}
	for _, u := range v.Unjudged {
		e.Asks = append(e.Asks, u.Subject+" "+u.Fact)
	}
	for _, c := range v.Confirm {
		e.Confirm = append(e.Confirm, Confirm{c.What, c.Standing, c.Source, c.Clause})
	}
	for row := range v.Digests.Catalog {
		e.Rows = append(e.Rows, row)
	}
	e.Found, e.Asks, e.Rows, e.First = sorted(e.Found), sorted(e.Asks), sorted(e.Rows), first(v)
}

// first is the worst thing that stands against the line, in the words of the verdict.
func first(v *report.Verdict) string {
	worst := func(severity string) string {
		i := slices.IndexFunc(v.Findings, func(f report.Finding) bool { return f.Severity == severity })
		if i < 0 {
			return ""
		}
		return v.Findings[i].Message
	}
	switch {
	case worst("stop") != "":
		return worst("stop")
	case len(v.Unjudged) > 0:
		return "not known: " + v.Unjudged[0].Ask
	case worst("condition") != "":
		return worst("condition")
	case len(v.Confirm) > 0:
		return strconv.Itoa(len(v.Confirm)) + " to confirm: " + v.Confirm[0].What
	}
	return v.Reason
}

// The rules whose subjects say to which hoses a yearly date applies; both count 365 days as common practice.
const (
	resistanceRule = "static/resistance_record_too_old"
	inspectionRule = "inspection/not_inspected_within_a_year"
	yearDays       = 365
)

// DueRules are the rules of which a Judge must say what they judged.
var DueRules = []string{resistanceRule, inspectionRule}

// due are the dates of the sheet: tests, measurements, inspections, service lives and the end of a temporary change. The
// law may want a test sooner: then a finding says so.
func due(l *sheet.Line, v *report.Verdict, cat *catalog.Catalog) (out []Due) {
	for _, run := range l.Runs {
		for i := range run.V.Parts {
			p := &run.V.Parts[i]
			test, life := months(p, cat)
			add := func(what string, on units.Date) {
				out = append(out, Due{units.Date{Days: on.Days}.String(), what, p.ID.V, p.Tag.V})
			}
			if p.Tested.Set && test > 0 {
				add("pressure test", p.Tested.V.AddMonths(test))
			}
			if p.Made.Set && life > 0 {
				add("end of service life", p.Made.V.AddMonths(life))
			}
			if p.ResistTest.Set && judgedFor(v, resistanceRule, p.ID.V) {
				add("resistance test", units.Date{Days: p.ResistTest.V.Days + yearDays})
			}
			if p.Inspected.Set && judgedFor(v, inspectionRule, p.ID.V) {
				add("inspection", units.Date{Days: p.Inspected.V.Days + yearDays})
			}
		}
	}
	if c := l.Change; c != nil && c.Until.Set {
		out = append(out, Due{Date: units.Date{Days: c.Until.V.Days}.String(), What: "end of temporary change"})
	}
	return out
}

// months are the test interval and service life: of what the class and the sheet state, the shorter.
func months(p *sheet.Part, cat *catalog.Catalog) (test, life units.Months) {
	test, life = p.TestEvery.V, p.Life.V
	if p.Class.V == "" || p.Kind.V != "hose" {
		return test, life
	}
	h, err := cat.Hose(p.Class.V)
	if err != nil {
		return test, life
	}
	if h.TestMonths != nil {
		test = shorter(test, units.Months(h.TestMonths.Value))
	}
	if h.LifeYears != nil {
		life = shorter(life, units.Months(h.LifeYears.Value*12))
	}
	return test, life
}

func shorter(a, b units.Months) units.Months {
	if a == 0 || b > 0 && b < a {
		return b
	}
	return a
}

func judgedFor(v *report.Verdict, rule, subject string) bool {
	i := slices.IndexFunc(v.Judged, func(j report.Judged) bool { return j.Rule == rule })
	return i >= 0 && slices.Contains(v.Judged[i].Judged, subject)
}
