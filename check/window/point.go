package window

import (
	"fmt"
	"slices"

	"lineworthy/check"
	"lineworthy/check/facts"
	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

// points are the pressure cases that reach anything in the area, each at the hottest it comes with and against what it
// really reaches: a case before a regulator says nothing of the parts behind it.
func (d *drawer) points(a area, items []facts.Strength) []Point {
	out := d.duties(a, items)
	at := map[string]int{}
	for _, s := range items {
		for _, p := range s.Pushes {
			if !p.Known || s.Hot == nil {
				continue
			}
			run := a.runOf(s)
			id := fmt.Sprint(run, "/", p.Name, "/", p.From)
			i, ok := at[id]
			if !ok {
				i, at[id] = len(out), len(out)
				out = append(out, Point{Case: check.CaseWords(p.Name), Run: run, From: p.From, Cause: p.Cause, Held: "yes", KPa: -1})
			}
			d.against(&out[i], s, p)
		}
	}
	for i := range out {
		out[i].warm(a.bounds(d.w))
	}
	out = append(out, d.trapped(a)...)
	for i := range out {
		out[i].Text = d.show.Pressure(units.GaugePressure(out[i].KPa*1e3)) + " at " + d.show.Degrees(units.Celsius(out[i].C))
	}
	return out
}

// against puts the case beside one thing that it reaches, and keeps the one with the least to spare.
func (d *drawer) against(p *Point, s facts.Strength, push facts.Push) {
	have, known := s.Known(*s.Hot)
	p.reaches = append(p.reaches, s.Places...)
	p.KPa, p.C = max(p.KPa, tidy(float64(push.P)/1e3)), max(p.C, clean(s.Hot.Celsius()))
	if !known {
		if p.Held == "yes" {
			p.Held, p.Least = "not-known", name(s)
		}
		return
	}
	held := "yes"
	if have < push.P-1 { // a pascal
		held = "no"
	}
	spare := units.PressureDifference(have - push.P)
	if (p.Margin == "" || spare < p.spare) && !(p.Held == "not-known" && held == "yes") {
		p.Held, p.Least, p.HaveKPa, p.spare = held, name(s), tidy(float64(have)/1e3), spare
		p.Margin = d.show.Difference(spare)
	}
}

// warm looks whether all that the case reaches may be so hot.
func (p *Point) warm(bounds []facts.Bounds) {
	for _, b := range bounds {
		if !slices.ContainsFunc(p.reaches, b.Place.Meets) {
			continue
		}
		if t := units.Celsius(p.C); b.High != nil && t > *b.High+1e-9 || b.Low != nil && t < *b.Low-1e-9 {
			p.Held, p.Least, p.Margin, p.HaveKPa = "no", limitName(b)+" outside its temperatures", "", 0
			return
		}
	}
}

// runOf is the run a thing is shown with; a vessel stands at the ends of several.
func (a area) runOf(s facts.Strength) string {
	if a.run != nil {
		return a.run.Key
	}
	return s.Places[0].Run
}

// duties are the duty pressures at the normal temperature of the fluids, where the sheet states one for each. What a full
// cylinder gives is worked out for the hottest day only.
func (d *drawer) duties(a area, items []facts.Strength) []Point {
	out := []Point{}
	for _, r := range d.line.Runs {
		t, ok := normal(r)
		if a.run != nil && a.run != r || !ok {
			continue
		}
		p := Point{Case: "duty at normal temperature", Run: r.Key, C: t, KPa: -1, Held: "yes", duty: true}
		for _, s := range items {
			at := units.Celsius(t)
			if s.Hot = &at; a.runOf(s) != r.Key {
				continue
			}
			for _, push := range s.Pushes {
				if push.Known && push.Name == "duty" && (push.From != "" || !r.Sheet.Source.Cylinder.Set) {
					p.From, p.Cause = push.From, push.Cause
					d.against(&p, s, push)
				}
			}
		}
		if p.KPa >= 0 {
			out = append(out, p)
		}
	}
	return out
}

// normal is the warmest normal temperature of a run's fluids; false when one of them states none.
func normal(r *resolve.Run) (float64, bool) {
	top, ok := -300.0, len(r.Fluids) > 0
	for _, f := range r.Fluids {
		if f.Sheet == nil || !f.Sheet.Temperature.Normal.Set {
			return 0, false
		}
		top = max(top, clean(f.Sheet.Temperature.Normal.V.Celsius()))
	}
	return top, ok
}

// trapped are the sections shut full of liquid and warmed, and the surges of closing devices, as the facts hold them.
func (d *drawer) trapped(a area) (out []Point) {
	for _, s := range d.w.Facts.Sections {
		if s.BlockedKPa.Known && s.HottestCK.Known && a.covers(s.Run, s.From, s.To) {
			out = append(out, d.fact("shut in full of liquid and warmed", s.Run, s.ID, s.BlockedKPa, s.HottestCK, s.WeakestKPa, s.Weakest))
		}
	}
	for _, s := range d.w.Facts.Surges {
		if s.PeakKPa.Known && a.covers(s.Run, s.ID, s.ID) {
			out = append(out, d.fact("surge when "+s.ID+" closes", s.Run, s.ID, s.PeakKPa, d.runHot(s.Run), s.WeakestKPa, s.Weakest))
		}
	}
	return out
}

// covers says whether the area takes in the parts from one to the other. A device belongs to the section before it.
func (a area) covers(run, from, to string) bool {
	if a.run == nil {
		return true
	}
	if run != a.run.Key {
		return false
	}
	return a.kind == "run" || a.to == to && (from == to || a.from == from)
}

func (d *drawer) runHot(run string) facts.Int {
	for _, c := range d.w.Facts.Cases {
		if c.Run == run {
			return c.TempCK
		}
	}
	return facts.Int{}
}

func (d *drawer) fact(what, run, from string, kpa, ck, have facts.Int, least string) Point {
	p := Point{Case: what, Run: run, From: from, KPa: float64(kpa.V), C: clean(units.Temperature(float64(ck.V) / 100).Celsius()), Held: "not-known"}
	if have.Known {
		p.Held, p.Least, p.HaveKPa = "yes", least, float64(have.V)
		if have.V < kpa.V {
			p.Held = "no"
		}
		p.Margin = d.show.Difference(units.PressureDifference(1000 * (have.V - kpa.V)))
	}
	return p
}
