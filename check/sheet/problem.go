package sheet

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
)

// shownProblems keeps a hopeless file from scrolling its first fault away.
const shownProblems = 50

// Problem is one fault of a sheet. Line and Col count from 1; Line is 0 when the file itself could not be read.
type Problem struct {
	File      string
	Line, Col int
	Path      string // e.g. runs.liquid.parts[2].size, items counted from 0; empty for the sheet as a whole
	Text      string // what is wrong
	Hint      string // what to write; empty when Text says it
}

// Error is the problem as one line: place, path, what is wrong and what to write.
func (p Problem) Error() string {
	place := p.File
	if p.Line > 0 {
		place = fmt.Sprintf("%s:%d:%d", p.File, p.Line, p.Col)
	}
	if p.Path != "" {
		place += ": " + p.Path
	}
	if p.Hint == "" {
		return place + ": " + p.Text
	}
	return place + ": " + p.Text + "; " + p.Hint
}

// Problems are all faults of one sheet in the order of their position.
type Problems []Problem

// Error has one line for each of the first 50 problems and says how many more there are.
func (p Problems) Error() string {
	var lines []string
	for _, problem := range p[:min(len(p), shownProblems)] {
		lines = append(lines, problem.Error())
	}
	if more := len(p) - shownProblems; more > 0 {
		lines = append(lines, fmt.Sprintf("and %d more", more))
	}
	return strings.Join(lines, "\n")
}

// Unwrap gives each problem as an error of its own.
func (p Problems) Unwrap() []error {
	var all []error
	for _, problem := range p {
		all = append(all, problem)
	}
	return all
}

// sort keeps the order of the walk for faults of one place.
func (p Problems) sort() {
	slices.SortStableFunc(p, func(a, b Problem) int {
		return cmp.Or(cmp.Compare(a.Line, b.Line), cmp.Compare(a.Col, b.Col))
	})
}
