package catalog

import (
	"fmt"
	"strings"
)

// NotFound says that a name is neither an id nor another name of any entry of the kind.
type NotFound struct {
	Kind, Name string
	Nearest    []string // ids, nearest first; empty when nothing is near
}

func (e *NotFound) Error() string {
	near := ""
	if len(e.Nearest) > 0 {
		near = " nearest: " + strings.Join(e.Nearest, ", ") + ";"
	}
	return fmt.Sprintf("no %s %q in the catalog;%s `lineworthy catalog list %s` shows all", singular(e.Kind), e.Name, near, e.Kind)
}

// Ambiguous says that a name fits several entries of the kind; the catalog never picks one.
type Ambiguous struct {
	Kind, Name string
	Choices    []string // ids, sorted
}

func (e *Ambiguous) Error() string {
	last := len(e.Choices) - 1
	return fmt.Sprintf("%q may mean %s or %s: write one of them", e.Name, strings.Join(e.Choices[:last], ", "), e.Choices[last])
}

// Fault is one thing wrong with one catalog file. Line is 0 when the fault is in no one line.
type Fault struct {
	File string
	Line int
	Text string
}

func (f Fault) Error() string {
	if f.Line == 0 {
		return fmt.Sprintf("catalog %s: %s", f.File, f.Text)
	}
	return fmt.Sprintf("catalog %s:%d: %s", f.File, f.Line, f.Text)
}

// Faults are all faults found, one to a line of the message.
type Faults []Fault

func (f Faults) Error() string {
	var lines []string
	for _, fault := range f {
		lines = append(lines, fault.Error())
	}
	return strings.Join(lines, "\n")
}

// err is nil when there are no faults, so that an empty list is no error.
func (f Faults) err() error {
	if len(f) == 0 {
		return nil
	}
	return f
}
