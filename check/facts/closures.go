package facts

import (
	"slices"

	"lineworthy/check/resolve"
)

// Closure is what shuts an end that this transfer does not use: beside the flow, or a point of a vessel at either end.
type Closure struct {
	ID       string `json:"id"`
	Form     string `json:"form,omitzero" words:"valve,cap,plug,blind-flange,dust-cap,piped,none" ask:"closed_by of the point, or form of the closure: what shuts the end"`
	Pressure bool   `json:"under_pressure"` // something in the vessel or the run can push on it
	Hazard   bool   `json:"holds_hazard"`   // what would come out is flammable, toxic or corrosive
}

// closures are the closures of the runs, and the unused points of vessels that the sheet speaks of, or that stand under the
// pressure of something hazardous.
func (b *builder) closures() {
	b.f.Closures = []Closure{}
	for _, r := range b.l.Runs {
		for i, p := range r.Parts {
			if p.Sheet.Kind.V == "closure" {
				c := Closure{ID: p.ID, Form: p.Sheet.Form.V, Pressure: underPressure(b.at(r, i)), Hazard: slices.ContainsFunc(r.Fluids, hazardous)}
				b.f.Closures = append(b.f.Closures, c)
			}
		}
	}
	for _, v := range b.l.Vessels {
		b.spare(v)
	}
}

func (b *builder) spare(v *resolve.Vessel) {
	pressure, hazard, here := b.inVessel(v)
	for _, n := range v.Sheet.Points {
		e := v.Points[n.Key]
		if b.inUse(e) || n.V.Open.V {
			continue
		}
		if said := n.V.ClosedBy.Set; said || here && pressure && hazard {
			b.f.Closures = append(b.f.Closures, Closure{ID: v.Key + "/" + n.Key, Form: n.V.ClosedBy.V, Pressure: pressure, Hazard: hazard})
		}
	}
}

// inVessel says whether anything pushes in the vessel, whether it holds a hazard, and whether a run starts or ends there.
func (b *builder) inVessel(v *resolve.Vessel) (pressure, hazard, here bool) {
	for _, r := range b.l.Runs {
		if r.Source != v && r.Target != v {
			continue
		}
		here = true
		hazard = hazard || slices.ContainsFunc(r.Fluids, hazardous)
		if v.Sheet.Vent.V == "open" {
			continue
		}
		if r.Source == v {
			pressure = pressure || underPressure(b.inside(v, r))
		} else {
			pressure = pressure || underPressure(b.arriving(r))
		}
	}
	return pressure, hazard, here
}

// underPressure says whether anything pushes harder than the air; what is not known may.
func underPressure(pushes []push) bool {
	return slices.ContainsFunc(pushes, func(p push) bool { return !p.known || p.p > 0 })
}

func (b *builder) inUse(e *resolve.End) bool {
	return slices.ContainsFunc(b.l.Runs, func(r *resolve.Run) bool { return r.SourceEnd == e || r.TargetEnd == e })
}

func hazardous(f *resolve.Fluid) bool {
	h := f.Cat.Hazards
	return resolve.Yes(h.Flammable) || resolve.Yes(h.Toxic) || resolve.Yes(h.Corrosive)
}
