package facts

import (
	"errors"
	"fmt"
	"slices"

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
		supply := push{name: "duty", p: s.Supply.V.Gauge(b.l.Ambient), known: true, cause: "the supply at its highest pressure"}
		return append([]push{supply}, b.vapours(r)...)
	case r.Source != nil:
		return b.vessel(r)
	}
	return []push{missing("duty", "the run names no source", "runs."+r.Key+".source")}
}

func missing(name, why, ask string) push { return push{name: name, why: why, ask: ask} }

// vessel is what pushes out of a vessel: its pad, the vapour of what it holds, and the liquid standing above the line.
func (b *builder) vessel(r *resolve.Run) []push {
	return b.withHead(r, append(b.inside(r.Source, r), b.vapours(r)...))
}

// vapours are the vapour pressures of the run's liquids, those below ambient left out.
func (b *builder) vapours(r *resolve.Run) []push {
	pushes := b.pushRoom(len(r.Fluids))
	for _, f := range r.Fluids {
		if p := b.vapour(f); !isGas(f) && (p.known && p.p > 0 || !p.known && p.why != "") {
			pushes = append(pushes, p)
		}
	}
	return pushes
}

// inside is the pressure in a vessel: what its pad runs deliver, or none when it is open to the air.
func (b *builder) inside(v *resolve.Vessel, not *resolve.Run) []push {
	pushes := append(b.pushRoom(usualPushes), b.standing(v)...)
	fed := len(pushes) > 0
	for _, pad := range b.l.Runs {
		if pad == not || pad.Target != v {
			continue
		}
		fed = true
		for _, p := range b.vesselRelieved(v, b.passage(pad)) {
			p.cause += " (through " + v.Key + ")"
			pushes = append(pushes, p)
		}
	}
	pushes = hardest(b.pushRoom(len(pushes)+3), pushes) // with room for what is added here and by the vapours
	warmed, ok := b.heated(v, pushes)
	if !fed && v.Sheet.Vent.V != "open" && slices.ContainsFunc(not.Fluids, isGas) {
		pushes = append(pushes, missing("duty", "gas comes out of "+v.Key+" at a pressure the sheet does not state",
			"the run that puts the gas in, or the highest pressure as a supply"))
	}
	if len(pushes) == 0 {
		pushes = append(pushes, unfed(v))
	}
	if ok {
		pushes = append(pushes, warmed)
	}
	return pushes
}

// standing is the pressure the sheet says a vessel has of itself, or gets from what the sheet leaves out.
func (b *builder) standing(v *resolve.Vessel) []push {
	if !v.Sheet.Pressure.Set {
		return nil
	}
	return []push{{name: "duty", p: v.Sheet.Pressure.V.Gauge(b.l.Ambient), known: true, cause: "the pressure that stands in " + v.Key}}
}

// unfed is the pressure in a vessel that no run pushes anything into.
func unfed(v *resolve.Vessel) push {
	switch v.Sheet.Vent.V {
	case "open":
		return push{name: "duty", known: true, cause: v.Key + " is open to the air"}
	case "closed":
		return push{name: "duty", known: true, cause: v.Key + " is closed and no gas is pushed in"}
	}
	return missing("duty", v.Key+" has no pad run and the sheet does not say whether its vent is open", "vessels."+v.Key+".vent")
}

// warm is the hottest a fluid gets in the line, nil when not known: standing, it takes the heat of the place. A cryogenic
// liquid is the exception: warm, it is no longer the liquid the sheet speaks of.
func (b *builder) warm(f *resolve.Fluid) *units.Temperature {
	if at := &b.l.Sheet.Site.Highest; f.Hottest != nil && at.Set && f.Cat.Form != "cryogenic-liquid" {
		return higher(f.Hottest, &at.V)
	}
	return f.Hottest
}

// vapour is the pressure the liquid's own vapour brings at the hottest, kept for every run and vessel that asks.
func (b *builder) vapour(f *resolve.Fluid) push {
	for _, v := range b.vapoursOf {
		if v.fluid == f {
			return v.push
		}
	}
	p := b.ownVapour(f)
	b.vapoursOf = append(b.vapoursOf, vapourOf{p, f})
	return p
}

// vapourOf is the push of the vapour of one fluid.
type vapourOf struct {
	push
	fluid *resolve.Fluid
}

func (b *builder) ownVapour(f *resolve.Fluid) push {
	p := push{name: "vapour-pressure", cause: "the vapour of " + f.Cat.Name + " at the hottest"}
	if f.Hottest == nil {
		p.why, p.ask = "how hot "+f.Cat.Name+" can get is not stated", "fluids."+f.Key+".temperature.highest"
		return p
	}
	if f.Sheet != nil && f.Sheet.Vapour.Set {
		b.rests(f.Key+" vapour pressure", "vapour pressure of "+f.Cat.Name+", "+f.Sheet.Vapour.Text, stated(f.Sheet.Evidence.V), f.Key)
		p.p, p.known = f.Sheet.Vapour.V.Gauge(b.l.Ambient), true
		return p
	}
	if isGas(f) {
		return p // nobody counts the vapour of a gas
	}
	e := f.Props.VapourP
	if e == nil {
		return b.belowBoiling(f, p)
	}
	at, err := measure.VapourPressure(equation(e), *b.warm(f))
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

// coolerBy is how far below its boiling point a liquid without a curve counts as bringing no pressure of its own: enough
// for the spread of strengths and blends (practice).
const coolerBy units.TemperatureDifference = 10

// belowBoiling stands in for a vapour-pressure curve the catalog does not hold: a liquid well below its boiling point
// pushes nothing, any other is not known.
func (b *builder) belowBoiling(f *resolve.Fluid, p push) push {
	boils := f.Props.Constants.BoilingPointK
	if f.Cat.Form == "liquid" && boils != nil && b.warm(f).Plus(coolerBy) < units.Temperature(boils.Value) {
		b.rests(f.Cat.ID+" boiling point", fmt.Sprintf("boiling point of %s, %.0f K", f.Cat.Name, boils.Value), boils.Origin, f.Key)
		return p
	}
	p.why, p.ask = "the catalog has no vapour pressure of "+f.Cat.Name, "vapour_pressure of "+f.Key+" at its highest temperature, from its safety data sheet"
	return p
}
