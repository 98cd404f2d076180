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
	if bears(v.Sheet, kpa) {
		return out + "; " + v.Key + ", rated " + v.Sheet.Rated.Text + ", stands under the test too"
	}
	return out + "; blank the end at " + v.Key + " off: no valve of the sheet keeps the test out of it, and it is open or not known to bear " + shown.Pressure(units.GaugePressure(kpa*1000))
}

// bears says whether a closed vessel is shown to take the test, below where its relief device would open.
func bears(v *sheet.Vessel, kpa int64) bool {
	takes := func(p sheet.Of[units.Pressure], part float64) bool {
		return p.Set && p.V.Basis == units.GaugeBasis && part*float64(p.V.Pascals) >= float64(1000*kpa)
	}
	return v.Vent.V == "closed" && takes(v.Rated, 1) && (v.Relief == nil || takes(v.Relief.Set, ofRelief))
}

// hosesOf are the places of the first hose and behind the last one.
func hosesOf(r *resolve.Run) (first, last int) {
	first = len(r.Parts)
	for i, p := range r.Parts {
		if p.Sheet.Kind.V == "hose" {
			first, last = min(first, i), i+1
		}
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
