package rules

import (
	"embed"
	"fmt"
	"slices"
	"strings"

	"lineworthy/check/facts"
)

// The pages are made from the rules by their tests, and hold an example that is true of the rule.
//
//go:embed */*/README.md
var pages embed.FS

// exampleHeading stands above the example on a page.
const exampleHeading = "\n## What it says\n\n> "

// Example is what the rule says of a made-up line. The error means that the program is broken.
func (r Rule) Example() (string, error) {
	text, err := pages.ReadFile(r.ID + "/README.md")
	if err != nil {
		return "", fmt.Errorf("rules: %w", err)
	}
	_, rest, found := strings.Cut(string(text), exampleHeading)
	if !found {
		return "", fmt.Errorf("rules: the page of %s has no example", r.ID)
	}
	line, _, _ := strings.Cut(rest, "\n")
	return line, nil
}

// Regimes are the laws that the sheet must name for the rule to judge, any of them; none if it judges every line.
func (r Rule) Regimes() []string {
	for _, s := range r.Scope {
		if names, ok := strings.CutPrefix(s, "regime="); ok {
			return strings.Split(names, "|")
		}
	}
	return nil
}

// Where says in plain words under which conditions the rule judges.
func (r Rule) Where() []string {
	var out []string
	for _, s := range r.Scope {
		out = append(out, plainCondition(s))
	}
	return out
}

func plainCondition(s string) string {
	s, not := strings.CutPrefix(s, "!")
	key, values, given := strings.Cut(s, "=")
	words := strings.ReplaceAll(strings.TrimPrefix(key, "line."), "_", " ")
	either := strings.ReplaceAll(strings.ReplaceAll(values, "-", " "), "|", " or ")
	switch {
	case key == "regime" && not:
		return "the sheet does not name " + strings.ReplaceAll(values, "|", " or ")
	case key == "regime":
		return "the sheet names " + strings.ReplaceAll(values, "|", " or ")
	case given && not:
		return words + " is not " + either
	case given:
		return words + " is " + either
	case not:
		return "not: " + words
	}
	return words
}

// Need is a fact that a rule cannot judge without.
type Need struct {
	Fact string `json:"fact"`
	Ask  string `json:"ask"` // who can supply it
}

// Asks are the facts the rule cannot judge without: if one is missing the line is unproven.
func (r Rule) Asks() []Need {
	out := []Need{}
	for _, path := range r.Needs {
		collection, key, _ := strings.Cut(path, ".")
		f, _ := facts.Find(collection, key)
		out = append(out, Need{path, f.Ask})
	}
	return out
}

// subjectWords are what a rule looks at, for a person.
var subjectWords = map[string]string{
	"line": "the line as a whole", "fluids": "every fluid of the line", "hoses": "every hose", "services": "every fluid in every hose",
	"parts": "every part", "regulators": "every regulator", "capacities": "everything that holds pressure, where it is weakest against what can reach it",
	"limits": "every temperature range that a part must stay in", "joints": "every joint of two ends", "seals": "every seal",
	"pairs": "every material that a fluid reaches", "bars": "every bar of a law that meets a material of the line",
	"meetings": "every two fluids that can meet", "points": "every receiving point, the one meant and those in reach", "cases": "every situation of pressure",
	"sections": "every stretch between two things that close", "surges": "every device that closes", "reliefs": "every relief device",
	"vessels": "every vessel", "gauges": "every gauge", "flows": "the flow of every run", "releases": "every gas run that could burst",
	"tests": "every pressure test the sheet states", "test_items": "everything that the pressure of a test reaches", "steams": "the steam of every run",
	"labels": "every two labels for different fluids that read alike", "closures": "everything that closes an end not in use",
	"tails": "the tails and clamps of every hose end that the sheet describes, or that was made up on site", "excess_flows": "every excess-flow valve",
	"values": "every favourable value the line rests on",
}

// LooksAt is the subject of the rule in plain words.
func (r Rule) LooksAt() string { return subjectWords[r.Subject] }

// Effect says what a finding of this severity does to the line.
func (r Rule) Effect() string { return severityWords[r.Severity] }

// severityWords say what a finding of that severity does to the line.
var severityWords = map[string]string{
	"stop":      "The line is unfit.",
	"condition": "The line may be used once the condition is met.",
	"note":      "The line is judged as before; whoever uses it should know.",
}

// Areas are the groups of rules, sorted.
func Areas() []string { return slices.Sorted(slices.Values(areas)) }
