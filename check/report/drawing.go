package report

import (
	"fmt"
	"strings"
)

// drawing is one run: strips that each fit a page, and the same in words.
type drawing struct {
	ID, Name, Carries, Marks string
	Strips                   []strip
	Steps                    []step
}

// step is one part or end in words.
type step struct {
	Name  string
	Said  []string
	Marks string
}

// column is a place along the pipe: a part or end on it, if any, and the branches above, the lowest first.
type column struct {
	on    *drawn
	above []*drawn
}

// drawn is a part or end with what it carries.
type drawn struct {
	name, kind, said string
	vessel, weakest  bool
	branch           bool
	marks            []mark
}

const (
	perStrip    = 6 // columns side by side on 720 units, which is the paper between its margins
	mostStacked = 3 // branches above one column, so that a strip never outgrows a page
)

func drawings(v *Verdict, all marking) []drawing {
	var out []drawing
	names := drawnNames(v)
	for i, r := range v.Runs {
		d := drawing{ID: fmt.Sprintf("run-%d", i+1), Name: r.Name, Carries: "nothing that is named"}
		if len(r.Carries) > 0 {
			d.Carries = strings.Join(r.Carries, ", ")
		}
		d.Marks = strings.Join(spoken(all.on(r.Name, names)), ", ")
		things := thingsOf(v, r, all, names)
		for _, t := range things {
			d.Steps = append(d.Steps, newStep(t))
		}
		d.Strips = strips(d, columnsOf(things))
		out = append(out, d)
	}
	return out
}

// thingsOf are the ends and parts of a run in the order of the flow.
func thingsOf(v *Verdict, r Run, all marking, names []string) []*drawn {
	things := []*drawn{{name: r.From, kind: "from", vessel: true}}
	for _, p := range r.Parts {
		things = append(things, &drawn{name: p.ID, kind: p.Kind, said: p.Name, branch: p.Branch})
	}
	things = append(things, &drawn{name: r.To, kind: "to", vessel: true})
	for _, t := range things {
		t.marks = all.on(t.name, names)
		t.weakest = v.Governing != nil && mentions(v.Governing.Part, t.name)
	}
	return things
}

func newStep(t *drawn) step {
	s := step{Name: t.name, Said: []string{t.kind}}
	if t.vessel {
		s = step{Name: t.kind + " " + t.name}
	}
	if t.said != "" {
		s.Said = append(s.Said, t.said)
	}
	if t.branch {
		s.Said = append(s.Said, "beside the flow")
	}
	marks := spoken(t.marks)
	if t.weakest {
		marks = append([]string{leastTag}, marks...)
	}
	s.Marks = strings.Join(marks, ", ")
	return s
}

// columnsOf sets the parts along the pipe and the branches above the part they follow.
func columnsOf(things []*drawn) []column {
	var out []column
	for _, t := range things {
		if !t.branch {
			out = append(out, column{on: t})
			continue
		}
		if len(out[len(out)-1].above) == mostStacked {
			out = append(out, column{})
		}
		last := &out[len(out)-1]
		last.above = append(last.above, t)
	}
	return out
}
