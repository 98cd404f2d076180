package sequence

import (
	"slices"

	"lineworthy/check/units"
)

// begin opens a run from its destination. A regulator is set once its source is open.
func (s *Sequence) begin(m *Model, r *run) {
	for _, d := range slices.Backward(r.devices) {
		switch d.kind {
		case "valve":
			s.add(Step{Do: "open", Item: d.id, Slowly: true})
		case "source":
			s.add(Step{Do: "open", Item: d.id, Run: r.key, Slowly: true})
		}
	}
	for _, d := range r.devices {
		if d.kind == "regulator" {
			s.add(Step{Do: "set", Item: d.id, Pressure: m.setting(r, d.id)})
		}
	}
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
