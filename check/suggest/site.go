package suggest

import (
	"fmt"
	"slices"
	"strings"

	"lineworthy/check/report"
	"lineworthy/check/resolve"
)

// onSite are the faults that no part from the catalog cures, but that a person can put right on the spot: the sheet is
// then changed to say so, and the work listed apart.
var onSite = map[string]func(*search, *report.Finding) (change, bool){
	"static/isolated_conductor_at_open_point":  bond,
	"static/isolated_conductor_in_closed_line": bond,
	"connection/levers_not_locked":             pin,
	"static/splash_filling":                    dip,
	"marking/point_unmarked_among_others":      mark,
	"marking/lone_point_unmarked":              mark,
	"identity/point_holds_another_fluid":       otherPoint,
	"isolation/no_remote_or_automatic_stop":    remoteStop,
	"inspection/pressure_test_overdue":         dated("tested", "pressure-test %s and record it"),
	"inspection/not_inspected_within_a_year":   dated("inspected", "inspect %s and record it"),
	"static/resistance_record_too_old":         dated("resistance_tested", "measure the resistance of %s and record it"),
	"inspection/bend_too_tight":                wider,
}

// work is all that can be put right on the site, each once.
func (s *search) work(t *trial) (out []change) {
	for i := range t.verdict.Findings {
		f := &t.verdict.Findings[i]
		do := onSite[f.Rule]
		if do == nil || f.Severity == "note" {
			continue
		}
		c, ok := do(s, f)
		if !ok || s.o.Part != "" && !strings.HasPrefix(c.where, s.o.Part) || slices.ContainsFunc(out, func(x change) bool { return x.where == c.where && x.after == c.after }) {
			continue
		}
		c.kind = "site"
		out = append(out, c)
	}
	return out
}

func (s *search) part(id string) (*resolve.Part, string) {
	for _, r := range s.line.Runs {
		for i, p := range r.Parts {
			if p.ID == id {
				return p, fmt.Sprintf("runs.%s.parts[%d]", r.Key, i)
			}
		}
	}
	return nil, ""
}

func bond(s *search, f *report.Finding) (change, bool) {
	p, path := s.part(f.Part)
	if p == nil {
		return change{}, false
	}
	return change{where: p.ID, after: "bond " + p.ID + " to the vessel and to earth, and measure the bond", edits: []edit{put(path, "bonded", "yes", "to be done and measured")}}, true
}

func pin(s *search, f *report.Finding) (change, bool) {
	for _, r := range s.line.Runs {
		for _, j := range r.Joints {
			if j.ID != f.Subject {
				continue
			}
			c := change{where: j.ID, after: "pin the levers or turn the ring at " + j.ID}
			for _, e := range []*resolve.End{j.A, j.B} {
				if e.Sheet != nil && (e.Sheet.Locked.Set || e.Part != nil) {
					c.edits = append(c.edits, put(e.Path, "locked", "yes", "to be pinned before each job"))
				}
			}
			return c, len(c.edits) > 0
		}
	}
	return change{}, false
}

// pointEnd finds a point by the name that findings give it: vessel/point.
func (s *search) pointEnd(id string) *resolve.End {
	vessel, point, _ := strings.Cut(id, "/")
	for _, v := range s.line.Vessels {
		if v.Key == vessel {
			return v.Points[point]
		}
	}
	return nil
}

func dip(s *search, f *report.Finding) (change, bool) {
	e := s.pointEnd(f.Subject)
	if e == nil {
		return change{}, false
	}
	return change{where: f.Subject, after: "fill " + f.Subject + " through an earthed dip pipe that reaches the bottom",
		edits: []edit{put(e.Path, "entry", "dip-pipe", "to be fitted")}}, true
}

func mark(s *search, f *report.Finding) (change, bool) {
	e := s.pointEnd(f.Subject)
	if e == nil || e.Vessel == nil {
		return change{}, false
	}
	name := s.contents(e.Vessel)
	if name == "" {
		return change{}, false
	}
	return change{where: f.Subject, after: fmt.Sprintf("mark %s with %q", f.Subject, name), edits: []edit{put(e.Path, "marked", name, "to be put up")}}, true
}

// contents is what a vessel is for: what it says, else the only product that comes into it.
func (s *search) contents(v *resolve.Vessel) string {
	if v.Contents != nil {
		return v.Contents.Cat.Name
	}
	name := ""
	for _, r := range s.line.Runs {
		for _, f := range r.Fluids {
			if r.Target == v && f.Role == "product" {
				if name != "" && name != f.Cat.Name {
					return ""
				}
				name = f.Cat.Name
			}
		}
	}
	return name
}

// otherPoint puts the hose on the point in reach whose vessel is for what the run brings, when there is just one.
func otherPoint(s *search, f *report.Finding) (change, bool) {
	for _, r := range s.line.Runs {
		if r.Target == nil || r.Target.Key+"/"+r.TargetEnd.Name != f.Subject {
			continue
		}
		var right []int
		for i, p := range s.line.Nearby {
			if p.Vessel.Contents != nil && carries(r, p.Vessel.Contents.Cat.ID) {
				right = append(right, i)
			}
		}
		if len(right) != 1 {
			return change{}, false
		}
		p, i := s.line.Nearby[right[0]], right[0]
		path := fmt.Sprintf("nearby[%d]", i)
		return change{
			where: r.Target.Key, after: fmt.Sprintf("connect run %s to %s, not to %s", r.Key, p.ID, f.Subject),
			edits: []edit{
				{"runs." + r.Key, "to", record("vessel", p.Vessel.Key, "inlet", p.End.Name), "the point that holds the same fluid"},
				put(path, "vessel", r.Target.Key, ""), put(path, "point", r.TargetEnd.Name, ""),
			},
		}, true
	}
	return change{}, false
}

func carries(r *resolve.Run, fluid string) bool {
	return slices.ContainsFunc(r.Fluids, func(f *resolve.Fluid) bool { return f.Role == "product" && f.Cat.ID == fluid })
}

func remoteStop(_ *search, _ *report.Finding) (change, bool) {
	return change{where: "line", after: "fit a stop that can be worked from outside the hazard zone", edits: []edit{put("safeguards", "remote_stop", "yes", "to be fitted and tried")}}, true
}

func dated(key, text string) func(*search, *report.Finding) (change, bool) {
	return func(s *search, f *report.Finding) (change, bool) {
		p, path := s.part(f.Part)
		if p == nil {
			return change{}, false
		}
		return change{where: p.ID, record: true, after: fmt.Sprintf(text, p.ID), edits: []edit{put(path, key, s.line.AsOf.String(), "to be done and recorded")}}, true
	}
}

func wider(s *search, f *report.Finding) (change, bool) {
	p, path := s.part(f.Part)
	need := f.Numbers["need_mm"]
	if p == nil || need == 0 || p.Sheet.Lay != nil {
		return change{}, false
	}
	return change{where: p.ID, after: fmt.Sprintf("lay %s to a radius of at least %d mm: a longer hose, an elbow or a support", p.ID, need),
		edits: []edit{put(path, "bend", fmt.Sprintf("%d mm", need), "to be laid so")}}, true
}
