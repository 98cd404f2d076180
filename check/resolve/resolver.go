package resolve

import (
	"errors"
	"sort"

	"lineworthy/catalog"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

// Options are what the sheet may leave to the caller.
type Options struct {
	AsOf units.Date // used when the sheet states no date
}

// resolver collects faults while it walks, so that all are reported at once.
type resolver struct {
	cat    *catalog.Catalog
	sheet  *sheet.Line
	line   *Line
	faults sheet.Problems
	fluids map[string]*Fluid
	tanks  map[string]*Vessel
}

// Resolve joins s with c. The error is sheet.Problems when a name in the sheet is unknown or ambiguous, and any other
// error when the catalog itself is at fault.
func Resolve(s *sheet.Line, c *catalog.Catalog, o Options) (*Line, error) {
	r := &resolver{cat: c, sheet: s, fluids: map[string]*Fluid{}, tanks: map[string]*Vessel{}}
	r.line = &Line{Sheet: s, AsOf: o.AsOf, Ambient: units.StandardAtmosphere, Rows: map[string]string{}, Sources: r.document}
	if s.AsOf.Set {
		r.line.AsOf = s.AsOf.V
	}
	for _, step := range []func() error{r.ambient, r.allFluids, r.allVessels, r.allRuns, r.nearby, r.evidence} {
		if err := step(); err != nil {
			return nil, err
		}
	}
	if len(r.faults) > 0 {
		sort.SliceStable(r.faults, func(i, j int) bool { return r.faults[i].Line < r.faults[j].Line })
		return nil, r.faults
	}
	return r.line, nil
}

func (r *resolver) ambient() error {
	at := r.sheet.Site.Altitude
	if !at.Set {
		return nil
	}
	p, err := units.Ambient(at.V)
	if err != nil {
		r.fault(at.Pos, "site.altitude", err.Error(), "")
		return nil
	}
	r.line.Ambient = p
	return nil
}

func (r *resolver) fault(at sheet.Pos, path, text, hint string) {
	r.faults = append(r.faults, sheet.Problem{File: r.sheet.File, Line: at.Line, Col: at.Col, Path: path, Text: text, Hint: hint})
}

// lookup resolves one catalog name. Unknown and ambiguous names are faults of the sheet; anything else is a fault of the
// catalog and stops the walk.
func lookup[T any](r *resolver, kind string, name sheet.Of[string], path string, get func(string) (*T, error), id func(*T) string) (*T, error) {
	if !name.Set {
		return nil, nil
	}
	row, err := get(name.V)
	var missing *catalog.NotFound
	var several *catalog.Ambiguous
	if errors.As(err, &missing) || errors.As(err, &several) {
		r.fault(name.Pos, path, err.Error(), "")
		return nil, nil
	}
	if err != nil {
		return nil, err
	}
	r.use(kind, id(row))
	return row, nil
}

func (r *resolver) use(kind, id string) {
	r.line.Rows[kind+"/"+id] = r.cat.Digest(kind, id)
}

func (r *resolver) material(name sheet.Of[string], path string) (*catalog.Material, error) {
	return lookup(r, "materials", name, path, r.cat.Material, func(m *catalog.Material) string { return m.ID })
}

// document is the printed name of a source, or its id when the catalog has none.
func (r *resolver) document(id string) string {
	s, err := r.cat.Source(id)
	if err != nil {
		return id
	}
	if s.Edition == "" {
		return s.Document
	}
	return s.Document + ", " + s.Edition
}
