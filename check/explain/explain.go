// Package explain says why: for a finding the chain from the value on the sheet and the row of the catalog through the
// numbers worked out to the rule, each with its source; for a part what was judged of it and what it has to spare.
package explain

import (
	"fmt"
	"slices"
	"strings"

	"lineworthy/catalog"
	"lineworthy/check/facts"
	"lineworthy/check/report"
	"lineworthy/check/sheet"
	"lineworthy/rules"
)

// Input is a judged sheet with all that its verdict rests on.
type Input struct {
	Sheet   *sheet.Line
	Facts   *facts.Facts
	Verdict *report.Verdict
	Catalog *catalog.Catalog
	Rules   rules.Set
}

// Answer explains one finding, part, vessel or fluid. The parts that do not apply are empty.
type Answer struct {
	Name     string         `json:"name"`
	Kind     string         `json:"kind"` // finding, part, vessel or fluid
	Says     string         `json:"says"` // in one sentence
	Position string         `json:"position,omitempty"`
	Chains   []Chain        `json:"chains"`
	Holds    []Held         `json:"holds"`
	Ranges   []Range        `json:"ranges"`
	Pairs    []Pair         `json:"materials"`
	Sheet    []Written      `json:"sheet"`
	Rests    []Value        `json:"rests_on"`
	Judged   []JudgedBy     `json:"judged_by"`
	Missing  []Gap          `json:"missing"`
	Beside   []string       `json:"findings"` // of a part: what stands against it
	Word     report.Word    `json:"verdict"`  // of the whole line
	Cautions []string       `json:"cautions"`
	Basis    report.Digests `json:"digests"`
}

// Topic is something that can be explained.
type Topic struct {
	Name string `json:"name"` // what to ask for
	Kind string `json:"kind"`
	Says string `json:"says"`
}

// Unknown says that nothing of that name can be explained.
type Unknown struct {
	Name   string
	Topics []Topic
}

func (e *Unknown) Error() string {
	var names []string
	for _, t := range e.Topics {
		names = append(names, t.Name)
	}
	return fmt.Sprintf("nothing on this line is called %q: ask for one of %s", e.Name, strings.Join(names, ", "))
}

// About explains what the name stands for: a number or the rule of a finding, a part, a vessel or a fluid of the sheet. The
// error is *Unknown for any other name.
func About(in Input, name string) (*Answer, error) {
	a := &Answer{
		Name: name, Word: in.Verdict.Word, Cautions: report.StandingCautions(), Basis: in.Verdict.Digests, Chains: []Chain{}, Holds: []Held{},
		Ranges: []Range{}, Pairs: []Pair{}, Sheet: []Written{}, Rests: []Value{}, Judged: []JudgedBy{}, Missing: []Gap{}, Beside: []string{},
	}
	if found := in.findings(name); len(found) > 0 {
		in.finding(a, found)
		return a, nil
	}
	for _, t := range in.things() {
		if strings.EqualFold(t.name, name) {
			in.thing(a, t)
			return a, nil
		}
	}
	return nil, &Unknown{name, Topics(in)}
}

// Topics lists what can be explained: the findings by number, then the parts, vessels and fluids.
func Topics(in Input) []Topic {
	var out []Topic
	for i, g := range report.Grouped(in.Verdict) {
		out = append(out, Topic{fmt.Sprint(i + 1), "finding", g[0].Severity + ", " + g[0].Rule + ": " + g[0].Title})
	}
	for _, t := range in.things() {
		out = append(out, Topic{t.name, t.kind, in.standing(t)})
	}
	return out
}

// findings are those of the group with that number, or of that rule, written whole or without its area.
func (in Input) findings(name string) []report.Finding {
	var out []report.Finding
	for i, g := range report.Grouped(in.Verdict) {
		_, short, _ := strings.Cut(g[0].Rule, "/")
		if slices.Contains([]string{fmt.Sprint(i + 1), g[0].Rule, short}, name) {
			out = append(out, g...)
		}
	}
	return out
}
