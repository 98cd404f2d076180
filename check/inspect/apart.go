package inspect

import (
	"lineworthy/check/resolve"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

// apart says what keeps the test out of the vessels, or that they stand under it too.
func apart(r *resolve.Run, kpa int64, shown Shown) string {
	first, last := hosesOf(r)
	out := ""
	if v := r.Source; v != nil {
		out += "; shut the outlet valve of " + v.Key + ", which the sheet does not show"
		if p := valveOf(r.Parts[:first]); p != "" {
			out = "; shut " + p + " towards " + v.Key
		}
	}
	v := r.Target
	if v == nil {
		return out
	}
	if p := valveOf(r.Parts[last:]); p != "" {
		return out + "; shut " + p + " towards " + v.Key + ", whose joints beyond it are looked at when product comes"
	}
	if _, under := vesselUnder(r, kpa); under {
		return out + "; " + v.Key + ", rated " + v.Sheet.Rated.Text + ", stands under the test too"
	}
	return out + "; blank the end at " + v.Key + " off: no valve of the sheet keeps the test out of it, and it is open or not known to bear " + shown.Pressure(units.GaugePressure(kpa*1000))
}

// vesselUnder says whether the destination stands under the test, and what it takes at most: no valve of the sheet keeps the
// test out, it is closed, and it is shown to take the pressure, below where its relief device would open.
func vesselUnder(r *resolve.Run, kpa int64) (most int64, under bool) {
	_, last := hosesOf(r)
	if r.Target == nil || r.Target.Sheet.Vent.V != "closed" || valveOf(r.Parts[last:]) != "" {
		return 0, false
	}
	v := r.Target.Sheet
	most, known := takes(v.Rated, 1)
	if v.Relief != nil {
		set, has := takes(v.Relief.Set, ofRelief)
		most, known = min(most, set), known && has
	}
	return most, known && most >= kpa
}

// takes is a part of a gauge pressure of the sheet; an absolute one counts as at sea level, where it is least above the air.
func takes(p sheet.Of[units.Pressure], part float64) (kpa int64, known bool) {
	return int64(part * gauge(p.V) / 1000), p.Set
}

// hosesOf are the places of the first hose and behind the last one.
func hosesOf(r *resolve.Run) (first, last int) {
	first = len(r.Parts)
	for i, p := range r.Parts {
		if p.Sheet.Kind.V == "hose" {
			first, last = min(first, i), i+1
		}
	}
	if last == 0 {
		last = len(r.Parts) // without a hose one valve would shut both ends
	}
	return first, last
}

func valveOf(parts []*resolve.Part) string {
	for _, p := range parts {
		if p.Sheet.Kind.V == "valve" {
			return p.ID
		}
	}
	return ""
}
