package sequence

import "lineworthy/check/resolve"

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
	said      bool // the filling is
	allowed   float64
	ratedKPa  int64 // 0 when the sheet does not say
	reliefKPa int64 // set pressure of its own relief device; 0 without
	flammable bool
	bonded    bool
	unsure    bool // gas comes at a pressure that nobody stated
	unvented  bool // the sheet does not say whether its vent is open
	unfelt    bool // a liquefied gas whose pressure does not follow from the sheet
	boils     bool // a liquefied gas, which keeps up its own pressure
}

// How full a vessel may get (practice, no source). A liquefied gas grows so much when it warms that it needs more room; the
// filling density that the law gives for it comes first.
const (
	ullage    = 0.95
	ullageGas = 0.80
)

func (m *Model) vessel(v *resolve.Vessel) *vessel {
	s := v.Sheet
	out := &vessel{id: v.Key, open: s.Vent.V == "open", unvented: !s.Vent.Set, allowed: ullage}
	out.said = s.Filled.Set
	out.levels = s.Volume.Set && s.Filled.Set && s.Volume.V > 0
	for _, r := range m.line.Runs {
		out.boils = out.boils || (r.Source == v || r.Target == v) && liquefied(r)
		if r.Target == v && liquefied(r) {
			out.allowed = ullageGas
		}
	}
	if s.Rated.Set {
		out.ratedKPa = kpa(s.Rated.V.Gauge(m.line.Ambient))
	}
	if s.Relief != nil && s.Relief.Set.Set {
		out.reliefKPa = kpa(s.Relief.Set.V.Gauge(m.line.Ambient))
	}
	out.volumeM3, out.filled = float64(s.Volume.V), float64(s.Filled.V)
	if out.open {
		return out
	}
	if s.Pressure.Set && !m.padded(v) { // else it is the pad's, which can be vented
		out.own = kpa(s.Pressure.V.Gauge(m.line.Ambient))
	}
	most, known := m.vapour(v)
	out.own = max(out.own, most)
	out.kpa = out.own
	if out.boils && !known && !s.Pressure.Set {
		out.unsure, out.unfelt = true, true
	}
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

// vapour is what a liquefied gas brings to a closed vessel, in kPa gauge, and whether that is known.
func (m *Model) vapour(v *resolve.Vessel) (most int64, known bool) {
	for _, r := range m.line.Runs {
		if r.Source != v && r.Target != v || !liquefied(r) {
			continue
		}
		for _, c := range m.f.Cases {
			if c.Run == r.Key && c.Case == "vapour-pressure" {
				most, known = max(most, c.KPa.V), known || c.KPa.Known
			}
		}
	}
	return most, known
}

// missing is the key, or the keys, that the sheet lacks for the level.
func (v *vessel) missing() string {
	switch {
	case v.volumeM3 == 0 && !v.said:
		return ".volume and vessels." + v.id + ".filled"
	case v.volumeM3 == 0:
		return ".volume"
	}
	return ".filled"
}
