package suggest

import (
	"cmp"
	"slices"

	"lineworthy/catalog"
	"lineworthy/check/facts"
	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

// ratings from best to worst; what is not known is worse than a limited use and better than none.
var ratings = []string{"suitable", "limited", "", "unsuitable"}

// bears is how the material takes the worst of the run's fluids, as an index of ratings.
func (s *search) bears(m *catalog.Material, r *resolve.Run) int {
	worst := 0
	for _, f := range r.Fluids {
		worst = max(worst, slices.Index(ratings, facts.Rate(s.line, s.cat, m, f)))
	}
	return worst
}

// choose sorts materials by how they take the fluids, those at hand in the line first, and keeps at most n that are at
// least of limited use.
func (s *search) choose(ids []string, r *resolve.Run, first string, n int) []string {
	type option struct {
		id             string
		worst, strange int
	}
	var all []option
	for _, id := range ids {
		m, err := s.cat.Material(id)
		if err != nil || !s.fitsTemperature(m, r) {
			continue
		}
		o := option{m.ID, s.bears(m, r), 2}
		switch {
		case m.ID == first:
			o.strange = 0
		case s.inLine(m.ID):
			o.strange = 1
		}
		if o.worst <= 1 {
			all = append(all, o)
		}
	}
	slices.SortStableFunc(all, func(a, b option) int { return cmp.Or(cmp.Compare(a.worst, b.worst), cmp.Compare(a.strange, b.strange)) })
	var out []string
	for _, o := range all[:min(n, len(all))] {
		out = append(out, o.id)
	}
	return out
}

// fitsTemperature drops what the catalog knows to be too cold or too hot for the run.
func (s *search) fitsTemperature(m *catalog.Material, r *resolve.Run) bool {
	hot, cold := s.hot(r), s.cold(r)
	if hot != nil && m.HighestC != nil && hot.Celsius() > m.HighestC.Value+1e-6 {
		return false
	}
	return cold == nil || m.LowestC == nil || cold.Celsius() >= m.LowestC.Value-1e-6
}

func (s *search) inLine(id string) bool {
	_, ok := s.line.Rows["materials/"+id]
	return ok
}

// metals are the metals a body or an end can be made of.
func (s *search) metals() (out []string) {
	for _, id := range s.cat.IDs(catalog.Materials) {
		if m, err := s.cat.Material(id); err == nil && m.Family == "metal" {
			out = append(out, id)
		}
	}
	return out
}

// Preferred pressures, bar: a working pressure that a maker is asked for is the next of these (practice, no source).
var series = []float64{1, 1.6, 2.5, 4, 6, 10, 16, 20, 25, 40, 50, 63, 80, 100, 160, 200, 250, 315, 400}

func roundUp(p units.GaugePressure) float64 {
	for _, b := range series {
		if b*1e5 >= float64(p) {
			return b
		}
	}
	return series[len(series)-1]
}
