package facts

import (
	"slices"

	"lineworthy/check/measure"
	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

// Steam is the steam of one run: what the run is for, or what cleans it.
type Steam struct {
	ID          string `json:"id"` // run and fluid
	Run         string `json:"run"`
	Cleaning    bool   `json:"cleaning"` // the run is there for a product: it is steamed out
	KPa         Int    `json:"pressure_kpa,omitzero" ask:"fluids.*.vapour_pressure: the highest pressure of the steam supply"`
	SaturatedCK Int    `json:"saturated_ck,omitzero" ask:"the highest pressure of the steam supply"`
	StatedCK    Int    `json:"stated_ck,omitzero" ask:"fluids.*.temperature.highest: how hot the steam gets"`
}

func isSteam(f *resolve.Fluid) bool { return f.Cat.ID == "steam" || f.Role == "steam" }

// cleaning is the steam of a run that is there for a product, nil for none. Steam that is the product, or has only a gas
// beside it, is what the run is used for.
func cleaning(r *resolve.Run) *resolve.Fluid {
	i := slices.IndexFunc(r.Fluids, func(f *resolve.Fluid) bool { return isSteam(f) && f.Role != "product" })
	if i < 0 || !slices.ContainsFunc(r.Fluids, func(f *resolve.Fluid) bool { return !isSteam(f) && f.Role == "product" }) {
		return nil
	}
	return r.Fluids[i]
}

func (b *builder) steams() {
	b.f.Steams = []Steam{}
	for _, r := range b.l.Runs {
		for _, f := range r.Fluids {
			if isSteam(f) {
				b.f.Steams = append(b.f.Steams, b.steam(r, f))
			}
		}
	}
}

func (b *builder) steam(r *resolve.Run, f *resolve.Fluid) Steam {
	s := Steam{ID: f.Key + " in " + r.Key, Run: r.Key, Cleaning: cleaning(r) != nil, StatedCK: b.cold(f.Hottest)}
	p := b.steamPush(r, f)
	if !p.known {
		b.unknown(s.ID, "steams.pressure_kpa", p.why, p.ask)
		b.unknown(s.ID, "steams.saturated_ck", p.why, p.ask)
		return s
	}
	s.KPa = b.kpaUp(p.p)
	if t, err := measure.SteamTemperature(p.p.Absolute(b.l.Ambient)); err == nil {
		s.SaturatedCK = b.keep(units.CentikelvinDown(t)) // both down: a rise is judged against what the sheet says
	} else {
		b.unknown(s.ID, "steams.saturated_ck", err.Error(), p.ask)
	}
	return s
}

// steamPush is how hard the steam pushes: as its supply does where the sheet says so, else as saturated steam of its
// highest temperature.
func (b *builder) steamPush(r *resolve.Run, f *resolve.Fluid) push {
	p := push{name: "steam-out", cause: "saturated steam from its supply", ask: "fluids." + f.Key + ".vapour_pressure: the highest pressure of the steam supply"}
	src := &r.Sheet.Source
	switch {
	case f.Sheet != nil && f.Sheet.Vapour.Set:
		b.rests(f.Key+" vapour pressure", "pressure of the supply of "+f.Cat.Name+", "+f.Sheet.Vapour.Text, stated(f.Sheet.Evidence.V), f.Key)
		p.p, p.known = f.Sheet.Vapour.V.Gauge(b.l.Ambient), true
	case cleaning(r) == nil && src.Supply.Set:
		p.p, p.known = b.steamBehind(r), true
	case f.Sheet == nil || !f.Sheet.Temperature.Highest.Set:
		p.why = "neither the pressure of the steam nor how hot it gets is stated"
	default:
		at, err := measure.SteamPressure(*f.Hottest)
		switch {
		case err != nil:
			p.why = err.Error()
		case at < b.l.Ambient:
			p.why = "the steam is stated no hotter than " + f.Sheet.Temperature.Highest.Text + ", which is not steam yet"
		}
		p.p, p.known = at.Gauge(b.l.Ambient), p.why == ""
	}
	return p
}

// steamBehind is the steam as it is used: behind the regulators of its run, at duty.
func (b *builder) steamBehind(r *resolve.Run) units.GaugePressure {
	if p, ok := named(b.passage(r).end, "duty"); ok {
		return p
	}
	return r.Sheet.Source.Supply.V.Gauge(b.l.Ambient)
}

// steamed is how hot the run gets when it is steamed out: as stated, or as the supply makes the steam.
func (b *builder) steamed(p push, f *resolve.Fluid) *units.Temperature {
	top := f.Hottest
	if t, err := measure.SteamTemperature(p.p.Absolute(b.l.Ambient)); p.known && err == nil {
		top = higher(top, &t)
	}
	return top
}

// steamOut judges all that holds pressure in a run against the steam that cleans it, at the heat of the steam, and the
// closed vessel it is blown into.
func (b *builder) steamOut(r *resolve.Run) {
	f := cleaning(r)
	if f == nil {
		return
	}
	p := b.steamPush(r, f)
	top := b.steamed(p, f)
	for _, it := range b.runItems(r, top) {
		b.holdEvent(&it, it.id+" in "+p.name, p.name, []push{p}, top)
	}
	if v := r.Target; v != nil && v.Sheet.Vent.V != "open" {
		it := b.shell(v)
		b.holdEvent(&it, it.id+" in "+p.name+" of "+r.Key, p.name, []push{b.steamInto(v, p)}, top)
	}
}

// steamInto is the steam as far as the relief device of the vessel lets it rise.
func (b *builder) steamInto(v *resolve.Vessel, p push) push {
	s := v.Sheet.Relief
	if s == nil || !s.Set.Set {
		return p
	}
	if full := units.GaugePressure(float64(s.Set.V.Gauge(b.l.Ambient)) * overpressure); !p.known || p.p > full {
		p.p, p.known, p.cause = full, true, p.cause+"; the relief device of "+v.Key+" opens"
	}
	return p
}

// steamLimits are the temperatures a vessel is made for, where steam is blown into it.
func (b *builder) steamLimits(r *resolve.Run) {
	if v := r.Target; v != nil && slices.ContainsFunc(r.Fluids, isSteam) {
		b.limit(r, v.Key, "vessel", ptr(&v.Sheet.Lowest), ptr(&v.Sheet.Highest), false, "vessels."+v.Key+".lowest and highest, from its plate")
	}
}

// runItems is all that holds pressure along the run at the given heat.
func (b *builder) runItems(r *resolve.Run, top *units.Temperature) (out []item) {
	for _, p := range r.Parts {
		out = append(out, b.partItems(p, top)...)
	}
	for _, j := range r.Joints {
		for _, e := range []*resolve.End{j.A, j.B} {
			if it, ok := b.looseEnd(r, e, top); ok && it.what != "outlet class" {
				out = append(out, it)
			}
		}
		for _, s := range j.Seals {
			if it, ok := b.sealItem(s, top); ok {
				out = append(out, it)
			}
		}
	}
	return out
}
