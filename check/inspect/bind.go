package inspect

import (
	"strings"

	"lineworthy/catalog"
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
	Own                 []Reject // those that do not hold for every item of its group
	part                *sheet.Part
	joint               *resolve.Joint
	fuel                bool // its run carries what can burn
}

// Reject is what takes the item out of use, and who says so.
type Reject struct{ Text, Source string }

// walk binds the readings to the sheet that the line was resolved from, from the source of each run to its destination.
func walk(l *resolve.Line, f *facts.Facts, cat *catalog.Catalog) (out []*Item) {
	seen := map[string]bool{}
	add := func(i *Item) {
		if i != nil && !seen[i.ID] {
			seen[i.ID] = true
			out = append(out, i)
		}
	}
	vessel := func(r *resolve.Run, v *resolve.Vessel, point *resolve.End) {
		if v != nil && seen[v.Key] && point != nil && point.Sheet != nil { // another opening of one that is on the list
			add(pointItem(r.Key, v, point, cat))
		}
		add(vesselItem(r, v, point, f.Line.Flammable, cat))
	}
	needs := map[string]facts.Joint{}
	for _, j := range f.Joints {
		needs[j.ID] = j
	}
	for _, r := range l.Runs {
		if r.Source == nil {
			add(supplyItem(r, cat))
		}
		vessel(r, r.Source, r.SourceEnd)
		n := 0
		for _, p := range r.Parts {
			if p.Sheet.Kind.V != "weight" {
				add(jointItem(r.Joints[n], needs, cat))
				n++
			}
			add(partItem(p, f.Line.Flammable))
		}
		add(jointItem(r.Joints[n], needs, cat))
		vessel(r, r.Target, r.TargetEnd)
	}
	for _, i := range unused(l, cat) {
		add(i)
	}
	return out
}

func partItem(p *resolve.Part, fuel bool) *Item {
	i := &Item{ID: p.ID, Kind: p.Sheet.Kind.V, Name: p.Sheet.Name.V, Run: p.Run.Key, part: p.Sheet}
	oxygen := p.Sheet.OxyClean.V || carries(p.Run, "oxygen") || carries(p.Run, "liquid-oxygen") || carries(p.Run, "nitrous-oxide")
	for _, f := range p.Run.Fluids {
		i.fuel = i.fuel || resolve.Yes(f.Cat.Hazards.Flammable)
	}
	if i.Kind == "hose" {
		i.Fields, i.Reject = hoseFields(p.Sheet, oxygen, fuel), hoseRejects(p)
	} else {
		i.Fields, i.Reject = partFields(p.Sheet, oxygen, fuel), partRejects(p.Sheet)
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

func vesselItem(r *resolve.Run, v *resolve.Vessel, point *resolve.End, fuel bool, cat *catalog.Catalog) *Item {
	if v == nil {
		return nil
	}
	i := &Item{ID: v.Key, Kind: "vessel", Run: r.Key, Name: v.Sheet.Kind.V, Reject: vesselRejects}
	i.Fields = []Field{{Key: "damage", Verb: Look, Label: "shell, supports, nozzles; write none, or what is wrong"}}
	i.Fields = append(i.Fields, stated(v.Sheet.Rated, "rated", "pressure on its plate", &v.Sheet.Rated)...)
	i.Fields = append(i.Fields, stated(v.Sheet.Discharge, "discharge_limit", "highest discharge pressure on its plate", &v.Sheet.Discharge)...)
	if v.Sheet.Relief != nil {
		i.Fields = append(i.Fields, exactly(leaf("relief_set", Read, "set pressure of its relief device, on plate or seal", &v.Sheet.Relief.Set, units.ParsePressure), "it is not the device judged", otherDevice))
	}
	if v.Sheet.Vent.Set {
		i.Fields = append(i.Fields, exactly(leaf("vent", Look, "its vent now, followed to its end: open or closed", &v.Sheet.Vent, oneOf([]string{"open", "closed"})), "the vessel bears another pressure that way", "Bring the vent into the state of the sheet, or put the sheet right and have it judged anew."))
	}
	if v.Sheet.Filled.Set {
		i.Fields = append(i.Fields, leaf("filled", Read, "level now, as a percentage", &v.Sheet.Filled, units.ParseFraction))
	}
	if v.Sheet.Bonded.Set {
		i.Fields = append(i.Fields, off(leaf("bonded", Look, "earth connection in place and tight: yes or no", &v.Sheet.Bonded, yes), fuel))
	}
	if point != nil && point.Sheet != nil && point.Sheet.Marked.Set {
		i.Fields = append(i.Fields, markField(point, cat))
	}
	return i
}

// labelled rejects a point whose label is not that of the sheet, by no other name of the same fluid. A label that
// is gone shows nothing.
func labelled(f Field, cat *catalog.Catalog) Field {
	f.same = func(text string) bool { return alike(tight(text), tight(f.Expect)) || sameFluid(text, f.Expect, cat) }
	f = exactly(f, "it is another point, or another fluid", "Connect nothing. Find out what is in it; where the label is right, put the sheet right and have it judged anew.")
	unlike, gone := f.unlike, func(text string) bool { return strings.EqualFold(text, "none") && !f.same(text) }
	f.unlike = func(text string) string {
		if gone(text) {
			return ""
		}
		return unlike(text)
	}
	f.doubt = func(text string) string {
		if f.Expect == "" || !gone(text) {
			return ""
		}
		return "the label " + f.Expect + " of the sheet is gone: find out what this is by another way, and label it anew"
	}
	return f
}

// tight leaves the spaces out of a label: 30 % and 30% are one.
func tight(label string) string { return strings.Join(strings.Fields(label), "") }

func sameFluid(a, b string, cat *catalog.Catalog) bool {
	x, err := cat.Fluid(a)
	if err != nil {
		return false
	}
	y, err := cat.Fluid(b)
	return err == nil && x.ID == y.ID
}
