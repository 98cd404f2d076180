package facts

import (
	"slices"

	"lineworthy/check/resolve"
	"lineworthy/check/sheet"
)

func (b *builder) line() {
	s := b.l.Sheet
	f := &b.f.Line
	f.ID, f.AsOfDay = s.ID.V, int64(b.l.AsOf.Days)
	f.Regimes, f.Unruled = []string{}, []string{}
	for _, r := range s.Regimes {
		f.Regimes = append(f.Regimes, r.V)
	}
	slices.Sort(f.Regimes)
	for _, fl := range b.carried() {
		f.Flammable = f.Flammable || resolve.Yes(fl.Cat.Hazards.Flammable)
		f.Toxic = f.Toxic || resolve.Yes(fl.Cat.Hazards.Toxic)
		f.Corrosive = f.Corrosive || resolve.Yes(fl.Cat.Hazards.Corrosive)
		f.LiquefiedGas = f.LiquefiedGas || fl.Cat.Form == "liquefied-gas"
	}
	f.RemoteStop, f.AutomaticStop = boolOf(s.Safeguards.RemoteStop), boolOf(s.Safeguards.AutomaticStop)
	f.StopDays = b.since(s.Safeguards.StopTested)
	f.Attended = boolOf(s.Safeguards.Attended)
	b.change()
}

// carried are the fluids of all runs, once each.
func (b *builder) carried() []*resolve.Fluid {
	var all []*resolve.Fluid
	for _, r := range b.l.Runs {
		for _, f := range r.Fluids {
			if !slices.Contains(all, f) {
				all = append(all, f)
			}
		}
	}
	return all
}

func (b *builder) change() {
	c := b.l.Sheet.Change
	if c == nil {
		return
	}
	f := &b.f.Line
	f.Changed, f.ChangeRecord = true, c.Record.Set
	f.ChangeInKind = boolOf(c.InKind)
	f.ChangeTemporary, f.ChangeNotInKind = c.Until.Set, !c.InKind.V
	f.ChangeBasis, f.ChangeEffects, f.ChangeProcedure = boolOf(c.Basis), boolOf(c.Effects), boolOf(c.Procedures)
	f.ChangeTrained = boolOf(c.Trained)
	if c.Authorised.Set {
		f.ChangeReviewed = Know(int64(c.Authorised.V.Days))
	}
	if c.Until.Set {
		f.ChangeUntil = Know(int64(c.Until.V.Days))
	}
}

func boolOf(o sheet.Of[bool]) Bool {
	return Bool{V: o.V, Known: o.Set}
}

func (b *builder) fluids() {
	b.f.Fluids = []Fluid{}
	for _, f := range b.carried() {
		b.f.Fluids = append(b.f.Fluids, b.fluid(f))
	}
}

func (b *builder) fluid(f *resolve.Fluid) Fluid {
	h := f.Cat.Hazards
	out := Fluid{
		ID: f.Key, Fluid: f.Cat.ID, Name: f.Cat.Name, Role: f.Role, Form: f.Cat.Form, Air: f.Cat.ID == "air",
		Flammable: resolve.Yes(h.Flammable), Toxic: resolve.Yes(h.Toxic), Corrosive: resolve.Yes(h.Corrosive), Oxidiser: resolve.Yes(h.Oxidiser),
		HighestCK: b.hot(f.Hottest), LowestCK: b.cold(f.Lowest), Accumulator: b.accumulator(f),
	}
	if f.Sheet != nil {
		out.OilFree = boolOf(f.Sheet.OilFree)
		out.Dry = Bool{V: f.Sheet.Dryness.V == "dry", Known: f.Sheet.Dryness.Set}
	}
	if f.Strength != nil {
		out.Strength = b.keep(permille(*f.Strength))
	}
	out.DutyKPa = b.duty(f)
	out.StrengthFits = strengthFits(f)
	if !out.StrengthFits.Known {
		b.unknown(f.Key, "fluids.concentration_fits", listedFor(f)+" and the sheet states no concentration", "fluids."+f.Key+".concentration")
	}
	return out
}
