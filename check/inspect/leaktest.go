package inspect

import (
	"slices"

	"lineworthy/check/facts"
	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

// LeakTest is the tightness test of one run before product enters it. It proves no strength.
type LeakTest struct {
	Run      string
	Pressure string // empty when none can be given; Why says so
	Fluid    string
	How      string
	Why      string
	kpa      int64 // planned; 0 when none can be given
	most     int64 // lowest rating; 0 when not known
	fuel     bool
}

// ofRelief keeps a test below the point where a relief device begins to simmer (practice, no source).
const ofRelief = 0.9

// operating are the cases a sound line sees; a failed regulator or a vessel shut in and warmed is none of them.
var operating = []string{"duty", "vapour-pressure", "pump-shut-in"}

const minutesHeld = "Raise it in steps, hold it 10 minutes, and go over every joint with leak fluid (practice, no source); "

func leakTest(r *resolve.Run, f *facts.Facts, shown Shown) LeakTest {
	t := LeakTest{Run: r.Key, Fluid: testFluid(r)}
	t.How = minutesHeld + "nobody tightens anything under pressure"
	if regulated(r) >= 0 {
		t.How += "; behind the regulator, with the source shut"
	}
	for _, x := range r.Fluids {
		t.fuel = t.fuel || resolve.Yes(x.Cat.Hazards.Flammable)
	}
	behind := regulated(r)
	want, known := highest(r, f, behind)
	low, item, rated := lowest(r, f, behind)
	t.Why = "the highest pressure in operation"
	switch {
	case !known:
		t.Why = "no pressure can be given: what the source brings is not known"
		return t
	case !rated && item == "":
		t.Why = "no pressure can be given: no rating is known in this stretch"
		return t
	case !rated:
		t.Why = "no pressure can be given: the rating of " + item + " is not known"
		return t
	case want > low:
		want, t.Why = low, "kept at the lowest of the ratings and set pressures, "+item+": operation goes beyond it, and the line must not be used as it is"
	}
	t.kpa, t.most = want, low
	t.Pressure = shown.Pressure(units.GaugePressure(want * 1000))
	t.How += apart(r, want, shown)
	t.Why += "; at most " + shown.Pressure(units.GaugePressure(low*1000)) + " (" + item + ")"
	return t
}

// regulated is the last regulator of the run: the test is behind it.
func regulated(r *resolve.Run) (at int) {
	at = -1
	for i, p := range r.Parts {
		if p.Sheet.Kind.V == "regulator" {
			at = i
		}
	}
	return at
}

func highest(r *resolve.Run, f *facts.Facts, behind int) (most int64, known bool) {
	for _, c := range f.Cases {
		if c.Run != r.Key || !slices.Contains(operating, c.Case) || !within(r, c.Part, behind) {
			continue
		}
		if !c.KPa.Known {
			return 0, false
		}
		most, known = max(most, c.KPa.V), true
	}
	return most, known && most > 0
}

// within says whether a case that begins at the part stands in the stretch behind the regulator.
func within(r *resolve.Run, part string, behind int) bool {
	if behind < 0 {
		return true
	}
	i := slices.IndexFunc(r.Parts, func(p *resolve.Part) bool { return p.ID == part })
	return i > behind // the facts name the first part that the regulated pressure reaches
}

// lowest is the least that anything in the stretch is rated for; the name of what is not known when it is not.
func lowest(r *resolve.Run, f *facts.Facts, behind int) (least int64, item string, known bool) {
	for _, c := range f.Capacities {
		if !slices.Contains([]string{"hose", "body", "end", "seal", "gauge"}, c.What) || !stretch(r, c.Part, behind) {
			continue
		}
		if !c.RatedKPa.Known {
			return 0, c.ID, false
		}
		if item == "" || c.RatedKPa.V < least {
			least, item = c.RatedKPa.V, c.ID
		}
	}
	for i, p := range r.Parts {
		if p.Sheet.Kind.V != "relief" || !p.Sheet.Set.Set || i <= behind || item == "" {
			continue
		}
		if set := int64(p.Sheet.Set.V.Pascals / 1000 * ofRelief); set < least {
			least, item = set, "nine tenths of the set pressure of "+p.ID
		}
	}
	return least, item, item != ""
}

// stretch says whether the owner of a capacity, a part or the seal of a joint, lies in the stretch under test.
func stretch(r *resolve.Run, owner string, behind int) bool {
	for i, p := range r.Parts {
		if p.ID == owner {
			return i > behind || behind < 0
		}
	}
	for _, j := range r.Joints {
		for _, s := range j.Seals {
			if s.ID == owner {
				return behind < 0 || j.A.Part != nil && j.A.Part.Index >= behind
			}
		}
	}
	return false
}
