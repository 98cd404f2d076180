package sheet

import (
	"fmt"

	"lineworthy/check/units"
)

// bounds checks values against each other where no line can be as written.
func (r *reader) bounds() {
	l := r.line
	r.day(l.AsOf)
	r.ordered("site", l.Site.Lowest, Of[units.Temperature]{}, l.Site.Highest)
	for _, fluid := range l.Fluids {
		t := fluid.V.Temperature
		r.ordered("fluids."+fluid.Key+".temperature", t.Lowest, t.Normal, t.Highest)
	}
	for _, vessel := range l.Vessels {
		path := "vessels." + vessel.Key
		r.ordered(path, vessel.V.Lowest, Of[units.Temperature]{}, vessel.V.Highest)
		if vessel.V.Relief != nil {
			r.coefficient(path+".relief.kdr", vessel.V.Relief.Kdr)
		}
	}
	for _, run := range l.Runs {
		for i, part := range run.V.Parts {
			r.part(fmt.Sprintf("runs.%s.parts[%d]", run.Key, i), part)
		}
	}
}

func (r *reader) part(path string, p Part) {
	r.ordered(path, p.Lowest, Of[units.Temperature]{}, p.Highest)
	r.coefficient(path+".kdr", p.Kdr)
	if p.Stages.Set && (p.Stages.V < 1 || p.Stages.V > mostStages) {
		r.fault(p.Stages.Pos, path+".stages", fmt.Sprintf("%s is outside 1 to %d", quote(p.Stages.Text), mostStages), "count the stages on the regulator's plate")
	}
}

// mostStages is one more than regulators are made with (practice, no source).
const mostStages = 3

// The span in which the date of a job is no slip of the pen (practice, no source).
const (
	earliestJob = 1990
	latestJob   = 2100
)

// day wants a full date within living memory: due dates are counted from it to the day.
func (r *reader) day(d Of[units.Date]) {
	if !d.Set {
		return
	}
	text := d.V.String()
	if d.V.MonthOnly {
		r.fault(d.Pos, "as_of", quote(d.Text)+" does not say the day", "write it like "+text+"-25")
		return
	}
	if year := text[:4]; year < fmt.Sprint(earliestJob) || year > fmt.Sprint(latestJob) {
		r.fault(d.Pos, "as_of", fmt.Sprintf("%s is outside %d to %d", quote(d.Text), earliestJob, latestJob), "check the year")
	}
}

// ordered wants lowest <= normal <= highest; the later one of a wrong pair carries the fault.
func (r *reader) ordered(path string, lowest, normal, highest Of[units.Temperature]) {
	r.notBelow(path, "normal", normal, "lowest", lowest)
	r.notBelow(path, "highest", highest, "normal", normal)
	if !normal.Set {
		r.notBelow(path, "highest", highest, "lowest", lowest)
	}
}

func (r *reader) notBelow(path, key string, t Of[units.Temperature], floorKey string, floor Of[units.Temperature]) {
	if t.Set && floor.Set && t.V < floor.V-sameKelvin {
		r.fault(t.Pos, path+"."+key, fmt.Sprintf("%s is colder than %s (%s)", quote(t.Text), floorKey, shown(floor.Text)), "check both")
	}
}

// sameKelvin is far below what any instrument shows; 20 °C and 68 °F differ by rounding alone.
const sameKelvin = 1e-6

// coefficient of discharge: a share of the ideal flow, so above 0 and at most 1.
func (r *reader) coefficient(path string, k Of[float64]) {
	if k.Set && (k.V <= 0 || k.V > 1) {
		r.fault(k.Pos, path, quote(k.Text)+" is not above 0 and at most 1", "write the certified coefficient, like 0.7")
	}
}
