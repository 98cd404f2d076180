package sequence

import (
	"slices"

	"lineworthy/catalog"
	"lineworthy/check/facts"
	"lineworthy/check/resolve"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

// device is what can part two cells: a valve, the valve of a source, a regulator, a check valve.
type device struct {
	id, kind string
	open     bool
	setKPa   int64 // of a regulator, as it is turned now
	sheetKPa int64 // as the sheet sets it
	stated   bool  // the sheet does
}

// cell is a stretch between two devices.
type cell struct {
	parts    []*resolve.Part
	kpa      int64
	liquid   bool
	holds    string // key of the fluid that stands in it; empty when it was never filled or has run empty
	wet      string // key of the liquid that was in it last
	blown    string // key of the gas it was blown out with since
	met      string // key of the liquid that wetted it when product came
	mixed    bool   // product came to what was left of a flush
	live     bool   // joined to the source now
	relieved bool
}

// run is one run with its n devices and n+1 cells.
type run struct {
	key           string
	r             *resolve.Run
	source, to    *vessel // source is nil for a cylinder or a supply
	supplyKPa     int64
	headKPa       int64
	liquid        bool // carries liquid
	oxygen        bool // a gas that burns things better than air does
	toxic         bool
	devices       []*device
	cells         []*cell
	hoses         map[string]bool  // connected
	pumps         map[string]bool  // running
	shutoff       map[string]int64 // kPa a pump adds
	quantityM3    float64
	product       string           // key of the liquid or gas it is for
	flushes       []*resolve.Fluid // what it is flushed with
	moved         bool
	deliveredKPa  int64
	reachesTarget bool
}

// Model is a line in a state.
type Model struct {
	line    *resolve.Line
	f       *facts.Facts
	vessels map[string]*vessel
	runs    []*run
}

// New makes the line as it stands before the job: shut, without pressure but for what a vessel has by itself, hoses off.
// The error is sheet.Problems when a name is not in the catalog.
func New(s *sheet.Line, cat *catalog.Catalog, asOf units.Date, f *facts.Facts) (*Model, error) {
	line, err := resolve.Resolve(s, cat, resolve.Options{AsOf: asOf})
	if err != nil {
		return nil, err
	}
	m := &Model{line: line, f: f, vessels: map[string]*vessel{}}
	for _, v := range line.Vessels {
		m.vessels[v.Key] = m.vessel(v)
	}
	for _, r := range line.Runs {
		m.runs = append(m.runs, m.run(r))
	}
	for _, g := range m.runs {
		if m.returns(g) {
			g.liquid = false
		}
	}
	for _, g := range m.runs { // what a pad drives out of a vessel carries the vapour of the liquid
		for _, r := range m.runs {
			g.toxic = g.toxic || r.toxic && r.source != nil && r.source == g.to
		}
	}
	m.settle()
	return m, nil
}

// returns says whether a run brings the vapour of a liquefied gas back to where another run takes its liquid: both carry
// the same, and the sheet states a quantity for the liquid alone.
func (m *Model) returns(g *run) bool {
	if !g.liquid || g.quantityM3 > 0 || g.source == nil || g.to == nil || !liquefied(g.r) {
		return false
	}
	return slices.ContainsFunc(m.runs, func(r *run) bool {
		return r.liquid && r.quantityM3 > 0 && r.source == g.to && r.to == g.source
	})
}

func liquefied(r *resolve.Run) bool {
	for _, f := range r.Fluids {
		if f.Cat.Form == "liquefied-gas" || f.Cat.Form == "cryogenic-liquid" {
			return true
		}
	}
	return false
}

func kpa(p units.GaugePressure) int64 { return max(0, int64(float64(p)/1000+0.5)) }
