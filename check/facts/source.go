package facts

import (
	"errors"
	"fmt"

	"lineworthy/catalog"
	"lineworthy/check/measure"
	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

// source is what pushes at the start of a run.
func (b *builder) source(r *resolve.Run) []push {
	s := &r.Sheet.Source
	switch {
	case s.Cylinder.Set:
		return []push{b.cylinder(r)}
	case s.Supply.Set:
		return []push{{name: "duty", p: s.Supply.V.Gauge(b.l.Ambient), known: true, cause: "the supply at its highest pressure"}}
	case r.Source != nil:
		return b.vessel(r)
	}
	return []push{missing("duty", "the run names no source", "runs."+r.Key+".source")}
}

func missing(name, why, ask string) push { return push{name: name, why: why, ask: ask} }

// fillTemperature is what a cylinder's stated pressure is settled at: 15 °C, the reference of ISO 10286 (recalled).
const fillTemperature = units.Temperature(288.15)

// cylinder is the cylinder's pressure on the hottest day.
func (b *builder) cylinder(r *resolve.Run) push {
	p := r.Sheet.Source.Cylinder.V.Absolute(b.l.Ambient)
	top := b.hottest(r)
	if top == nil {
		return missing("duty", "how hot the cylinder can get is not stated", "site.highest")
	}
	hot, how := *top, "a full cylinder at the hottest"
	if hot < fillTemperature {
		hot = fillTemperature
	}
	for _, f := range r.Fluids {
		if f.Cat.Form == "liquefied-gas" {
			return b.vapour(f)
		}
	}
	at, err := measure.HotNitrogen(p, fillTemperature, hot)
	if err != nil || !onlyNitrogen(r) {
		at, how = measure.HotIdealGas(p, fillTemperature, hot), "a full cylinder at the hottest, as an ideal gas"
	}
	return push{name: "duty", p: at.Gauge(b.l.Ambient), known: true, cause: how}
}

// onlyNitrogen says whether the nitrogen table serves: nitrogen, and air which is mostly that.
func onlyNitrogen(r *resolve.Run) bool {
	for _, f := range r.Fluids {
		if f.Props.ID != "nitrogen" && f.Props.ID != "air" {
			return false
		}
	}
	return true
}

// vessel is what pushes out of a vessel: its pad, the vapour of what it holds, and the liquid standing above the line.
func (b *builder) vessel(r *resolve.Run) []push {
	pushes := b.inside(r.Source, r)
	for _, f := range r.Fluids {
		if p := b.vapour(f); !p.known || p.p > 0 {
			if !isGas(f) && (p.known || p.why != "") {
				pushes = append(pushes, p)
			}
		}
	}
	return b.withHead(r, pushes)
}

// inside is the pressure in a vessel: what its pad runs deliver, or none when it is open to the air.
func (b *builder) inside(v *resolve.Vessel, not *resolve.Run) []push {
	var pushes []push
	for _, pad := range b.l.Runs {
		if pad == not || pad.Target != v {
			continue
		}
		for _, p := range b.vesselRelieved(v, b.passage(pad)) {
			p.cause = fmt.Sprintf("%s (through %s)", p.cause, v.Key)
			pushes = append(pushes, p)
		}
	}
	if len(pushes) > 0 {
		return pushes
	}
	switch v.Sheet.Vent.V {
	case "open":
		return []push{{name: "duty", known: true, cause: v.Key + " is open to the air"}}
	case "closed":
		return []push{{name: "duty", known: true, cause: v.Key + " is closed and no gas is pushed in"}}
	}
	return []push{missing("duty", v.Key+" has no pad run and the sheet does not say whether its vent is open", "vessels."+v.Key+".vent")}
}

// vapour is the pressure the liquid's own vapour brings at the hottest. For a liquid that boils far above ambient the
// catalog may hold no curve; then there is nothing to add.
func (b *builder) vapour(f *resolve.Fluid) push {
	p := push{name: "vapour-pressure", cause: "the vapour of " + f.Cat.Name + " at the hottest"}
	if f.Hottest == nil {
		p.why, p.ask = "how hot "+f.Cat.Name+" can get is not stated", "fluids."+f.Key+".temperature.highest"
		return p
	}
	e := f.Props.VapourP
	if e == nil {
		if f.Cat.Form != "liquid" {
			p.why, p.ask = "the catalog has no vapour pressure of "+f.Cat.Name, "a published vapour-pressure curve"
		}
		return p
	}
	at, err := measure.VapourPressure(equation(e), *f.Hottest)
	var out *measure.OutsideError
	switch {
	case errors.As(err, &out):
		p.why, p.ask = out.Error(), "a published vapour-pressure curve of "+f.Cat.Name
	case err != nil:
		b.err = err
	default:
		at *= units.AbsolutePressure(1 / (1 - e.UnderstatesPct/100))
		p.p, p.known = at.Gauge(b.l.Ambient), true
	}
	return p
}

func equation(e *catalog.Equation) measure.Equation {
	return measure.Equation{Name: e.Equation, C: e.C, From: units.Temperature(e.FromK), To: units.Temperature(e.ToK)}
}
