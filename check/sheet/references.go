package sheet

import (
	"fmt"
	"slices"
	"strings"
)

// references checks that every name points at something the sheet describes.
func (r *reader) references() {
	first := map[string]Pos{}
	fluids := keysOf(r.line.Fluids)
	for _, run := range r.line.Runs {
		path := "runs." + run.Key
		for i, fluid := range run.V.Carries {
			r.refers(fluid, fluids, "fluids", fmt.Sprintf("%s.carries[%d]", path, i))
		}
		r.test(run.V, fluids, path+".test")
		r.source(run.V.Source, path+".source")
		r.target(run.V.To, path+".to")
		for i, part := range run.V.Parts {
			r.unique(part.ID, first, fmt.Sprintf("%s.parts[%d].id", path, i))
		}
	}
	for i, near := range r.line.Nearby {
		path := fmt.Sprintf("nearby[%d]", i)
		r.point(near.Vessel, near.Point, path+".vessel", path+".point")
	}
}

// test wants a fluid of the sheet, and what is isolated to be a part of the run or a vessel.
func (r *reader) test(run Run, fluids []string, path string) {
	if run.Test == nil {
		return
	}
	r.refers(run.Test.Fluid, fluids, "fluids", path+".fluid")
	known := keysOf(r.line.Vessels)
	for _, p := range run.Parts {
		known = append(known, p.ID.V)
	}
	for i, name := range run.Test.Isolated {
		r.refers(name, known, "vessels, or among the parts of the run", fmt.Sprintf("%s.isolated[%d]", path, i))
	}
}

// source wants exactly one start: with two the sheet contradicts itself, with none there is no pressure to judge.
func (r *reader) source(s Source, path string) {
	pos, written := r.line.Pos[path]
	if !written {
		return // missing, and reported so
	}
	count := 0
	for _, set := range []bool{s.Vessel.Set, s.Cylinder.Set, s.Supply.Set} {
		if set {
			count++
		}
	}
	if count != 1 && !r.told[path] {
		text := "names no vessel, cylinder or supply"
		if count > 1 {
			text = "names more than one of vessel, cylinder and supply"
		}
		r.fault(pos, path, text, "write {vessel: drum}, {cylinder: 200 bar(g)} or {supply: 6 bar(g)}")
	}
	r.point(s.Vessel, s.Outlet, path+".vessel", path+".outlet")
}

func (r *reader) target(t Target, path string) {
	pos, written := r.line.Pos[path]
	if written && !t.Vessel.Set && t.End == nil && !r.told[path] {
		r.fault(pos, path, "names neither a vessel nor an end", "write to: day-tank, or describe the end")
	}
	r.point(t.Vessel, t.Inlet, path+".vessel", path+".inlet")
}

// point checks a vessel's name and the name of a point on it.
func (r *reader) point(vessel, point Of[string], vesselPath, pointPath string) {
	if point.Set && !vessel.Set && !r.told[vesselPath] {
		r.fault(point.Pos, pointPath, "names a point of no vessel", "write the vessel too")
	}
	if !vessel.Set || !r.refers(vessel, keysOf(r.line.Vessels), "vessels", vesselPath) || !point.Set {
		return
	}
	for _, known := range r.line.Vessels {
		if known.Key == vessel.V {
			r.refers(point, keysOf(known.V.Points), "vessels."+known.Key+".points", pointPath)
		}
	}
}

// comparedNames bounds the search for the nearest name in a hopeless file.
const comparedNames = 200

// refers says whether the name is among the known ones, which stand under the given key.
func (r *reader) refers(name Of[string], known []string, under, path string) bool {
	if !name.Set {
		return false
	}
	if slices.Contains(known, name.V) {
		return true
	}
	if len(known) == 0 && r.told[under] {
		return false // the names themselves could not be read
	}
	known = known[:min(len(known), comparedNames)]
	hint := "describe it there"
	if meant := r.nearest(name.V, known); meant != "" {
		hint = "did you mean " + meant + "?"
	} else if len(known) > 0 {
		hint += ", or use one of " + shown(strings.Join(known, ", "))
	}
	r.fault(name.Pos, path, quote(name.V)+" is not described under "+shown(under), hint)
	return false
}

func (r *reader) unique(id Of[string], first map[string]Pos, path string) {
	if !id.Set {
		return
	}
	if at, twice := first[id.V]; twice {
		r.fault(id.Pos, path, fmt.Sprintf("%s is the id of the part on line %d too", quote(id.V), at.Line), "give each part of the line its own id")
		return
	}
	first[id.V] = id.Pos
}

func keysOf[T any](entries []Named[T]) []string {
	var keys []string
	for _, entry := range entries {
		keys = append(keys, entry.Key)
	}
	return keys
}
