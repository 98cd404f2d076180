package suggest

import (
	"slices"

	"lineworthy/catalog"
	"lineworthy/check/units"
)

// sizeIn is the size in the terms of the class: the sheet's own where the tables of the class know it or have no sizes.
func sizeIn(h *catalog.Hose, size units.Size) string {
	if size.Text == "" {
		return ""
	}
	var names []string
	if h.Rating != nil {
		for _, row := range h.Rating.Sizes {
			names = append(names, row.Size)
		}
	}
	if h.Bend != nil && len(names) == 0 {
		for _, row := range h.Bend.Sizes {
			names = append(names, row.Size)
		}
	}
	if len(names) == 0 {
		return size.Text
	}
	return nearestSize(names, size)
}

// nearestSize is the name of the same size, else of the one whose nominal bore is within a twelfth: 25 mm, 1 in and DN 25
// are bought as one (ISO 1307, recalled).
func nearestSize(names []string, size units.Size) string {
	best, off := "", 1.0/12
	for _, name := range names {
		at, err := units.ParseSize(name)
		if err != nil {
			continue
		}
		if same, known := units.Same(at, size); same && known {
			return size.Text
		}
		d := float64(at.Nominal()-size.Nominal()) / float64(size.Nominal())
		if d < 0 {
			d = -d
		}
		if d < off {
			best, off = at.Text, d
		}
	}
	return best
}

// sizeOf is the size of the end in the terms of the family.
func (s *search) sizeOf(sp *spot, e side, f *catalog.Connection) string {
	size, err := units.ParseSize(e.size)
	if err != nil && sp.part != nil {
		size, err = sp.part.Sheet.Size.V, nil
	}
	if err != nil || size.Nominal() == 0 {
		return ""
	}
	names := slices.Clone(f.Sizes)
	for _, r := range f.Ratings {
		names = append(names, r.Sizes...)
	}
	switch f.SizedBy {
	case "nps":
		names = append(names, npsNames...)
	case "dn":
		names = append(names, dnNames...)
	}
	if same := nearestSize(names, size); same != size.Text || slices.Contains(names, size.Text) {
		return same
	}
	return nearestName(names, size)
}

// Pipe sizes that ends are made in, with their DN (ASME B36.10M and ISO 6708, recalled).
var (
	npsNames = []string{"NPS 1/2", "NPS 3/4", "NPS 1", "NPS 1 1/4", "NPS 1 1/2", "NPS 2", "NPS 2 1/2", "NPS 3", "NPS 4", "NPS 6"}
	dnNames  = []string{"DN 15", "DN 20", "DN 25", "DN 32", "DN 40", "DN 50", "DN 65", "DN 80", "DN 100", "DN 150"}
)

// nearestName is the name in the family's own terms: DN 50 and NPS 2 are the same pipe.
func nearestName(names []string, size units.Size) string {
	for _, name := range names {
		at, err := units.ParseSize(name)
		if err == nil {
			if same, known := units.Same(at, size); same && known {
				return at.Text
			}
		}
	}
	return ""
}
