package inspect

import (
	"slices"

	"lineworthy/check/facts"
	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

// LeakTest is the tightness test of one run before product enters it. It proves no strength.
type LeakTest struct {
	Run       string
	Pressure  string // empty when none can be given; Why says so
	Fluid     string
	How       string
	Why       string
	kpa       int64  // planned; 0 when none can be given
	most      int64  // lowest of ratings and relief; 0 when not known
	limitText string // most as printed
	fuel      bool   // something on the line can burn
	never     bool   // never air or oxygen
	inert     bool   // with an inert gas alone
	wet       bool   // with a liquid alone
}

// ofRelief keeps a test below the point where a relief device begins to simmer (practice, no source).
const ofRelief = 0.9

// operating are the cases a sound line sees; a failed regulator or a vessel shut in and warmed is none of them.
var operating = []string{"duty", "vapour-pressure", "pump-shut-in"}

const (
	minutesHeld = "Raise it in steps, hold it 10 minutes, and go over every joint, with leak fluid where it is gas (practice, no source); nobody tightens anything or feels for a leak with a hand under pressure"
	forOxygen   = "; take leak fluid made for oxygen, and let none of it in"
)

func leakTest(r *resolve.Run, f *facts.Facts, shown Shown) LeakTest {
	t := LeakTest{Run: r.Key, fuel: f.Line.Flammable}
	behind := regulated(r)
	want, known := highest(r, f, behind)
	low, item, rated := lowest(r, f, behind)
	switch {
	case !known:
		t.Why = "what the source brings is not known"
	case !rated && item == "":
		t.Why = "no rating is known in this stretch"
	case !rated:
		t.Why = "the rating of " + item + " is not known"
	}
	if t.Why != "" {
		t.choose(r, t.fuel, 0)
		t.How = "Neither test nor use the line before that is known"
		return t
	}
	t.choose(r, t.fuel, want)
	t.limit(r, want, low, item, shown)
	t.How = minutesHeld + apart(r, t.kpa, shown)
	if t.Fluid == oilFree {
		t.How += forOxygen
	}
	if behind >= 0 {
		id := r.Parts[behind].ID
		t.How += "; behind " + id + ", with the source shut. The joints before " + id + " are gone over when its source is opened, slowly and with " + id + " backed off"
	}
	return t
}

// limit keeps the test below every rating, below where a relief device opens, and below what a vessel bears that stands under it.
func (t *LeakTest) limit(r *resolve.Run, want, low int64, item string, shown Shown) {
	t.Why = "the highest pressure in operation"
	if want > low {
		want, t.Why = low, "kept at the lowest of the ratings, "+item+": operation goes beyond it, and the line must not be used as it is"
	}
	if set, id := opens(r, regulated(r)); id != "" && set < low {
		low, item = set, "nine tenths of the set pressure of "+id
		if want > low {
			want, t.Why = low, "kept where "+id+" stays shut; operation comes nearer to its set pressure, so go over the joints again at the first use"
		}
	}
	if most, under := vesselUnder(r, want); under && most < low {
		low, item = most, r.Target.Key
	}
	t.kpa, t.Pressure = shownAs(want, shown)
	t.most, t.limitText = shownAs(low, shown)
	t.Why += "; at most " + t.limitText + " (" + item + ")"
}

// shownAs is the pressure as the list has it, and what these digits mean: a test at exactly that is as planned.
func shownAs(kpa int64, shown Shown) (int64, string) {
	text := shown.Pressure(units.GaugePressure(kpa * 1000))
	if p, _, err := units.ParseGauge(text); err == nil {
		kpa = int64(float64(p)/1000 + 0.5)
	}
	return kpa, text
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
	return least, item, item != ""
}

// opens is nine tenths of the lowest set pressure of a relief device of the stretch, and the device.
func opens(r *resolve.Run, behind int) (least int64, id string) {
	for i, p := range r.Parts {
		if p.Sheet.Kind.V != "relief" || i <= behind {
			continue
		}
		if set, known := takes(p.Sheet.Set, ofRelief); known && (id == "" || set < least) {
			least, id = set, p.ID
		}
	}
	return least, id
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
