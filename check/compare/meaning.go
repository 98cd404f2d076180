package compare

import (
	"fmt"
	"reflect"
	"strings"

	"lineworthy/catalog"
	"lineworthy/check/units"
)

// names knows which catalog entry a name stands for.
type names struct{ cat *catalog.Catalog }

// kinds are the kinds of entry that a key names. A seal's kind and a hose's class are entries; a part's kind and the class
// of an end are plain words.
var kinds = map[string]string{
	"Fluid.fluid": catalog.Fluids, "Contents.fluid": catalog.Fluids, "Evidence.fluid": catalog.Fluids, "Part.specified_for": catalog.Fluids,
	"Part.class": catalog.Hoses, "Seal.kind": catalog.Seals, "End.standard": catalog.Connections,
	"Part.material": catalog.Materials, "Part.wetted": catalog.Materials, "End.material": catalog.Materials, "Vessel.material": catalog.Materials,
	"Seal.material": catalog.Materials, "Evidence.material": catalog.Materials, "Layers.liner": catalog.Materials,
	"Layers.reinforcement": catalog.Materials, "Layers.cover": catalog.Materials,
}

// id is the entry's id, or the name itself when the catalog does not know it.
func (n names) id(kind, name string) string {
	if n.cat == nil || kind == "" {
		return name
	}
	id, err := n.cat.ID(kind, name)
	if err != nil {
		return name
	}
	return id
}

// meaning is a text that is the same for the same value, whatever unit or name it was written with. Six figures are more
// than any instrument shows.
func (n names) meaning(v any, key, owner string) (string, units.Size) {
	switch x := v.(type) {
	case string:
		return strings.Join(strings.Fields(n.id(kinds[owner+"."+key], x)), " "), units.Size{}
	case units.Pressure:
		return fmt.Sprintf("%.6g Pa", float64(x.Gauge(units.StandardAtmosphere))), units.Size{}
	case units.Size:
		return x.Text, x
	case fmt.Stringer:
		if reflect.ValueOf(v).Kind() == reflect.Float64 {
			return fmt.Sprintf("%.6g", reflect.ValueOf(v).Float()), units.Size{}
		}
		return x.String(), units.Size{}
	}
	return fmt.Sprint(v), units.Size{}
}

// same says whether two values mean the same; DN 25 and NPS 1 do.
func same(a, b leaf) bool {
	if a.norm == b.norm {
		return true
	}
	if a.size.Text == "" || b.size.Text == "" {
		return false
	}
	equal, known := units.Same(a.size, b.size)
	return known && equal
}
