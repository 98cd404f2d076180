package inspect

import (
	"errors"
	"slices"
	"strings"

	"lineworthy/catalog"
	"lineworthy/check/resolve"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

// found is a seal as somebody sees it: its kind, and its material where that is marked on it.
type found struct {
	id       string
	material *catalog.Material
}

// sealPut replaces the seals of the joint. Of a seal of another kind nothing else is known.
func sealPut(j *resolve.Joint, cat *catalog.Catalog) func(string) error {
	return func(text string) error {
		seals, err := sealsOf(text, cat)
		if err != nil {
			return err
		}
		if sameSeals(j, seals, cat) {
			remake(j, seals)
			return nil
		}
		var at *sheet.End
		for _, e := range []*resolve.End{j.A, j.B} {
			if e.Sheet != nil {
				e.Sheet.Seals, at = nil, e.Sheet
			}
		}
		at.NoSeal = sheet.Of[bool]{}
		if len(seals) == 0 {
			at.NoSeal = sheet.Of[bool]{V: true, Set: true, Pos: at.Standard.Pos}
		}
		for _, s := range seals {
			made := sheet.Seal{Kind: sheet.Of[string]{V: s.id, Set: true, Pos: at.Standard.Pos, Text: s.id}}
			made.Material = s.of(at.Standard.Pos)
			at.Seals = append(at.Seals, made)
		}
		return nil
	}
}

func (s found) of(pos sheet.Pos) (of sheet.Of[string]) {
	if s.material != nil {
		of = sheet.Of[string]{V: s.material.ID, Set: true, Pos: pos, Text: s.material.ID}
	}
	return of
}

// remake gives the seals the materials that were read on them. What the papers of another material say is of no use then.
func remake(j *resolve.Joint, seals []found) {
	for n, s := range seals {
		if s.material == nil || j.Seals[n].Material != nil && j.Seals[n].Material.ID == s.material.ID {
			continue
		}
		on := j.Seals[n].Sheet
		on.Material, on.Rated, on.Evidence = s.of(on.Kind.Pos), sheet.Of[units.Pressure]{}, sheet.Of[string]{}
	}
}

// sealsOf are the seals written, none for the word none.
func sealsOf(text string, cat *catalog.Catalog) (all []found, err error) {
	if strings.EqualFold(text, "none") {
		return nil, nil
	}
	for _, w := range strings.Split(text, ",") {
		kind, material, marked := strings.Cut(w, " of ")
		s, err := cat.Seal(strings.TrimSpace(kind))
		if err != nil {
			return nil, errors.Join(errors.New("write the kind of the seal, or none"), err)
		}
		one := found{id: s.ID}
		if marked {
			if one.material, err = cat.Material(strings.TrimSpace(material)); err != nil {
				return nil, err
			}
		}
		all = append(all, one)
	}
	return all, nil
}

func sameSeals(j *resolve.Joint, seals []found, cat *catalog.Catalog) bool {
	if len(seals) != len(j.Seals) || len(seals) == 0 && !j.Stated {
		return false
	}
	for n, s := range j.Seals {
		on, err := cat.Seal(s.Sheet.Kind.V)
		if err != nil || on.ID != seals[n].id {
			return false
		}
	}
	return true
}

// otherSeal rejects a seal of another kind than that of the sheet. A missing one is for the rules to judge.
func otherSeal(f Field, j *resolve.Joint, cat *catalog.Catalog) Field {
	kept := f.Expect
	f.mend = "Fit the seal of the sheet, or put the sheet right and have it judged anew."
	f.same = func(text string) bool {
		seals, err := sealsOf(text, cat)
		return err == nil && sameSeals(j, seals, cat) && !slices.ContainsFunc(seals, func(s found) bool { return s.material != nil })
	}
	f.unlike = func(text string) string {
		seals, err := sealsOf(text, cat)
		if err != nil || len(seals) == 0 || kept == "" || sameSeals(j, seals, cat) {
			return ""
		}
		return "the seal is " + text + ", and the sheet says " + kept
	}
	return f
}
