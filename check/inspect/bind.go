package inspect

import (
	"fmt"

	"lineworthy/check/facts"
	"lineworthy/check/resolve"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

// Item is one part, joint or vessel, in walking order.
type Item struct {
	ID, Kind, Name, Run string
	Fields              []Field
	Reject              []Reject
	part                *sheet.Part
	joint               *resolve.Joint
	fuel                bool // its run carries what can burn
}

// Reject is what takes the item out of use, and who says so.
type Reject struct{ Text, Source string }

// walk binds the readings to the sheet that the line was resolved from, from the source of each run to its destination.
func walk(l *resolve.Line, f *facts.Facts) (out []*Item) {
	seen := map[string]bool{}
	add := func(i *Item) {
		if i != nil && !seen[i.ID] {
			seen[i.ID] = true
			out = append(out, i)
		}
	}
	needs := map[string]facts.Joint{}
	for _, j := range f.Joints {
		needs[j.ID] = j
	}
	for _, r := range l.Runs {
		add(vesselItem(r, r.Source, nil))
		n := 0
		for _, p := range r.Parts {
			if p.Sheet.Kind.V != "weight" {
				add(jointItem(r.Joints[n], needs))
				n++
			}
			add(partItem(p))
		}
		add(jointItem(r.Joints[n], needs))
		add(vesselItem(r, r.Target, r.TargetEnd))
	}
	return out
}

func partItem(p *resolve.Part) *Item {
	i := &Item{ID: p.ID, Kind: p.Sheet.Kind.V, Name: p.Sheet.Name.V, Run: p.Run.Key, part: p.Sheet}
	oxygen := carries(p.Run, "oxygen")
	for _, f := range p.Run.Fluids {
		i.fuel = i.fuel || resolve.Yes(f.Cat.Hazards.Flammable)
	}
	if i.Kind == "hose" {
		i.Fields, i.Reject = hoseFields(p.Sheet, oxygen), hoseRejects(p)
	} else {
		i.Fields, i.Reject = partFields(p.Sheet, oxygen), partRejects(p.Sheet)
	}
	return i
}

func carries(r *resolve.Run, id string) bool {
	for _, f := range r.Fluids {
		if f.Props.ID == id {
			return true
		}
	}
	return false
}

func vesselItem(r *resolve.Run, v *resolve.Vessel, point *resolve.End) *Item {
	if v == nil {
		return nil
	}
	i := &Item{ID: v.Key, Kind: "vessel", Run: r.Key, Name: v.Sheet.Kind.V, Reject: vesselRejects}
	i.Fields = []Field{{Key: "damage", Verb: Look, Label: "shell, supports, nozzles, vent free; write none, or what is wrong"}}
	i.Fields = append(i.Fields, stated(v.Sheet.Rated, "rated", "pressure on its plate", &v.Sheet.Rated)...)
	if v.Sheet.Filled.Set {
		i.Fields = append(i.Fields, leaf("filled", Read, "level now, as a percentage", &v.Sheet.Filled, units.ParseFraction))
	}
	if v.Sheet.Bonded.Set {
		i.Fields = append(i.Fields, leaf("bonded", Look, "earth connection in place and tight: yes or no", &v.Sheet.Bonded, yes))
	}
	if point != nil && point.Sheet != nil && point.Sheet.Marked.Set {
		i.Fields = append(i.Fields, leaf("marked", Read, "label at the point "+point.Name+", word for word", &point.Sheet.Marked, oneOf(nil)))
	}
	return i
}

func jointItem(j *resolve.Joint, needs map[string]facts.Joint) *Item {
	known, ok := needs[j.ID]
	if ok && known.Open {
		return nil // an open hatch is no joint
	}
	i := &Item{ID: j.ID, Kind: "joint", Run: j.Run.Key, joint: j, Reject: jointRejects}
	i.Fields = []Field{{Key: "damage", Verb: Look, Label: "both faces and threads clean and whole, nothing forced; write none, or what is wrong"}}
	sealed := !known.NeedsSeal.Known || known.NeedsSeal.V || len(j.Seals) > 0
	if sealed && (j.A.Sheet != nil || j.B.Sheet != nil) {
		i.Fields = append(i.Fields, Field{Key: "seal", Verb: Look, Label: "seal in place, whole and clean: write its kind, or none", Expect: kinds(j), put: sealPut(j)})
	}
	if e := lockEnd(j); known.NeedsLock && e != nil {
		i.Fields = append(i.Fields, leaf("locked", Look, "levers pinned or ring turned home: yes or no", &e.Locked, yes))
	}
	return i
}

func lockEnd(j *resolve.Joint) *sheet.End {
	for _, e := range []*resolve.End{j.A, j.B} {
		if e.Sheet != nil && e.Sheet.Locked.Set {
			return e.Sheet
		}
	}
	if j.B.Sheet != nil {
		return j.B.Sheet
	}
	return j.A.Sheet
}

func kinds(j *resolve.Joint) string {
	var all []sheet.Of[string]
	for _, s := range j.Seals {
		all = append(all, s.Sheet.Kind)
	}
	if len(all) == 0 && j.Stated {
		return "none"
	}
	return joined(all)
}

// sealPut replaces the seals of the joint. Of a seal of another kind nothing else is known.
func sealPut(j *resolve.Joint) func(string) error {
	return func(text string) error {
		if text == kinds(j) {
			return nil
		}
		if text == "" {
			return fmt.Errorf("write the kind of the seal, or none")
		}
		var at *sheet.End
		for _, e := range []*resolve.End{j.A, j.B} {
			if e.Sheet != nil {
				e.Sheet.Seals, at = nil, e.Sheet
			}
		}
		if text == "none" {
			at.NoSeal = sheet.Of[bool]{V: true, Set: true, Pos: at.Standard.Pos}
			return nil
		}
		at.NoSeal = sheet.Of[bool]{}
		at.Seals = []sheet.Seal{{Kind: sheet.Of[string]{V: text, Set: true, Pos: at.Standard.Pos, Text: text}}}
		return nil
	}
}
