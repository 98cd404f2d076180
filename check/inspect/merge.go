package inspect

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"gopkg.in/yaml.v3"

	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

// items puts every reading where it belongs and notes each that is missing.
func (f *Filled) items(nodes []*yaml.Node) (bad []error) {
	given := map[string][]Reading{}
	for _, n := range nodes {
		id, line, rs, err := pairs(n)
		_, twice := given[id]
		switch {
		case err != nil:
			bad = append(bad, err)
		case !slices.ContainsFunc(f.list.Items, func(i *Item) bool { return i.ID == id }):
			bad = append(bad, fmt.Errorf("line %d: %q is not on the list of this sheet", line, id))
		case twice:
			bad = append(bad, fmt.Errorf("line %d: %s is given twice", line, id))
		default:
			given[id] = rs
		}
	}
	for _, i := range f.list.Items {
		bad = append(bad, f.item(i, given[i.ID])...)
	}
	return bad
}

func (f *Filled) item(i *Item, given []Reading) (bad []error) {
	for _, r := range given {
		if !slices.ContainsFunc(i.Fields, func(x Field) bool { return x.Key == r.Key }) {
			bad = append(bad, fmt.Errorf("line %d: %s has no reading %q: use %s", r.line, i.ID, r.Key, keys(i)))
		}
	}
	approved := identity(i)
	for _, x := range i.Fields {
		at := slices.IndexFunc(given, func(r Reading) bool { return r.Key == x.Key })
		if at < 0 || given[at].Text == "" {
			f.Open = append(f.Open, i.ID+": "+x.Key+" was not read ("+x.Label+")")
			continue
		}
		r := given[at]
		r.Item, r.Expect, r.same = i.ID, x.Expect, x.same != nil && x.same(r.Text)
		f.Readings = append(f.Readings, r)
		if err := f.read(i, x, r); err != nil {
			bad = append(bad, fmt.Errorf("line %d: %s of %s: %w", r.line, x.Key, i.ID, err))
		}
	}
	if i.part != nil && !i.part.Assigned.Set {
		i.part.Assigned = approved
	}
	return bad
}

// identity is what the hose must be: the one assigned, else the one the sheet was judged with.
func identity(i *Item) sheet.Of[string] {
	if i.part == nil {
		return sheet.Of[string]{}
	}
	return i.part.Tag
}

func keys(i *Item) string {
	var out []string
	for _, x := range i.Fields {
		out = append(out, x.Key)
	}
	return strings.Join(out, ", ")
}

// vague are words that people write where nothing is wrong, or where something is.
var vague = []string{"ok", "o.k.", "okay", "yes", "no", "good", "fine", "sound", "checked", "done", "n/a", "-", "x", "nothing", "nil", "none.", "no damage", "?"}

// unclear says whether a remark can mean either; most that begin with "no" mean that all is well, and some do not.
func unclear(text string) bool {
	text = strings.ToLower(text)
	first, _, more := strings.Cut(text, " ")
	return slices.Contains(vague, text) || more && slices.Contains([]string{"no", "none", "nothing", "all", "without"}, strings.TrimRight(first, ",;:."))
}

// read files one reading: in the sheet, or here when the sheet has no place for it.
func (f *Filled) read(i *Item, x Field, r Reading) error {
	switch {
	case x.Key == "damage":
		if unclear(r.Text) {
			return fmt.Errorf("%q can mean either: write none, or what is wrong", r.Text)
		}
		if !strings.EqualFold(r.Text, "none") {
			f.reject(i.ID, "damage found: "+r.Text, "Take it out of use and mark it so; repair or replace it, and look again.", i.Reject[0].Source)
		}
		return nil
	case x.put == nil:
		ok, err := yes(r.Text)
		if err == nil && !ok {
			f.reject(i.ID, x.Label+": answered with no", cmp.Or(x.mend, "Replace it."), practice)
		}
		return err
	}
	f.beside(i, x, r) // before the sheet takes the reading in
	if err := x.put(r.Text); err != nil {
		return err
	}
	f.dated(i, x.Key)
	return nil
}

// beside puts the reading beside what the sheet says, where no rule does.
func (f *Filled) beside(i *Item, x Field, r Reading) {
	if x.unlike != nil {
		if says := x.unlike(r.Text); says != "" {
			f.reject(i.ID, says, x.mend, practice)
		}
	}
	if x.doubt != nil {
		if why := x.doubt(r.Text); why != "" {
			f.Open = append(f.Open, i.ID+": "+x.Key+": "+why)
		}
	}
}

// dated gives what was seen and measured the day of the inspection.
func (f *Filled) dated(i *Item, key string) {
	if i.part == nil {
		return
	}
	of := sheet.Of[units.Date]{V: f.Day, Set: true, Pos: i.part.ID.Pos, Text: f.Day.String()}
	switch key {
	case "condition":
		i.part.Inspected = of
	case "resistance":
		i.part.ResistTest = of
		f.graded(i)
	case "tested":
		f.ahead(i)
	}
}

// ahead refuses a test of a later day where no rule does: those for hoses and relief devices are among the rules.
func (f *Filled) ahead(i *Item) {
	p := i.part
	if p.Kind.V == "hose" || p.Kind.V == "relief" {
		return
	}
	if p.Tested.V.Days > f.Day.Days {
		f.reject(i.ID, "its test of "+p.Tested.Text+" is still to come", "Read the date again.", practice)
	}
}

// graded holds every hose to its grade, also where no rule does because nothing it carries burns.
func (f *Filled) graded(i *Item) {
	most, ok := mostOhm[i.part.Grade.V]
	if ok && i.part.Resistance.V > most && !i.fuel {
		f.reject(i.ID, fmt.Sprintf("grade %s measures %s from end to end; at most %s is allowed", i.part.Grade.V, ohms(i.part.Resistance.V), ohms(most)), "Take the hose out of use, repair or replace it, and measure it again.", grades)
	}
}

func (f *Filled) reject(item, says, do, source string) {
	f.Rejected = append(f.Rejected, Rejected{item, says, do, source})
}
