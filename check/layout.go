package check

import (
	"lineworthy/check/report"
	"lineworthy/check/resolve"
)

// runs is the line as it is laid out, for reports that draw it.
func runs(l *resolve.Line) []report.Run {
	out := []report.Run{}
	for _, r := range l.Runs {
		run := report.Run{Name: r.Key, From: from(r), To: r.Sheet.To.Vessel.V, Carries: []string{}, Parts: []report.Part{}}
		for _, f := range r.Fluids {
			run.Carries = append(run.Carries, f.Cat.Name)
		}
		for _, p := range r.Parts {
			run.Parts = append(run.Parts, report.Part{ID: p.ID, Kind: p.Sheet.Kind.V, Name: p.Sheet.Name.V, Branch: p.Branch})
		}
		out = append(out, run)
	}
	return out
}

func from(r *resolve.Run) string {
	s := &r.Sheet.Source
	switch {
	case s.Cylinder.Set:
		return "cylinder, " + s.Cylinder.Text
	case s.Supply.Set:
		return "supply, " + s.Supply.Text
	}
	return s.Vessel.V
}
