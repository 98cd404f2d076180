package check

import (
	"context"
	"fmt"
	"math"
	"slices"
	"sort"

	"lineworthy/check/report"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

// knob is one number of the sheet that can be turned, and how far it is sensible to turn it.
type knob struct {
	name     string
	now      float64
	from, to float64
	set      func(float64)
	show     func(float64) string
}

// Flips says, for each number of the sheet, the nearest value that changes the answer, nearest first. Each side is looked
// through in steps and the crossing found by a fixed count of halvings, so that equal sheets give equal bytes. The sheet
// is changed while it works and is as before when it returns; it must not be shared meanwhile.
func (e *Engine) Flips(ctx context.Context, s *sheet.Line, was report.Word) ([]report.Flip, error) {
	out := []report.Flip{}
	for _, k := range knobs(s, systemOf(s)) {
		f, ok, err := e.flip(ctx, s, k, was)
		if err != nil {
			return nil, err
		}
		if ok {
			out = append(out, f)
		}
	}
	sort.SliceStable(out, func(i, j int) bool { return abs(out[i].Permille) < abs(out[j].Permille) })
	return out, nil
}

func (e *Engine) flip(ctx context.Context, s *sheet.Line, k knob, was report.Word) (report.Flip, bool, error) {
	defer k.set(k.now)
	var fault error
	same := func(x float64) float64 {
		k.set(x)
		w, err := e.word(ctx, s)
		if err != nil {
			fault = err
		}
		if w == was || err != nil {
			return 1
		}
		return -1
	}
	best, found := 0.0, false
	for _, end := range []float64{k.from, k.to} {
		at, ok := nearestFlip(k.now, end, same)
		if ok && (!found || math.Abs(at-k.now) < math.Abs(best-k.now)) {
			best, found = at, true
		}
	}
	if fault != nil || !found {
		return report.Flip{}, false, fault
	}
	k.set(best)
	to, err := e.word(ctx, s)
	now, at := k.show(k.now), k.show(best)
	if now == at {
		at = "just past it"
	}
	return report.Flip{Input: k.name, Now: now, At: at, Permille: int64(math.Round((best - k.now) / k.span() * 1000)), Word: to}, err == nil, err
}

// span is what a change is measured against: the value itself, or for a temperature, which has no zero of its own, the
// range it may be turned through.
func (k knob) span() float64 {
	if k.now > 0 && k.from >= 0 && k.now < 2*(k.to-k.from) {
		return k.now
	}
	return k.to - k.from
}

// steps are how finely each side is looked through before the halving.
const steps = 16

func nearestFlip(now, end float64, same func(float64) float64) (float64, bool) {
	last := now
	for i := 1; i <= steps; i++ {
		x := now + (end-now)*float64(i)/steps
		if same(x) < 0 {
			return halve(last, x, same), true
		}
		last = x
	}
	return 0, false
}

// halvings take a step down to a millionth of a millionth of it.
const halvings = 40

// halve closes in on the crossing and returns its far side, where the answer has changed.
func halve(near, far float64, same func(float64) float64) float64 {
	for range halvings {
		mid := near + (far-near)/2
		if same(mid) < 0 {
			far = mid
		} else {
			near = mid
		}
	}
	return far
}

func knobs(s *sheet.Line, sys units.System) []knob {
	var out []knob
	temperature := func(name string, o *sheet.Of[units.Temperature]) {
		if o.Set {
			now := float64(o.V)
			out = append(out, knob{name, now, now - 60, now + 60, func(x float64) { o.V = units.Temperature(x) },
				func(x float64) string { return sys.Degrees(units.Temperature(x)) }})
		}
	}
	temperature("site.highest", &s.Site.Highest)
	for i := range s.Fluids {
		temperature("fluids."+s.Fluids[i].Key+".temperature.highest", &s.Fluids[i].V.Temperature.Highest)
	}
	for i := range s.Vessels {
		out = append(out, vesselKnobs(&s.Vessels[i])...)
	}
	for i := range s.Runs {
		out = append(out, runKnobs(&s.Runs[i], sys)...)
	}
	return slices.DeleteFunc(out, func(k knob) bool { return k.from == k.to })
}

func vesselKnobs(v *sheet.Named[sheet.Vessel]) []knob {
	var out []knob
	if f := &v.V.Filled; f.Set {
		out = append(out, knob{"vessels." + v.Key + ".filled", float64(f.V), 0.01, 0.99,
			func(x float64) { f.V = units.Fraction(x) }, func(x float64) string { return fmt.Sprintf("%.1f %%", x*100) }})
	}
	if v.V.Relief != nil && v.V.Relief.Area.Set {
		out = append(out, areaKnob("vessels."+v.Key+".relief.area", &v.V.Relief.Area))
	}
	return out
}

func areaKnob(name string, a *sheet.Of[units.Area]) knob {
	now := float64(a.V)
	return knob{name, now, now / 20, now * 5, func(x float64) { a.V = units.Area(x) },
		func(x float64) string { return fmt.Sprintf("%.3g mm2", x*1e6) }}
}

func runKnobs(r *sheet.Named[sheet.Run], sys units.System) []knob {
	var out []knob
	pressure := func(name string, o *sheet.Of[units.Pressure]) {
		if o.Set && o.V.Basis == units.GaugeBasis {
			now := o.V.Pascals
			out = append(out, knob{name, now, now / 20, now * 5, func(x float64) { o.V.Pascals = x },
				func(x float64) string { return sys.Gauge(units.GaugePressure(x)) }})
		}
	}
	path := "runs." + r.Key
	pressure(path+".source.cylinder", &r.V.Source.Cylinder)
	pressure(path+".source.supply", &r.V.Source.Supply)
	if f := &r.V.Flow; f.Set {
		now := float64(f.V)
		out = append(out, knob{path + ".flow", now, now / 20, now * 5, func(x float64) { f.V = units.VolumeFlow(x) },
			func(x float64) string { return fmt.Sprintf("%.3g m3/h", x*3600) }})
	}
	for i := range r.V.Parts {
		p := &r.V.Parts[i]
		pressure("set of "+p.ID.V, &p.Set)
		pressure("shutoff of "+p.ID.V, &p.Shutoff)
		pressure("rated of "+p.ID.V, &p.Rated)
		if p.Area.Set {
			out = append(out, areaKnob("area of "+p.ID.V, &p.Area))
		}
	}
	return out
}
