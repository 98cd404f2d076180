package resolve

import (
	"fmt"

	"lineworthy/catalog"
	"lineworthy/check/sheet"
)

func (r *resolver) allRuns() error {
	for i := range r.sheet.Runs {
		n := &r.sheet.Runs[i]
		run := &Run{Key: n.Key, Sheet: &n.V}
		r.line.Runs = append(r.line.Runs, run)
		if err := r.run(run, "runs."+n.Key); err != nil {
			return err
		}
	}
	return nil
}

func (r *resolver) run(run *Run, path string) error {
	for _, name := range run.Sheet.Carries {
		if f := r.fluids[name.V]; f != nil {
			run.Fluids = append(run.Fluids, f)
		}
	}
	if run.Sheet.Test != nil {
		run.Test = r.fluids[run.Sheet.Test.Fluid.V]
	}
	for i := range run.Sheet.Parts {
		p, err := r.part(run, i, fmt.Sprintf("%s.parts[%d]", path, i))
		if err != nil {
			return err
		}
		run.Parts = append(run.Parts, p)
	}
	if err := r.ends(run, path); err != nil {
		return err
	}
	return r.joints(run)
}

// ends finds the two far ends of the run: a point of a vessel, or an end written in place.
func (r *resolver) ends(run *Run, path string) error {
	s, t := &run.Sheet.Source, &run.Sheet.To
	run.Source, run.Target = r.tanks[s.Vessel.V], r.tanks[t.Vessel.V]
	var err error
	if run.SourceEnd, err = r.farEnd(run.Source, s.Outlet, s.End, "source", path+".source.end"); err != nil {
		return err
	}
	run.TargetEnd, err = r.farEnd(run.Target, t.Inlet, t.End, "destination", path+".to.end")
	return err
}

func (r *resolver) farEnd(v *Vessel, point sheet.Of[string], end *sheet.End, name, path string) (*End, error) {
	if v != nil && point.Set && v.Points[point.V] != nil {
		if end != nil {
			r.fault(r.sheet.Pos[path], path, "describes an end where a point of "+v.Key+" is named too", "keep one of the two")
		}
		return v.Points[point.V], nil
	}
	owner := name
	if v != nil {
		owner = v.Key
	}
	e, err := r.end(owner, name, end, path)
	if e != nil {
		e.Vessel = v
	}
	return e, err
}

func (r *resolver) part(run *Run, i int, path string) (*Part, error) {
	s := &run.Sheet.Parts[i]
	p := &Part{ID: s.ID.V, Sheet: s, Run: run, Index: i}
	p.Branch = s.Kind.V == "gauge" || s.Kind.V == "relief" || s.Kind.V == "closure" || s.Kind.V == "weight"
	var err error
	if p.Body, err = r.material(s.Material, path+".material"); err != nil {
		return nil, err
	}
	for j := range s.Wetted {
		m, err := r.material(s.Wetted[j], fmt.Sprintf("%s.wetted[%d]", path, j))
		if err != nil {
			return nil, err
		}
		if m != nil {
			p.Wetted = append(p.Wetted, m)
		}
	}
	if p.Hose, err = lookup(r, "hoses", s.Class, path+".class", r.cat.Hose, func(h *catalog.Hose) string { return h.ID }); err != nil {
		return nil, err
	}
	if s.Kind.V == "hose" {
		if err := r.layers(p, path+".layers"); err != nil {
			return nil, err
		}
	}
	return p, r.partEnds(p, path)
}

func (r *resolver) partEnds(p *Part, path string) error {
	for _, e := range []struct {
		name string
		from *sheet.End
		to   **End
	}{{"inlet", p.Sheet.Inlet, &p.Inlet}, {"outlet", p.Sheet.Outlet, &p.Outlet}, {"mount", p.Sheet.Mount, &p.Mount}} {
		end, err := r.end(p.ID, e.name, e.from, path+"."+e.name)
		if err != nil {
			return err
		}
		end.Part = p
		if end.Material == nil {
			end.Material = p.Body
		}
		*e.to = end
	}
	return nil
}
