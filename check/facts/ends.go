package facts

import (
	"fmt"
	"slices"

	"lineworthy/catalog"
	"lineworthy/check/measure"
	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

// endItem is what one end holds at t. Where the standard of the end gives no pressure, the stamped or certified rating
// of the part speaks for its ends too; a part without one leaves them unknown.
func (b *builder) endItem(e *resolve.End, t units.Temperature) (item, bool) {
	if e == nil || e.Sheet == nil || e.Sheet.Open.V || e.Family == nil {
		return item{}, false // a joint of unknown ends is reported as such
	}
	it := item{id: e.Owner + " " + e.Name, part: e.Owner, what: "end"}
	r := b.endRating(e, t)
	if !r.found {
		if len(e.Family.Ratings) == 0 && certified(e) {
			return item{}, false
		}
		it.why, it.ask = b.noRow(e)
		return it, true
	}
	for _, v := range r.rests {
		b.uses(v, e.Owner)
	}
	it.have, it.why, it.ask = r.have, r.why, r.ask
	return it, true
}

// endRating is what the rows of a standard say of all ends of one kind at one temperature.
type endRating struct {
	family   *catalog.Connection
	material *catalog.Material
	class    string
	size     units.Size
	sized    bool
	at       units.Temperature
	found    bool // there are rows for it
	have     units.GaugePressure
	why, ask string
	rests    []int // the values behind it
}

// endRating reads the rows once for each kind of end: a line has few kinds, in many places.
func (b *builder) endRating(e *resolve.End, t units.Temperature) *endRating {
	for i := range b.endRatings {
		r := &b.endRatings[i]
		if r.family == e.Family && r.material == e.Material && r.at == t && r.class == e.Sheet.Class.V && r.sized == e.Sheet.Size.Set && r.size == e.Sheet.Size.V {
			return r
		}
	}
	b.endRatings = append(b.endRatings, endRating{
		family: e.Family, material: e.Material, class: e.Sheet.Class.V, size: e.Sheet.Size.V, sized: e.Sheet.Size.Set, at: t,
	})
	r := &b.endRatings[len(b.endRatings)-1]
	b.readEnd(e, r)
	return r
}

// readEnd takes the lowest of the rows; one that says nothing at the temperature leaves the end unknown.
func (b *builder) readEnd(e *resolve.End, r *endRating) {
	for _, row := range endRows(e) {
		at, err := endCurve(e.Family, row).At(r.at)
		if err != nil {
			r.found, r.have, r.why, r.ask = true, 0, err.Error(), "the maker's rating of this end at that temperature"
			return
		}
		if p := units.GaugePressure(at); !r.found || p < r.have {
			r.found, r.have = true, p
		}
		id := e.Family.ID + " " + row.Class + " " + row.Group + " rating"
		r.rests = append(r.rests, b.rests(id, ratingName(e.Family, row), row.Origin, e.Owner))
	}
}

func ratingName(f *catalog.Connection, row *catalog.EndRating) string {
	name := "pressure rating of " + f.Name
	if row.Class != "" {
		name += ", " + row.Class
	}
	if row.Group != "" {
		name += ", material group " + row.Group
	}
	return name
}

// certified says whether the part or the vessel states a rating with a document.
func certified(e *resolve.End) bool {
	switch {
	case e.Part != nil:
		return e.Part.Sheet.Rated.Set && e.Part.Sheet.Evidence.Set
	case e.Vessel != nil:
		return e.Vessel.Sheet.Rated.Set && e.Vessel.Sheet.Evidence.Set
	}
	return false
}

func (b *builder) noRow(e *resolve.End) (why, ask string) {
	if len(e.Family.Ratings) == 0 {
		return e.Family.Name + " has no pressure of its own in the catalog", "rated of " + e.Owner + ", with evidence"
	}
	return fmt.Sprintf("%s has no rating for class %q in %s at this size", e.Family.Name, e.Sheet.Class.V, materialName(e.Material)),
		"class and material of the " + e.Name + " of " + e.Owner
}

func materialName(m *catalog.Material) string {
	if m == nil {
		return "an unstated material"
	}
	return m.ID
}

// endRows are the rating rows that speak for the end. A row that asks for a class, group or material is not matched by
// an end that does not state it.
func endRows(e *resolve.End) []*catalog.EndRating {
	var out []*catalog.EndRating
	class := classText(e.Sheet.Class.V)
	for i := range e.Family.Ratings {
		if row := &e.Family.Ratings[i]; rowMatches(row, e, class) {
			out = append(out, row)
		}
	}
	return out
}

func rowMatches(row *catalog.EndRating, e *resolve.End, class string) bool {
	if row.Class != "" && classText(row.Class) != class {
		return false
	}
	if row.Group != "" && !inGroup(row.Group, e.Material) {
		return false
	}
	if len(row.Material) > 0 && (e.Material == nil || !slices.Contains(row.Material, e.Material.ID)) {
		return false
	}
	if len(row.NotFor) > 0 && (e.Material == nil || slices.Contains(row.NotFor, e.Material.ID)) {
		return false
	}
	return len(row.Sizes) == 0 || sizeIn(row.Sizes, e)
}

func inGroup(group string, m *catalog.Material) bool {
	return m != nil && m.FlangeGroup != nil && m.FlangeGroup.Value == group
}

func sizeIn(sizes []string, e *resolve.End) bool {
	if !e.Sheet.Size.Set {
		return false
	}
	for _, s := range sizes {
		at, ok := sizeOf(s)
		if !ok {
			continue
		}
		if same, known := units.Same(at, e.Sheet.Size.V); same && known {
			return true
		}
	}
	return false
}

// endCurve is the row as a curve. A single point stands for the family's whole temperature range; a table holds its
// first row down to the family's lowest temperature.
func endCurve(f *catalog.Connection, row *catalog.EndRating) measure.Curve {
	c := measure.Curve{T: make([]units.Temperature, 0, len(row.Points)+1), Y: make([]float64, 0, len(row.Points)+1)}
	for _, p := range row.Points {
		c.T, c.Y = append(c.T, units.Celsius(p.C)), append(c.Y, p.Value*1e5)
	}
	if f.Temperature == nil {
		return c
	}
	if low := celsius(f.Temperature.LowestC); low != nil {
		c.FlatFrom = *low
	}
	if high := celsius(f.Temperature.HighestC); high != nil && len(c.T) == 1 && *high > c.T[0] {
		c.T, c.Y = append(c.T, *high), append(c.Y, c.Y[0])
	}
	return c
}
