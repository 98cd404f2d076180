package explain

import (
	"fmt"
	"slices"
	"strings"
	"unicode"

	"lineworthy/check/report"
	"lineworthy/check/sheet"
)

// thing is one part, vessel or fluid of the sheet.
type thing struct {
	name, kind, path string
	pos              sheet.Pos
}

func (in Input) things() []thing {
	var out []thing
	for _, r := range in.Sheet.Runs {
		for i, p := range r.V.Parts {
			out = append(out, thing{p.ID.V, p.Kind.V, fmt.Sprintf("runs.%s.parts[%d]", r.Key, i), p.ID.Pos})
		}
	}
	for _, v := range in.Sheet.Vessels {
		out = append(out, thing{v.Key, "vessel", "vessels." + v.Key, v.Pos})
	}
	for _, f := range in.Sheet.Fluids {
		out = append(out, thing{f.Key, "fluid", "fluids." + f.Key, f.Pos})
	}
	return out
}

// names says whether a text has the name as a whole word, so that H12 is not taken for H1.
func names(text, name string) bool {
	return slices.Contains(strings.FieldsFunc(text, func(r rune) bool {
		return !unicode.IsLetter(r) && !unicode.IsDigit(r) && r != '-' && r != '_'
	}), name)
}

// against are the findings about the thing.
func (in Input) against(t thing) []report.Finding {
	var out []report.Finding
	for _, f := range in.Verdict.Findings {
		if names(f.Subject, t.name) || names(f.Part, t.name) {
			out = append(out, f)
		}
	}
	return out
}

// gapsOf are the facts about the thing that are missing.
func (in Input) gapsOf(t thing) []Gap {
	out := []Gap{}
	for _, u := range in.Verdict.Unjudged {
		if names(u.Subject, t.name) {
			out = append(out, Gap{u.Subject, u.Why, u.Ask, len(u.Rules)})
		}
	}
	return out
}

// Gap is one fact nobody has stated, and how many rules wait for it.
type Gap struct {
	Subject string `json:"subject"`
	Why     string `json:"why"`
	Ask     string `json:"ask"`
	Rules   int    `json:"rules"`
}

// standing is how the thing stands in a few words.
func (in Input) standing(t thing) string {
	n := map[string]int{}
	for _, f := range in.against(t) {
		n[f.Severity]++
	}
	switch gaps := len(in.gapsOf(t)); {
	case n["stop"] > 0:
		return fmt.Sprintf("stops the line: %d", n["stop"])
	case gaps > 0:
		return fmt.Sprintf("not shown to be fit, facts missing: %d", gaps)
	case n["condition"] > 0:
		return fmt.Sprintf("fit on conditions: %d", n["condition"])
	case n["note"] > 0:
		return fmt.Sprintf("nothing stands against it, notes: %d", n["note"])
	}
	return "nothing stands against it"
}
