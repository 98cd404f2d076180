package sequence

import (
	"slices"

	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

// begin opens a run from its destination. A regulator is set once its source is open.
func (s *Sequence) begin(m *Model, r *run) {
	if r.burns() {
		s.add(Step{Do: "check", Run: r.key, Text: "no air stands in the line of " + r.key + " nor where it leads: sweep it with an inert gas before the gas comes in"})
	}
	for _, d := range r.devices {
		if d.kind == "regulator" && r.source == nil {
			s.add(Step{Do: "check", Item: d.id, Text: d.id + " is backed off before its source opens"})
		}
	}
	for _, d := range slices.Backward(r.devices) {
		switch d.kind {
		case "valve":
			s.add(Step{Do: "open", Item: d.id, Slowly: true})
		case "source":
			s.add(Step{Do: "open", Item: d.id, Run: r.key, Slowly: true, Text: r.warming()})
		}
	}
	for _, d := range r.devices {
		if d.kind == "regulator" {
			s.add(Step{Do: "set", Item: d.id, Pressure: m.setting(r, d.id)})
		}
	}
}

// burns says whether the run brings a gas that burns from a cylinder or a main.
func (r *run) burns() bool {
	return !r.liquid && r.source == nil && slices.ContainsFunc(r.r.Fluids, func(f *resolve.Fluid) bool {
		return f.Key == r.product && resolve.Yes(f.Cat.Hazards.Flammable)
	})
}

// warming is said where steam first comes into a cold line.
func (r *run) warming() string {
	if !r.liquid && r.steams() {
		return "let the line warm up and its condensate out, then all the way: steam that meets condensate hammers"
	}
	return ""
}

// use is the work of a gas that drives no liquid and takes none's place.
func (s *Sequence) use(m *Model, r *run) {
	if r.source != nil {
		return
	}
	for _, other := range m.runs {
		if other.liquid && other.source == r.to && r.to != nil {
			return
		}
	}
	s.add(Step{Do: "check", Run: r.key, Text: r.key + " holds its pressure and no connection leaks; it stays open, and watched, for as long as the work takes"})
}

// setting is the set pressure as the sheet writes it.
func (m *Model) setting(r *run, id string) string {
	for _, p := range r.r.Parts {
		if p.ID == id && p.Sheet.Set.Set {
			return p.Sheet.Set.V.Gauge(m.line.Ambient).Format(gaugeUnit(p.Sheet.Set.V))
		}
	}
	return "" // not stated
}

func gaugeUnit(p units.Pressure) units.Unit {
	if p.Basis == units.GaugeBasis {
		return p.Unit
	}
	return "bar(g)"
}
