package facts

import (
	"lineworthy/catalog"
	"lineworthy/check/resolve"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

// Rate is how a material bears a fluid of the line at its hottest: suitable, limited, unsuitable, or empty when nothing
// is known.
func Rate(l *resolve.Line, c *catalog.Catalog, m *catalog.Material, f *resolve.Fluid) string {
	row, why := newBuilder(l, c, newScratch()).row(&contact{material: m}, f)
	if why != "" {
		return ""
	}
	return row.Rating
}

// EndHolds is what an end of that standard, size, class and material holds at t; false when nothing is known.
func EndHolds(f *catalog.Connection, s *sheet.End, m *catalog.Material, t units.Temperature) (units.GaugePressure, bool) {
	var out Strength
	out.Holds = endHolds(&resolve.End{Family: f, Sheet: s, Material: m}, &out)
	return out.Known(t)
}

// HoseFactor is the factor on the rating of a hose with those layers at t; false when nothing is known.
func HoseFactor(h *catalog.Hose, layers []resolve.Layer, t units.Temperature) (float64, bool) {
	factor := 1.0
	for _, c := range derating(&resolve.Part{Hose: h, Layers: layers}) {
		y, err := c.At(t)
		if err != nil {
			return 0, false
		}
		factor = min(factor, y)
	}
	return factor, true
}

// LeastBend is the class's smallest bend radius in mm for the size, if it has one.
func LeastBend(h *catalog.Hose, size units.Size) (float64, bool) { return sized(h.Bend, size) }
