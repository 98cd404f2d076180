package inspect

import (
	"errors"
	"strings"

	"lineworthy/catalog"
	"lineworthy/check/resolve"
	"lineworthy/check/sheet"
)

// sealPut replaces the seals of the joint. Of a seal of another kind nothing else is known.
func sealPut(j *resolve.Joint, cat *catalog.Catalog) func(string) error {
	return func(text string) error {
		kinds, err := sealKinds(text, cat)
		if err != nil || sameSeals(j, kinds, cat) {
			return err
		}
		var at *sheet.End
		for _, e := range []*resolve.End{j.A, j.B} {
			if e.Sheet != nil {
				e.Sheet.Seals, at = nil, e.Sheet
			}
		}
		at.NoSeal = sheet.Of[bool]{}
		if len(kinds) == 0 {
			at.NoSeal = sheet.Of[bool]{V: true, Set: true, Pos: at.Standard.Pos}
		}
		for _, k := range kinds {
			at.Seals = append(at.Seals, sheet.Seal{Kind: sheet.Of[string]{V: k, Set: true, Pos: at.Standard.Pos, Text: k}})
		}
		return nil
	}
}

// sealKinds are the catalog ids of the kinds written, none for the word none.
func sealKinds(text string, cat *catalog.Catalog) (ids []string, err error) {
	if text == "none" {
		return nil, nil
	}
	for _, w := range strings.Split(text, ",") {
		s, err := cat.Seal(strings.TrimSpace(w))
		if err != nil {
			return nil, errors.Join(errors.New("write the kind of the seal, or none"), err)
		}
		ids = append(ids, s.ID)
	}
	return ids, nil
}

func sameSeals(j *resolve.Joint, ids []string, cat *catalog.Catalog) bool {
	if len(ids) != len(j.Seals) || len(ids) == 0 && !j.Stated {
		return false
	}
	for n, s := range j.Seals {
		on, err := cat.Seal(s.Sheet.Kind.V)
		if err != nil || on.ID != ids[n] {
			return false
		}
	}
	return true
}
