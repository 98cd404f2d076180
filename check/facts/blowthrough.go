package facts

import (
	"math"

	"lineworthy/check/measure"
	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

// blowThrough is the gas that comes through a liquid run once its source has been pushed empty. A destination that holds
// the pressure of the gas, or is closed and so held against it anyway, has nothing to fear from it.
func (b *builder) blowThrough(r *resolve.Run, f *Flow) {
	pad, v := b.padOf(r), r.Target
	if pad == nil || v == nil || v.Sheet.Vent.V != "open" {
		return
	}
	drive, known := steady(b.passage(pad).end)
	if rated := v.Sheet.Rated; known && rated.Set && rated.V.Gauge(b.l.Ambient) >= drive {
		return
	}
	f.GasFollows = true
	if c := v.Sheet.VentCapacity; c.Set {
		f.VentSaid, f.VentMLPS = true, b.keep(units.RoundDown(float64(c.V)*1e6))
		b.rests(v.Key+" vent", "what the vent of "+v.Key+" passes, "+c.Text, stated(v.Sheet.Evidence.V), v.Key)
	}
	q, why := b.following(r, pad, drive)
	if why == "" && !known {
		why = "the pressure of " + pad.Key + " is not known"
	}
	if why != "" {
		b.unknown(r.Key, "flows.gas_follows_mlps", why, "size of every part of "+r.Key+", and the set pressure of "+pad.Key)
		return
	}
	f.FollowsMLPS = b.keep(units.RoundUp(float64(q) * 1e6))
}

// rough is a Reynolds number so high that friction is at its least (practice): the flow of gas must not be understated.
const rough = 1e7

// following is the flow of free gas through the emptied run into the air, or why it is not known. Every resistance counts
// as in the narrowest bore, by the fourth power of the bores.
func (b *builder) following(r, pad *resolve.Run, drive units.GaugePressure) (units.VolumeFlow, string) {
	if len(r.Parts) == 0 {
		return 0, "no part of the run is on the sheet"
	}
	small := units.Length(math.Inf(1))
	for _, p := range r.Parts {
		if p.Branch {
			continue
		}
		d, ok := bore(p)
		if !ok {
			return 0, "the size of " + p.ID + " is not stated"
		}
		small = min(small, d)
	}
	m := math.Inf(1) // of several gases the lightest brings most
	for _, x := range pad.Fluids {
		if m = min(m, molar(x.Props)); m == 0 {
			return 0, "the molar mass of " + x.Cat.Name + " is not known"
		}
	}
	g := measure.GasPipe{Bore: small, Resistance: resistance(r, small)}
	return measure.BlowThrough(g, drive.Absolute(b.l.Ambient), b.l.Ambient, fillTemperature, m), ""
}

func resistance(r *resolve.Run, small units.Length) (sum float64) {
	for _, p := range r.Parts {
		if p.Branch {
			continue
		}
		d, _ := bore(p)
		x := pipe(p, d)
		k := x.Losses + x.Friction*measure.Friction(rough, float64(x.Roughness/d))*float64(x.Length/d)
		sum += k * math.Pow(float64(small/d), 4)
	}
	return sum
}
