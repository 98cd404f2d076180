package facts

import (
	"errors"

	"lineworthy/check/measure"
	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

func (b *builder) vesselFacts() {
	b.f.Vessels = []Vessel{}
	for _, v := range b.l.Vessels {
		b.f.Vessels = append(b.f.Vessels, b.vesselFact(v))
	}
}

func (b *builder) vesselFact(v *resolve.Vessel) Vessel {
	s := v.Sheet
	out := Vessel{
		ID: v.Key, Kind: s.Kind.V, Closed: s.Vent.V != "open", HasRelief: s.Relief != nil, RatedKPa: b.gauge(s.Rated),
		TestKPa: b.gauge(s.TestPressure), DischargeKPa: b.gauge(s.Discharge), Bonded: boolOf(s.Bonded),
		RoadTank: !s.Kind.Set || s.Kind.V == "tanker", PhaseMarked: phaseMarked(v),
	}
	if s.Filled.Set {
		out.FilledPermille = b.keep(units.PermilleUp(s.Filled.V))
	}
	for _, r := range b.l.Runs {
		switch v {
		case r.Source:
			out.Source = true
			b.holding(v, r, &out, s.Filled.V, s.Filled.Set)
		case r.Target:
			out.Target = true
			b.receiving(v, r, &out)
		}
	}
	b.vesselVacuum(v, &out)
	return out
}

// holding is a vessel as the source of a run.
func (b *builder) holding(v *resolve.Vessel, r *resolve.Run, out *Vessel, fill units.Fraction, known bool) {
	f := product(r)
	for _, x := range r.Fluids {
		out.Flammable = out.Flammable || resolve.Yes(x.Cat.Hazards.Flammable) && !isGas(x)
		out.Chlorine = out.Chlorine || x.Props.ID == "chlorine"
	}
	if f == nil {
		return
	}
	out.Liquid, out.HottestCK = true, b.hot(b.warmest(r, v.Sheet.Insulated.V))
	if known {
		b.full(f, fill, out)
	}
}

// full is where the liquid would fill the vessel, and the degree of filling for transport.
func (b *builder) full(f *resolve.Fluid, fill units.Fraction, out *Vessel) {
	e := f.Props.Density
	if e == nil || e.Equation == "point" || f.Lowest == nil {
		b.unknown(out.ID, "vessels.liquid_full_ck", "how far "+f.Cat.Name+" expands is not known", "its density at two temperatures")
		return
	}
	shut := max(*f.Lowest, units.Temperature(e.FromK))
	full, err := measure.LiquidFull(measure.PaddedVessel{Density: equation(e), MolarMass: molar(f.Props), Fill: fill, Shut: shut, ShellExpansion: shellExpansion})
	var beyond *measure.OutsideError
	switch {
	case errors.As(err, &beyond):
		full = units.Temperature(e.ToK) // not before the end of the curve
	case err != nil:
		b.unknown(out.ID, "vessels.liquid_full_ck", err.Error(), "the density of the liquid")
		return
	}
	out.FullCK = b.keep(units.CentikelvinDown(full))
	b.transport(f, shut, out)
}

// transport is the degree of filling of ADR 4.2.1.9.2 for portable tanks (published), at the filling temperature.
func (b *builder) transport(f *resolve.Fluid, at units.Temperature, out *Vessel) {
	e := equation(f.Props.Density)
	cold, err := measure.LiquidDensity(e, molar(f.Props), units.Celsius(15))
	if err != nil {
		return
	}
	hot, err := measure.LiquidDensity(e, molar(f.Props), units.Celsius(50))
	if err != nil {
		return
	}
	out.FillLimit = b.keep(units.PermilleDown(measure.PortableTankFill(measure.MeanExpansion(cold, hot), at)))
}

// receiving is a vessel as the destination of a run: of pad gas, or of liquid.
func (b *builder) receiving(v *resolve.Vessel, r *resolve.Run, out *Vessel) {
	if gasOnly(r) {
		out.Padded = true
		if p, ok := steady(b.passage(r).end); ok {
			out.PadKPa = b.kpaUp(p)
		}
		if p, ok := highest(b.passage(r).first()); ok {
			out.SupplyKPa = b.kpaUp(p.p)
		}
		return
	}
	out.Liquid = true
	for _, x := range liquids(r) {
		out.Flammable = out.Flammable || resolve.Yes(x.Cat.Hazards.Flammable)
	}
	out.QuantitySaid = r.Sheet.Quantity.Set
	if r.Sheet.Quantity.Set && v.Sheet.Volume.Set && v.Sheet.Filled.Set && v.Sheet.Volume.V > 0 {
		after := v.Sheet.Filled.V + units.Fraction(r.Sheet.Quantity.V/v.Sheet.Volume.V)
		out.AfterPermille = b.keep(units.PermilleUp(after))
	}
}
