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
	if pad == nil || !r.Sheet.Quantity.Set {
		return
	}
	set, ok := named(b.passage(pad).end, "duty")
	if !ok {
		return
	}
	n, ok := PadCylinders(pad, PadUse{At: set.Absolute(b.l.Ambient), Space: r.Sheet.Quantity.V}, b.l.Ambient)
	if !ok {
		return
	}
	f.CylindersSaid = true
	f.CylindersPermille = b.keep(units.RoundUp(n * 1e3))
}

// PadUse is the gas that takes a space: at its pressure, less what stood there before (0 when the space is new).
type PadUse struct {
	At, Before units.AbsolutePressure
	Space      units.Volume
}

// Mass is the nitrogen for it at 15 °C. Errors as measure.NitrogenZ.
func (u PadUse) Mass() (units.Mass, error) {
	mass, err := measure.PadMass(u.At, fillTemperature, u.Space)
	if err != nil || u.Before == 0 {
		return mass, err
	}
	there, err := measure.PadMass(u.Before, fillTemperature, u.Space)
	return mass - there, err
}

// Free is what the gas measures at 1 atm and 15 °C: nitrogen and air by the equation of nitrogen, others as ideal gases.
// It is false for vapours and outside the range of the equation.
func (u PadUse) Free(pad *resolve.Run) (units.Volume, bool) {
	if onlyNitrogen(pad) {
		mass, err := u.Mass()
		return measure.NormalVolume(mass), err == nil
	}
	for _, f := range pad.Fluids {
		if f.Cat.Form != "compressed-gas" {
			return 0, false
		}
	}
	return units.Volume(float64(u.At-u.Before) / float64(units.StandardAtmosphere) * float64(u.Space)), true
}

// PadCylinders is how many of the run's cylinders it takes; false when the run does not start from a cylinder of stated
// volume with nitrogen or air, or its pressure leaves nothing to use.
func PadCylinders(pad *resolve.Run, u PadUse, ambient units.AbsolutePressure) (float64, bool) {
	if !pad.Sheet.Source.Cylinder.Set || !pad.Sheet.Source.Volume.Set || !onlyNitrogen(pad) {
		return 0, false
	}
	mass, err := u.Mass()
	if err != nil {
		return 0, false
	}
	c := measure.Cylinder{Volume: pad.Sheet.Source.Volume.V, Full: pad.Sheet.Source.Cylinder.V.Absolute(ambient), Reserve: reserve}
	n, err := measure.CylinderCount(mass, c, u.At, fillTemperature)
	return n, err == nil
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
