package facts

import (
	"lineworthy/check/measure"
	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

// reserve is what stays in a cylinder over the pad when it counts as empty: 5 bar (practice).
const reserve = units.PressureDifference(5e5)

// gasNeeded is how many of the pad run's cylinders the transfer takes, for nitrogen from a cylinder of stated volume.
func (b *builder) gasNeeded(r *resolve.Run, f *Flow) {
	pad := b.padOf(r)
	if pad == nil || !r.Sheet.Quantity.Set || !pad.Sheet.Source.Cylinder.Set || !pad.Sheet.Source.Volume.Set || !onlyNitrogen(pad) {
		return
	}
	set, ok := named(b.passage(pad).end, "duty")
	if !ok {
		return
	}
	at := set.Absolute(b.l.Ambient)
	mass, err := measure.PadMass(at, fillTemperature, r.Sheet.Quantity.V)
	if err != nil {
		return
	}
	c := measure.Cylinder{Volume: pad.Sheet.Source.Volume.V, Full: pad.Sheet.Source.Cylinder.V.Absolute(b.l.Ambient), Reserve: reserve}
	n, err := measure.CylinderCount(mass, c, at, fillTemperature)
	if err != nil {
		return
	}
	f.CylindersSaid = true
	f.CylindersPermille = b.keep(units.RoundUp(n * 1e3))
}

// padOf is the gas run that pushes the run's source.
func (b *builder) padOf(r *resolve.Run) *resolve.Run {
	for _, pad := range b.l.Runs {
		if pad != r && r.Source != nil && pad.Target == r.Source && gasOnly(pad) {
			return pad
		}
	}
	return nil
}

// releases are what a gas run can let out: into the room given, and as the force of a parted hose.
func (b *builder) releases() {
	b.f.Releases = []Release{}
	for _, r := range b.l.Runs {
		if gasOnly(r) {
			b.f.Releases = append(b.f.Releases, b.release(r))
		}
	}
}

func (b *builder) release(r *resolve.Run) Release {
	out := Release{ID: r.Key, Restrained: true}
	site := b.l.Sheet.Site
	inside := site.Room.Set || site.Sun.V == "indoors"
	for _, f := range r.Fluids {
		out.Asphyxiant = out.Asphyxiant || inside && resolve.Yes(f.Cat.Hazards.Asphyxiant)
	}
	if out.Asphyxiant {
		b.oxygen(r, &out)
	}
	for i, p := range r.Parts {
		if p.Sheet.Kind.V == "hose" {
			b.whip(r, i, &out)
		}
	}
	return out
}

// oxygen is what is left to breathe when all gas of the source escapes at once: the oxygen method of British and
// university guidance, 20.95 (Vr - Vg)/Vr (published).
func (b *builder) oxygen(r *resolve.Run, out *Release) {
	s := r.Sheet.Source
	if !b.l.Sheet.Site.Room.Set || !s.Cylinder.Set || !s.Volume.Set {
		b.unknown(out.ID, "releases.oxygen_permille", "the free volume of the room or the gas that can escape is not stated", "site.room, and volume of the cylinder")
		return
	}
	gas, ok := b.content(r)
	if !ok {
		b.unknown(out.ID, "releases.oxygen_permille", "how much gas the cylinder holds is not known for this gas", "the gas content of the cylinder")
		return
	}
	out.OxygenPermille = b.keep(units.RoundDown(max(measure.SuddenRelease(b.l.Sheet.Site.Room.V, gas), 0) * 10))
}

// denser is how much more gas than an ideal one a cylinder of a permanent gas may hold: argon and methane of 200 bar about
// a tenth to a fifth (handbook figures, recalled).
const denser = 1.2

// content is the gas of a full cylinder at 15 °C and 1 atm: nitrogen by its equation, other gases that stay gases an ideal
// gas with room for what they pack closer. A liquefied gas is not known by its pressure.
func (b *builder) content(r *resolve.Run) (units.Volume, bool) {
	s := r.Sheet.Source
	full := s.Cylinder.V.Absolute(b.l.Ambient)
	if onlyNitrogen(r) {
		mass, err := measure.NitrogenMass(full, fillTemperature, s.Volume.V)
		return measure.NormalVolume(mass), err == nil
	}
	for _, f := range r.Fluids {
		k := f.Props.Constants.CriticalTemperatureK
		if f.Cat.Form != "compressed-gas" || k == nil || k.Value > permanentK {
			return 0, false
		}
	}
	return units.Volume(float64(s.Volume.V) * float64(full) / float64(units.StandardAtmosphere) * denser), true
}

// shock is the factor on a force that comes at once: 2, as in relief-pipe worksheets to API 520-2 (published).
const shock = 2

func (b *builder) whip(r *resolve.Run, i int, out *Release) {
	p := r.Parts[i]
	out.Restrained = out.Restrained && p.Sheet.Restraint.Set
	if p.Sheet.Restraint.Set {
		n := b.keep(units.RoundDown(float64(p.Sheet.Restraint.V)))
		if !out.RestraintN.Known || n.V < out.RestraintN.V {
			out.RestraintN = n
		}
	}
	d, ok := bore(p)
	top, known := steady(b.at(r, i))
	if !ok || !known {
		return
	}
	force := measure.GasReaction(top.Absolute(b.l.Ambient), b.l.Ambient, measure.Pipe{Bore: d}.Area(), 1.4) * shock
	n := b.keep(units.RoundUp(float64(force)))
	if !out.WhipN.Known || n.V > out.WhipN.V {
		out.WhipN, out.BoreMM, out.Pressure = n, b.keep(units.MillimetreUp(d)), b.kpaUp(top)
	}
}
