package compare

import (
	"slices"
	"strings"

	"lineworthy/check"
	"lineworthy/check/facts"
	"lineworthy/check/report"
	"lineworthy/check/units"
)

// Margin is what one thing that holds pressure has to spare, before and after. A side is nil when the thing is not there
// or its figures are not known.
type Margin struct {
	What   string   `json:"what"`
	Case   string   `json:"case"`
	Before *Reading `json:"before,omitempty"`
	After  *Reading `json:"after,omitempty"`
}

func margins(before, after Input, renamed []rename) []Margin {
	out := []Margin{}
	olds := slices.Clone(before.Facts.Capacities)
	for i := range olds {
		olds[i].ID = renamedText(olds[i].ID, renamed)
	}
	for _, n := range after.Facts.Capacities {
		i := slices.IndexFunc(olds, func(o facts.Capacity) bool { return o.ID == n.ID })
		m := Margin{What: strings.TrimSuffix(n.ID, " in "+n.Case), Case: check.CaseWords(n.Case), After: held(n, after.shown())}
		if i >= 0 {
			if same := olds[i]; same.RatedKPa == n.RatedKPa && same.DemandKPa == n.DemandKPa {
				continue
			}
			m.Before = held(olds[i], before.shown())
		}
		out = append(out, m)
	}
	for _, o := range olds {
		if !slices.ContainsFunc(after.Facts.Capacities, func(n facts.Capacity) bool { return o.ID == n.ID }) {
			out = append(out, Margin{What: strings.TrimSuffix(o.ID, " in "+o.Case), Case: check.CaseWords(o.Case), Before: held(o, before.shown())})
		}
	}
	return out
}

func held(c facts.Capacity, s check.Shown) *Reading {
	if !c.RatedKPa.Known || !c.DemandKPa.Known {
		return nil
	}
	return &Reading{pressure(s, c.RatedKPa.V), pressure(s, c.DemandKPa.V), s.Difference(units.PressureDifference((c.RatedKPa.V - c.DemandKPa.V) * 1000))}
}

func pressure(s check.Shown, kpa int64) string { return s.Pressure(units.GaugePressure(kpa * 1000)) }

// counterpart is how the thing of a finding stands on this side, where the finding is not. Only what holds pressure and
// what must stay in a temperature range has figures there.
func (in Input) counterpart(f report.Finding, renamed []rename, old bool) *Reading {
	if in.Facts == nil {
		return nil
	}
	is := func(id string) bool { return old && renamedText(id, renamed) == f.Subject || !old && id == f.Subject }
	for _, c := range in.Facts.Capacities {
		if is(c.ID) && strings.HasPrefix(f.Rule, "pressure/") {
			return held(c, in.shown())
		}
	}
	for _, l := range in.Facts.Limits {
		if is(l.ID) && strings.HasPrefix(f.Rule, "temperature/") {
			return ranged(l, strings.HasSuffix(f.Rule, "above_limit"), in.shown())
		}
	}
	return nil
}

func ranged(l facts.Limit, hot bool, s check.Shown) *Reading {
	have, need, spare := l.HighestCK, l.HottestCK, l.HighestCK.V-l.HottestCK.V
	if !hot {
		have, need, spare = l.LowestCK, l.ColdestCK, l.ColdestCK.V-l.LowestCK.V
	}
	if !have.Known || !need.Known {
		return nil
	}
	degrees := func(ck int64) string { return s.Degrees(units.Temperature(float64(ck) / 100)) }
	return &Reading{degrees(have.V), degrees(need.V), signedKelvin(spare)}
}

func signedKelvin(ck int64) string {
	text := units.TemperatureDifference(float64(ck) / 100).Format("K")
	if ck > 0 {
		return "+" + text
	}
	return text
}
