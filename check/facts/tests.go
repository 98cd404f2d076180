package facts

import (
	"slices"

	"lineworthy/check/measure"
	"lineworthy/check/resolve"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

// tests are the pressure tests the sheet states. They are cases of their own: nothing of the transfer is added to them.
func (b *builder) tests() {
	b.f.Tests, b.f.TestItems = []Test{}, []TestItem{}
	for _, r := range b.l.Runs {
		if r.Test != nil {
			b.f.Tests = append(b.f.Tests, b.test(r))
			b.testItems(r)
		}
	}
}

// stores says whether the fluid gives back in a burst what was put into it: all but a plain liquid.
func stores(f *resolve.Fluid) bool { return f.Cat.Form != "liquid" }

// aside says whether the sheet keeps a part or vessel out of the test of its run.
func aside(r *resolve.Run, name string) bool {
	return slices.ContainsFunc(r.Sheet.Test.Isolated, func(o sheet.Of[string]) bool { return o.V == name })
}

func (b *builder) test(r *resolve.Run) Test {
	s, f := r.Sheet.Test, r.Test
	t := Test{
		ID: r.Key, Fluid: f.Cat.Name, Gas: stores(f), Air: f.Props.ID == "air" || f.Props.ID == "oxygen", Dried: s.Dried.V,
		TestKPa: b.kpaUp(s.Pressure.V.Gauge(b.l.Ambient)), ReliefStated: s.Relief.Set, DistanceSaid: s.Distance.Set,
		ColdestCK: b.cold(f.Lowest), PlaceCK: b.cold(ptr(&b.l.Sheet.Site.Lowest)),
	}
	if s.Relief.Set {
		t.ReliefOver = b.kpaUp(s.Relief.V.Gauge(b.l.Ambient) - s.Pressure.V.Gauge(b.l.Ambient))
	}
	if s.Distance.Set {
		t.DistanceMM = b.keep(units.MillimetreDown(s.Distance.V))
	}
	if m := f.Props.Constants.MeltingPointK; m != nil {
		melts := units.Temperature(m.Value)
		t.FreezesCK = b.hot(&melts)
	}
	for _, x := range r.Fluids {
		t.Flammable = t.Flammable || resolve.Yes(x.Cat.Hazards.Flammable)
		if wet(x) {
			t.DryService, t.DryBecause = true, x.Cat.Name
		}
	}
	b.working(r, &t)
	if t.Gas {
		b.keepOff(r, &t)
	} else if !t.ReliefStated {
		b.testWarms(r, &t)
	}
	return t
}

// wet says whether the fluid does not bear what a wet line gives it: one the sheet calls dry, or one that is let down or
// boils cold enough to freeze it (practice).
func wet(f *resolve.Fluid) bool {
	return f.Sheet != nil && f.Sheet.Dryness.V == "dry" || f.Cat.Form == "liquefied-gas" || f.Cat.Form == "cryogenic-liquid"
}

// working is the highest pressure of ordinary operation at any part in the test, and the relief devices kept out of it.
func (b *builder) working(r *resolve.Run, t *Test) {
	var top units.GaugePressure
	known := true
	for i, p := range r.Parts {
		if aside(r, p.ID) {
			if p.Sheet.Kind.V == "relief" && !t.Isolated {
				t.Isolated, t.IsolatedWhat = true, p.ID
			}
			continue
		}
		at, ok := steady(b.at(r, i))
		top, known = max(top, at), known && ok
	}
	if known {
		t.WorkingKPa = b.kpaUp(top)
	} else {
		b.unknown(r.Key, "tests.working_kpa", "the pressure of ordinary operation is not known", "the source of the run")
	}
}

// testWarms is what the test liquid comes to when it is left shut in and warms up, as on a morning that the sun comes out.
func (b *builder) testWarms(r *resolve.Run, t *Test) {
	f := r.Test
	why := "how cold and hot the test liquid can get is not stated"
	if hot := b.warmestOf(f); f.Lowest != nil && hot != nil {
		why = "the catalog does not hold how far " + f.Cat.Name + " expands and gives way"
		if l, ok := liquid(f); ok {
			p, err := measure.BlockedIn(l, measure.Container{}, r.Sheet.Test.Pressure.V.Absolute(b.l.Ambient), *f.Lowest, *hot)
			if err == nil {
				t.WarmedKPa = b.kpaUp(p.Gauge(b.l.Ambient))
				return
			}
			why = err.Error()
		}
	}
	b.unknown(r.Key, "tests.warmed_kpa", why, "a relief device on the test, or the liquid's expansion and compressibility")
}

// keepOff is the distance that the energy of the gas asks for, by the later text of PCC-2, which is the stricter one. A
// fluid that is neither air nor nitrogen is taken at k = 1.1, which overstates the energy of any gas (practice).
func (b *builder) keepOff(r *resolve.Run, t *Test) {
	v, why := b.gasRoom(r)
	if why != "" {
		b.unknown(r.Key, "tests.keep_off_mm", why, "length and size of every hose and pipe in the test, and volume of every vessel")
		return
	}
	p := r.Sheet.Test.Pressure.V.Absolute(b.l.Ambient)
	energy := measure.NitrogenEnergy(p, v)
	if id := r.Test.Props.ID; id != "nitrogen" && id != "air" {
		energy = measure.GasEnergy(p, v, 1.1)
	}
	if away, err := measure.SafeDistance(energy, measure.PCC2Later, forPeople); err == nil {
		t.KeepOffMM = b.keep(units.MillimetreUp(away))
	}
}

// forPeople is the scaled distance at which people are not hurt, 20 m/kg^(1/3): ASME PCC-2:2008 Article 5.1, Appendix III (published).
const forPeople = 20

// gasRoom is the room of the test by its hoses, pipes and vessels; what else is in it adds little (practice).
func (b *builder) gasRoom(r *resolve.Run) (v units.Volume, why string) {
	for _, p := range r.Parts {
		if k := p.Sheet.Kind.V; aside(r, p.ID) || k != "hose" && k != "pipe" {
			continue
		}
		d, ok := bore(p)
		if !ok || !p.Sheet.Length.Set {
			return 0, "the size or length of " + p.ID + " is not stated"
		}
		v += cylinderRoom(d, p.Sheet.Length.V)
	}
	for _, tank := range []*resolve.Vessel{r.Source, r.Target} {
		if tank == nil || aside(r, tank.Key) {
			continue
		}
		if !tank.Sheet.Volume.Set {
			return 0, "the volume of " + tank.Key + " is not stated, and it is not kept out of the test"
		}
		v += tank.Sheet.Volume.V
	}
	return v, ""
}
