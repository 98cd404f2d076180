package catalog

import (
	"reflect"
	"slices"
	"strings"
)

// siteFile is one file of a site directory, decoded when the directory is laid over the catalog.
type siteFile struct {
	path  string
	raw   []byte
	value reflect.Value // the struct
	keys  []string      // top-level keys the file writes
}

// added are the keys whose entries a site adds to and never replaces: names, and every kind of bar,
// because site evidence may not lift a legal bar.
var added = []string{"also", "bars", "forbidden_pad_gases", "derived_species", "not_for", "excludes", "cautions"}

// lay replaces what the site file writes, key by key.
func lay(value reflect.Value, s siteFile) {
	for i := range value.NumField() {
		key, _ := keyOf(value.Type().Field(i))
		switch {
		case !slices.Contains(s.keys, key):
		case key == "mates":
			value.Field(i).Set(reflect.ValueOf(laidMates(value.Field(i).Interface().([]Mate), s.value.Field(i).Interface().([]Mate))))
		case slices.Contains(added, key):
			value.Field(i).Set(reflect.AppendSlice(reflect.AppendSlice(reflect.Zero(value.Field(i).Type()), value.Field(i)), s.value.Field(i)))
		default:
			value.Field(i).Set(s.value.Field(i))
		}
	}
	if f, ok := value.Addr().Interface().(*Fluid); ok {
		f.table = f.table.under(s.value.Addr().Interface().(*Fluid).table.site)
	}
}

// under is the table with the rows of one more site file over it.
func (t *table) under(site []Row) *table {
	if t == nil {
		return &table{site: site}
	}
	return &table{path: t.path, text: t.text, above: t.above, site: outvote(t.site, site)}
}

// outvote lays site rows over others, material by material. An adverse row that somebody read in a
// document stays: site evidence outvotes memory and habit, and favourable rows of any standing.
func outvote(rows, site []Row) []Row {
	kept := slices.DeleteFunc(slices.Clone(rows), func(r Row) bool {
		read := r.Standing.Firm() && r.Standing != Site
		return len(about(site, r.Material)) > 0 && !(read && r.Rating != "suitable")
	})
	return append(kept, site...)
}

// laidMates lays site pairs over others in the same way.
func laidMates(pairs, site []Mate) []Mate {
	kept := slices.DeleteFunc(slices.Clone(pairs), func(p Mate) bool {
		again := slices.ContainsFunc(site, func(s Mate) bool { return s.With == p.With })
		read := p.Standing.Firm() && p.Standing != Site
		return again && !(read && p.Verdict != "fits")
	})
	return append(kept, site...)
}

// keyOf is the YAML key of a field, and whether the field's own keys are written in its place.
func keyOf(f reflect.StructField) (key string, inline bool) {
	key, options, _ := strings.Cut(f.Tag.Get("yaml"), ",")
	if key == "" {
		key = strings.ToLower(f.Name)
	}
	return key, strings.Contains(options, "inline")
}
