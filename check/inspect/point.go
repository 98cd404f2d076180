package inspect

import (
	"lineworthy/catalog"
	"lineworthy/check/resolve"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

var (
	pointRejects    = []Reject{{"label of another fluid; what closes it is missing, loose or of another sort; something is coupled to it that is not on the sheet", practice}}
	cylinderRejects = []Reject{{"label missing or of another fluid; dents, burns, a bent or leaking valve; not held upright", practice}}
	pipeRejects     = []Reject{{"label missing or of another fluid; a shut-off that leaks or does not move", practice}}
)

// pointItem is one opening of a vessel that has its own line on the list. It is none when the sheet says nothing of it.
func pointItem(run string, v *resolve.Vessel, e *resolve.End, cat *catalog.Catalog) *Item {
	i := &Item{ID: v.Key + "/" + e.Name, Kind: "point", Name: "of " + v.Key, Run: run, Reject: pointRejects}
	if e.Sheet.Marked.Set {
		i.Fields = append(i.Fields, markField(e, cat))
	}
	if len(i.Fields) == 0 {
		return nil
	}
	return i
}

func markField(e *resolve.End, cat *catalog.Catalog) Field {
	return labelled(leaf("marked", Read, "label at the point "+e.Name+", word for word, or none", &e.Sheet.Marked, oneOf(nil)), cat)
}

// shutItem is an opening that this line does not use: the hose may reach it, or what closes it is on the sheet.
func shutItem(v *resolve.Vessel, e *resolve.End, cat *catalog.Catalog) *Item {
	i := pointItem("", v, e, cat)
	if i == nil {
		i = &Item{ID: v.Key + "/" + e.Name, Kind: "point", Reject: pointRejects}
	}
	i.Name = "of " + v.Key + ", which stays shut"
	i.Fields = append(i.Fields, Field{Key: "shut", Verb: Look, Label: "is it shut, and nothing coupled to it: yes or no", mend: "Shut it, take off what is coupled to it, and look again."})
	if e.Sheet.Padlock.Set {
		i.Fields = append(i.Fields, lost(leaf("padlocked", Look, "is it locked: yes or no", &e.Sheet.Padlock, yes), "it is not locked, and the sheet counts on that", "Lock it, and look again before anything is coupled."))
	}
	if e.Sheet.ClosedBy.Set {
		i.Fields = append(i.Fields, leaf("closed_by", Look, "what closes it: valve, cap, plug, blind-flange, dust-cap, piped or none", &e.Sheet.ClosedBy,
			oneOf([]string{"valve", "cap", "plug", "blind-flange", "dust-cap", "piped", "none"})))
	}
	return i
}

// unused are the openings in reach of the hose, and those of which the sheet says what closes them.
func unused(l *resolve.Line, cat *catalog.Catalog) (out []*Item) {
	used := map[*resolve.End]bool{}
	for _, r := range l.Runs {
		used[r.SourceEnd], used[r.TargetEnd] = true, true
	}
	for _, p := range l.Nearby {
		if !used[p.End] {
			out = append(out, shutItem(p.Vessel, p.End, cat))
		}
	}
	for _, v := range l.Vessels {
		for _, p := range v.Sheet.Points {
			if e := v.Points[p.Key]; e.Sheet.ClosedBy.Set && !used[e] {
				out = append(out, shutItem(v, e, cat))
			}
		}
	}
	return out
}

// supplyItem is the cylinder or the pipe that a run starts from: another gas in it is not seen from its outlet.
func supplyItem(r *resolve.Run, cat *catalog.Catalog) *Item {
	s := &r.Sheet.Source
	i := &Item{Kind: "supply", Run: r.Key, Reject: pipeRejects}
	of, label, look := &s.Supply, "highest pressure it is marked with", "shut-off and outlet whole and clean"
	if s.Cylinder.Set {
		i.Kind, i.Reject = "cylinder", cylinderRejects
		of, label, look = &s.Cylinder, "filling pressure it is marked with", "held so that it cannot fall, valve whole, outlet clean"
	}
	i.ID = i.Kind + " of " + r.Key
	i.Fields = []Field{{Key: "damage", Verb: Look, Label: look + "; write none, or what is wrong"}}
	if f := contentsField(r, cat); f != nil {
		i.Fields = append(i.Fields, *f)
	}
	if of.Set {
		i.Fields = append(i.Fields, atLeast(leaf("pressure", Read, label, of, units.ParsePressure), *of))
	}
	return i
}

func contentsField(r *resolve.Run, cat *catalog.Catalog) *Field {
	for _, x := range r.Fluids {
		if x.Sheet == nil || x.Role == "flush" {
			continue
		}
		f := Field{Key: "contents", Verb: Read, Label: "what it holds by its label, word for word; a colour proves nothing", Expect: x.Sheet.Fluid.V}
		f.put = func(string) error { return nil }
		f = labelled(f, cat)
		f.unlike, f.doubt = mustBe(f, "it is another source, or another fluid"), nil
		return &f
	}
	return nil
}

// atLeast keeps the pressure of the sheet where what is read is less: a cylinder is exchanged for a full one.
func atLeast(f Field, was sheet.Of[units.Pressure]) Field {
	put := f.put
	f.put = func(text string) error {
		p, err := units.ParsePressure(text)
		if err != nil || gauge(p) <= gauge(was.V) {
			return err
		}
		return put(text)
	}
	return f
}
