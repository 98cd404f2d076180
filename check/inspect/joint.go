package inspect

import (
	"fmt"
	"strconv"
	"strings"

	"lineworthy/catalog"
	"lineworthy/check/facts"
	"lineworthy/check/resolve"
	"lineworthy/check/sheet"
)

func jointItem(j *resolve.Joint, needs map[string]facts.Joint, cat *catalog.Catalog) *Item {
	known, ok := needs[j.ID]
	if ok && known.Open {
		return nil // an open hatch is no joint
	}
	i := &Item{ID: j.ID, Kind: "joint", Run: j.Run.Key, Name: ends(j), joint: j, Reject: jointRejects(j)}
	i.Fields = []Field{{Key: "damage", Verb: Look, Label: "both faces and threads clean and whole, nothing forced; write none, or what is wrong"}}
	sealed := !known.NeedsSeal.Known || known.NeedsSeal.V || len(j.Seals) > 0
	if sealed && (j.A.Sheet != nil || j.B.Sheet != nil) {
		f := Field{Key: "seal", Verb: Look, Label: "seal in place, whole and clean" + sealMaterial(j) + ": write its kind, and its material where that is marked (o-ring of FKM), or none", Expect: kinds(j), put: sealPut(j, cat)}
		i.Fields = append(i.Fields, otherSeal(f, j, cat))
	}
	if e := boltEnd(j); e != nil {
		i.Fields = append(i.Fields, leaf("bolts", Look, "bolts fitted and tight, counted", &e.Bolts, count))
	}
	if e := lockEnd(j); known.NeedsLock && e != nil {
		i.Fields = append(i.Fields, leaf("locked", Look, "once it is made: levers pinned or ring turned home: yes or no", &e.Locked, yes))
	}
	return i
}

// boltEnd is the end at which the sheet counts the bolts.
func boltEnd(j *resolve.Joint) *sheet.End {
	for _, e := range []*resolve.End{j.A, j.B} {
		if e.Sheet != nil && e.Sheet.Bolts.Set {
			return e.Sheet
		}
	}
	return nil
}

func count(text string) (int, error) {
	n, err := strconv.Atoi(text)
	if err != nil || n < 0 {
		return 0, fmt.Errorf("%q: write how many, like 4", text)
	}
	return n, nil
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

// sealMaterial is what the sheet says that the seals are made of.
func sealMaterial(j *resolve.Joint) string {
	var of []string
	for _, s := range j.Seals {
		if s.Sheet.Material.Set {
			of = append(of, s.Sheet.Material.V)
		}
	}
	if len(of) == 0 {
		return ""
	}
	return ", of " + strings.Join(of, " and ")
}

// ends says what the joint joins, so that a wrong end is seen before it is forced on.
func ends(j *resolve.Joint) string {
	a, b := describe(j.A), describe(j.B)
	switch {
	case a == "" && b == "":
		return "ends not on the sheet"
	case a == "" || b == "":
		return a + b + gender(j.A) + gender(j.B) + "; the other end is not on the sheet"
	case a == b && gender(j.A) == gender(j.B):
		return a + gender(j.A) + ", both ends"
	case a == b:
		return a + "," + gender(j.A) + " to" + gender(j.B)
	}
	return a + gender(j.A) + " to " + b + gender(j.B)
}

func describe(e *resolve.End) string {
	if e == nil || e.Sheet == nil {
		return ""
	}
	s := e.Sheet
	words := []string{s.Standard.V, s.Size.Text, s.Class.V, s.Facing.V}
	if e.Family != nil {
		words[0] = e.Family.Name
	}
	if s.Number.Set {
		words = append(words, "no. "+s.Number.V)
	}
	if s.Hand.V == "left" {
		words = append(words, "left-hand")
	}
	return strings.Join(strings.Fields(strings.Join(words, " ")), " ")
}

func gender(e *resolve.End) string {
	if e == nil || e.Sheet == nil || e.Sheet.Gender.V == "none" || !e.Sheet.Gender.Set {
		return ""
	}
	return " " + e.Sheet.Gender.V
}
