package facts

import (
	"fmt"
	"slices"

	"lineworthy/catalog"
	"lineworthy/check/measure"
	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

// hoseRating is what the hose holds at t, or cold when t is nil; or why that is not known and who can say.
//
// A printed figure beats the class only downward, unless a document stands behind it: then it counts as it is.
func (b *builder) hoseRating(p *resolve.Part, t *units.Temperature) (rated units.GaugePressure, why, ask string) {
	s := p.Sheet
	class, origin, why := b.classRating(p)
	switch {
	case s.Rated.Set && (s.Evidence.Set || why != "" || s.Rated.V.Gauge(b.l.Ambient) < class):
		rated, why = s.Rated.V.Gauge(b.l.Ambient), ""
		if !b.known(p.ID, p.ID, " rated") {
			b.rests(p.ID+" rated", "working pressure of "+p.ID+", "+s.Rated.Text, stated(s.Evidence.V), p.ID)
		}
	case why != "":
		return 0, why, "rated of " + p.ID + ", with evidence"
	default:
		rated = class
		b.rests(p.Hose.ID+" rating", "working pressure of "+p.Hose.Name, origin, p.ID)
	}
	if rated, why = retained(p, rated); why != "" {
		return 0, why, "how the ends of " + p.ID + " are held, from who made up the hose"
	}
	if t == nil {
		return rated, "", ""
	}
	return b.derated(p, rated, *t)
}

// classRating is the rating the class gives the size, the lowest of all editions when the edition is not stated.
func (b *builder) classRating(p *resolve.Part) (units.GaugePressure, catalog.Origin, string) {
	h := p.Hose
	if h == nil {
		return 0, catalog.Origin{}, "the class of " + p.ID + " is not stated"
	}
	if h.Rating == nil || h.Rating.MakerStates {
		return 0, catalog.Origin{}, h.Standard + " leaves the working pressure of this class to the maker"
	}
	bar, why := ratingFor(h.Rating, p)
	if why != "" {
		return 0, catalog.Origin{}, why
	}
	origin := h.Rating.Origin
	for _, e := range h.Earlier {
		if e.Rating == nil || otherEdition(h, p.Sheet.Edition.V, e.Edition) {
			continue
		}
		old, why := ratingFor(e.Rating, p)
		if why != "" {
			return 0, catalog.Origin{}, why + " in the edition of " + e.Edition
		}
		if old < bar {
			bar, origin = old, e.Rating.Origin
		}
	}
	return units.GaugePressure(bar * 1e5), origin, ""
}

// otherEdition says whether the sheet names another edition than this earlier one. An edition the catalog does not know
// could be any.
func otherEdition(h *catalog.Hose, stated, earlier string) bool {
	if h.Edition != nil && stated == h.Edition.Value {
		return true
	}
	known := slices.ContainsFunc(h.Earlier, func(e catalog.Earlier) bool { return e.Edition == stated })
	return known && stated != earlier
}

func ratingFor(r *catalog.Rating, p *resolve.Part) (float64, string) {
	if len(r.Sizes) == 0 {
		if r.Bar == 0 {
			return 0, "the catalog holds no working pressure for " + p.Hose.ID
		}
		return r.Bar, ""
	}
	if !p.Sheet.Size.Set {
		return 0, "the size of " + p.ID + " is not stated"
	}
	for _, row := range r.Sizes {
		size, ok := sizeOf(row.Size)
		if !ok {
			continue
		}
		if same, known := units.Same(size, p.Sheet.Size.V); same && known {
			return row.Bar, ""
		}
	}
	return 0, fmt.Sprintf("%s has no row for %s", p.Hose.ID, p.Sheet.Size.V)
}

// derated reads the class's factor at t. A class without a factor table keeps its rating over its temperature range.
func (b *builder) derated(p *resolve.Part, rated units.GaugePressure, t units.Temperature) (units.GaugePressure, string, string) {
	d := derating(p)
	if d == nil {
		return rated, "", ""
	}
	factor := 1.0
	for _, c := range d {
		if len(c.T) == 0 {
			return 0, p.Hose.ID + " has no factor for a layer of " + p.ID + ", or the layer is not stated", "layers of " + p.ID + "; a site catalog row with the maker's factor"
		}
		f, err := c.At(t)
		if err != nil {
			return 0, err.Error(), "the maker's rating of " + p.ID + " at that temperature"
		}
		factor = min(factor, f)
	}
	b.rests(p.Hose.ID+" derating", "factor on the working pressure when hot, "+p.Hose.Name, p.Hose.Derating.Origin, p.ID)
	return units.GaugePressure(float64(rated) * factor), "", ""
}

// derating are the factor curves that apply: the one of the class, or those of the hose's metals. A class that derates
// by material knows no factor for a material it does not list.
func derating(p *resolve.Part) []measure.Curve {
	if p.Hose == nil || p.Hose.Derating == nil {
		return nil
	}
	d := p.Hose.Derating
	if len(d.ByMaterial) == 0 {
		return []measure.Curve{curve(d.Points, d)}
	}
	var out []measure.Curve
	for _, l := range p.Layers {
		if l.Role == "cover" {
			continue
		}
		if l.Material == nil {
			return []measure.Curve{{}} // the layer could be of any material
		}
		listed := false
		for _, id := range []string{l.Material.ID, l.Material.JudgedAs} {
			if points, ok := d.ByMaterial[id]; ok {
				out, listed = append(out, curve(points, d)), true
				break
			}
		}
		if !listed {
			return []measure.Curve{{}}
		}
	}
	return out
}

func curve(points []catalog.Point, d *catalog.Derating) measure.Curve {
	c := measure.Curve{T: make([]units.Temperature, 0, len(points)), Y: make([]float64, 0, len(points)), Steps: d.Steps}
	for _, p := range points {
		c.T, c.Y = append(c.T, units.Celsius(p.C)), append(c.Y, p.Value)
	}
	if d.ColdC != nil {
		c.FlatFrom = units.Celsius(*d.ColdC)
	}
	return c
}

// sized reads a table by size.
func sized(t *catalog.BySize, size units.Size) (float64, bool) {
	if t == nil {
		return 0, false
	}
	for _, row := range t.Sizes {
		at, ok := sizeOf(row.Size)
		if !ok {
			continue
		}
		if same, known := units.Same(at, size); same && known {
			return row.Value, true
		}
	}
	if t.All != nil {
		return *t.All, true
	}
	return 0, false
}
