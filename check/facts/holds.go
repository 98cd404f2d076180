package facts

import (
	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

// anyTemperature stands in where only what a part is made of is asked for, not what it holds.
const anyTemperature = units.Temperature(293.15)

// partStrengths are the things of one part that hold pressure, and the inlet of a regulator, which has a figure of its own.
func (b *builder) partStrengths(r *resolve.Run, i int) (out []Strength) {
	p, t := r.Parts[i], anyTemperature
	for _, it := range b.partItems(p, &t) {
		s := Strength{ID: it.id, Part: it.part, What: it.what, Why: it.why, Ask: it.ask, Places: []Place{part(r, i)}, Hot: b.hottest(r)}
		pushes := b.at(r, i)
		if it.behind {
			pushes, s.Places[0].From = b.behind(r, i), 2*i+1
		} else if it.what == "end" {
			s.Places[0].To = 2 * i
		}
		s.Pushes = pushed(pushes)
		out = append(out, b.filled(s, it, b.partHolds(p, it, &s)))
	}
	if p.Sheet.Kind.V == "regulator" {
		out = append(out, b.inletStrength(r, i))
	}
	return out
}

// filled takes the tables as what the thing holds; a thing without any holds its one figure.
func (b *builder) filled(s Strength, it item, holds []Hold) Strength {
	switch {
	case s.Why != "":
		s.Holds = nil
	case holds != nil:
		s.Holds = holds
	default:
		s.Holds = []Hold{{Flat: it.have}}
	}
	return s
}

// partHolds are the tables of a hose or an end. A reason that only tells of one temperature is taken back.
func (b *builder) partHolds(p *resolve.Part, it item, s *Strength) []Hold {
	if it.what == "hose" {
		var rated units.GaugePressure
		rated, s.Why, s.Ask = b.hoseRating(p, nil)
		return b.hoseHolds(p, rated, s)
	}
	for _, e := range []*resolve.End{p.Inlet, p.Outlet} {
		if it.what == "end" && it.id == e.Owner+" "+e.Name {
			return endHolds(e, s)
		}
	}
	return nil
}

func (b *builder) hoseHolds(p *resolve.Part, rated units.GaugePressure, s *Strength) []Hold {
	var out []Hold
	for _, c := range derating(p) {
		if len(c.T) == 0 {
			s.Why, s.Ask = p.Hose.ID+" has no factor for a layer of "+p.ID+", or the layer is not stated", "layers of "+p.ID
			return nil
		}
		out = append(out, Hold{Table: &c, Scale: float64(rated)})
	}
	if len(out) == 0 {
		return []Hold{{Flat: rated}}
	}
	return append(out, Hold{Flat: rated}) // a factor is never above one
}

// endHolds are the rating rows of an end. One without rows keeps the reason it came with.
func endHolds(e *resolve.End, s *Strength) (out []Hold) {
	for _, row := range endRows(e) {
		c := endCurve(e.Family, row)
		out, s.Why, s.Ask = append(out, Hold{Table: &c, Scale: 1}), "", ""
	}
	return out
}

func (b *builder) inletStrength(r *resolve.Run, i int) Strength {
	p := r.Parts[i]
	s := Strength{ID: p.ID + " inlet rating", Part: p.ID, What: "inlet", Places: []Place{{r.Key, 2 * i, 2 * i}}, Pushes: pushed(b.at(r, i)), Hot: b.hottest(r)}
	if !p.Sheet.InletRated.Set {
		s.Why, s.Ask = "the rated inlet pressure of "+p.ID+" is not stated", "inlet_rated of "+p.ID
		return s
	}
	s.Holds = []Hold{{Flat: p.Sheet.InletRated.V.Gauge(b.l.Ambient)}}
	return s
}

// jointStrengths are the ends and seals of a joint that no part is judged with.
func (b *builder) jointStrengths(r *resolve.Run, n int) (out []Strength) {
	j, t := r.Joints[n], anyTemperature
	s := Strength{Places: []Place{joint(r, n)}, Pushes: pushed(b.atJoint(r, n)), Hot: b.hottest(r)}
	for _, e := range []*resolve.End{j.A, j.B} {
		it, ok := b.looseEnd(r, e, &t)
		if !ok {
			continue
		}
		end := s
		end.ID, end.Part, end.What, end.Why, end.Ask = it.id, it.part, it.what, it.why, it.ask
		var holds []Hold
		if e == r.SourceEnd && r.Sheet.Source.Cylinder.Set {
			end.Pushes = asFilled(b.onEnd(r, e, nil)) // an outlet number has one figure
		} else {
			holds = endHolds(e, &end)
		}
		out = append(out, b.filled(end, it, holds))
	}
	for _, seal := range j.Seals {
		it, ok := b.sealItem(seal, &t)
		if !ok {
			continue
		}
		x := s
		x.ID, x.Part, x.What, x.Why, x.Ask = it.id, it.part, it.what, it.why, it.ask
		out = append(out, b.filled(x, it, b.sealHolds(seal)))
	}
	return out
}

// asFilled names the push on a cylinder outlet, which is not that of the hot day.
func asFilled(pushes []push) []Push {
	out := pushed(pushes)
	for i := range out {
		out[i].Name = "as-filled"
	}
	return out
}

// sealHolds are the limits of the kind, lowered by a stated rating; one with a document speaks alone.
func (b *builder) sealHolds(s *resolve.Seal) (out []Hold) {
	if s.Sheet.Rated.Set {
		out = append(out, Hold{Flat: s.Sheet.Rated.V.Gauge(b.l.Ambient)})
		if s.Sheet.Evidence.Set {
			return out
		}
	}
	if s.Kind == nil || s.Kind.HighestBar == nil {
		return out
	}
	out = append(out, Hold{Flat: units.GaugePressure(s.Kind.HighestBar.Value * 1e5)})
	if pt := s.Kind.PressTimesT; pt != nil {
		out = append(out, Hold{PerCelsius: pt.Value * 1e5})
	}
	return out
}

// vesselStrength is a closed vessel, at the near end of every run out of it and at the far end of every run into it.
func (b *builder) vesselStrength(v *resolve.Vessel) []Strength {
	pushes := b.vesselPushes(v)
	if v.Sheet.Vent.V == "open" || len(pushes) == 0 {
		return nil
	}
	s := Strength{ID: v.Key + " vessel", Part: v.Key, What: "vessel", Pushes: pushed(pushes), Hot: b.vesselHottest(v)}
	for _, r := range b.l.Runs {
		switch v {
		case r.Source:
			s.Places = append(s.Places, Place{r.Key, 0, 0})
		case r.Target:
			s.Places = append(s.Places, Place{r.Key, 2 * len(r.Parts), 2 * len(r.Parts)})
		}
	}
	if !v.Sheet.Rated.Set {
		s.Why, s.Ask = "the working pressure of "+v.Key+" is not stated", "vessels."+v.Key+".rated, from its nameplate"
		return []Strength{s}
	}
	s.Holds = []Hold{{Flat: v.Sheet.Rated.V.Gauge(b.l.Ambient)}}
	return []Strength{s}
}

// Known says what the thing holds at t, and whether that is known there.
func (s Strength) Known(t units.Temperature) (units.GaugePressure, bool) {
	if s.Why != "" || len(s.Holds) == 0 {
		return 0, false
	}
	low, first := units.GaugePressure(0), true
	for _, h := range s.Holds {
		p, ok := h.at(t)
		if !ok {
			return 0, false
		}
		if first || p < low {
			low, first = p, false
		}
	}
	return low, true
}

// at is what the one bound allows; a bound over °C allows anything at and below 0 °C.
func (h Hold) at(t units.Temperature) (units.GaugePressure, bool) {
	switch {
	case h.Table != nil:
		y, err := h.Table.At(t)
		return units.GaugePressure(y * h.Scale), err == nil
	case h.PerCelsius > 0 && t.Celsius() <= 0:
		return units.GaugePressure(1e12), true
	case h.PerCelsius > 0:
		return units.GaugePressure(h.PerCelsius / t.Celsius()), true
	}
	return h.Flat, true
}
