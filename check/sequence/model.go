package sequence

import (
	"lineworthy/catalog"
	"lineworthy/check/facts"
	"lineworthy/check/resolve"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

// vessel is a source or destination and what stands in it.
type vessel struct {
	id        string
	open      bool // its vent is open: it never holds pressure
	kpa       int64
	own       int64 // pressure it has by itself; it cannot be vented below it
	padded    bool  // a gas of this line was pushed in
	volumeM3  float64
	filled    float64
	levels    bool // volume and filling are known
	allowed   float64
	flammable bool
	bonded    bool
}

// device is what can part two cells: a valve, the valve of a source, a regulator, a check valve.
type device struct {
	id, kind string
	open     bool
	setKPa   int64 // of a regulator, as it is turned now
	sheetKPa int64 // as the sheet sets it
}

// cell is a stretch between two devices.
type cell struct {
	parts    []*resolve.Part
	kpa      int64
	liquid   bool
	live     bool // joined to the source now
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
	oxygen        bool
	toxic         bool
	devices       []*device
	cells         []*cell
	hoses         map[string]bool  // connected
	pumps         map[string]bool  // running
	shutoff       map[string]int64 // kPa a pump adds
	quantityM3    float64
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
	for _, g := range m.runs { // what a pad drives out of a vessel carries the vapour of the liquid
		for _, r := range m.runs {
			g.toxic = g.toxic || r.toxic && r.source != nil && r.source == g.to
		}
	}
	m.settle()
	return m, nil
}

// How full a vessel may get (practice, no source). A liquefied gas grows so much when it warms that it needs more room; the
// filling density that the law gives for it comes first.
const (
	ullage    = 0.95
	ullageGas = 0.80
)

func (m *Model) vessel(v *resolve.Vessel) *vessel {
	s := v.Sheet
	out := &vessel{id: v.Key, open: s.Vent.V == "open", allowed: ullage}
	out.levels = s.Volume.Set && s.Filled.Set
	for _, r := range m.line.Runs {
		if r.Target == v && liquefied(r) {
			out.allowed = ullageGas
		}
	}
	out.volumeM3, out.filled = float64(s.Volume.V), float64(s.Filled.V)
	if out.open {
		return out
	}
	if s.Pressure.Set && !m.padded(v) { // else it is the pad's, which can be vented
		out.own = kpa(s.Pressure.V.Gauge(m.line.Ambient))
	}
	out.own = max(out.own, m.vapour(v))
	out.kpa = out.own
	return out
}

// padded says whether a run of gas ends in the vessel.
func (m *Model) padded(v *resolve.Vessel) bool {
	for _, r := range m.line.Runs {
		if r.Target == v && !carriesLiquid(r) {
			return true
		}
	}
	return false
}

// vapour is what a liquefied gas brings to a closed vessel, in kPa gauge.
func (m *Model) vapour(v *resolve.Vessel) (most int64) {
	for _, r := range m.line.Runs {
		if r.Source != v && r.Target != v || !liquefied(r) {
			continue
		}
		for _, c := range m.f.Cases {
			if c.Run == r.Key && c.Case == "vapour-pressure" {
				most = max(most, c.KPa.V)
			}
		}
	}
	return most
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
