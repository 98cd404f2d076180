package explain

import (
	"slices"
	"strings"

	"lineworthy/check"
	"lineworthy/check/facts"
	"lineworthy/check/report"
	"lineworthy/check/units"
)

func heldOf(c facts.Capacity, s check.Shown) Held {
	h := Held{What: strings.TrimSuffix(c.ID, " in "+c.Case), Case: check.CaseWords(c.Case)}
	if c.RatedKPa.Known {
		h.Have = s.Number("_kpa", c.RatedKPa.V)
	}
	if c.DemandKPa.Known {
		h.Need = s.Number("_kpa", c.DemandKPa.V)
	}
	if h.Have != "" && h.Need != "" {
		h.Margin = s.Difference(units.PressureDifference((c.RatedKPa.V - c.DemandKPa.V) * 1000))
	}
	return h
}

func rangeOf(l facts.Limit, s check.Shown) Range {
	ck := func(n facts.Int) string {
		if !n.Known {
			return "not known"
		}
		return s.Number("_ck", n.V)
	}
	r := Range{What: l.ID, From: ck(l.LowestCK), To: ck(l.HighestCK), Sees: ck(l.ColdestCK) + " to " + ck(l.HottestCK)}
	if l.LowestCK.Known && l.HighestCK.Known && l.ColdestCK.Known && l.HottestCK.Known {
		r.Margin = units.TemperatureDifference(float64(min(l.HighestCK.V-l.HottestCK.V, l.ColdestCK.V-l.LowestCK.V)) / 100).Format("K")
		if !strings.HasPrefix(r.Margin, "-") {
			r.Margin = "+" + r.Margin
		}
	}
	return r
}

func (in Input) pairs(t thing, s check.Shown) []Pair {
	var out []Pair
	for _, group := range [][]facts.Pair{in.Facts.Pairs.Unsuitable, in.Facts.Pairs.Unlisted, in.Facts.Pairs.Limited, in.Facts.Pairs.Suitable} {
		for _, p := range group {
			if !names(p.ID, t.name) {
				continue
			}
			x := Pair{Layer: p.Layer + " of " + p.Part, Material: p.Material, Fluid: p.Fluid, Rating: p.Rating}
			if p.RowToCK.Known {
				x.To = s.Number("_ck", p.RowToCK.V)
			}
			if p.HotCK.Known {
				x.Sees = s.Number("_ck", p.HotCK.V)
			}
			x.Known = in.known(p)
			out = append(out, x)
		}
	}
	return out
}

// known is the document behind a favourable pair, and how it is known.
func (in Input) known(p facts.Pair) string {
	for _, v := range in.Facts.Values {
		if strings.HasPrefix(v.ID, p.Material+" in "+p.Fluid+" up to ") && slices.Contains(v.Used, p.Part) {
			return valueOf(v).document() + ", " + v.Standing
		}
	}
	return ""
}

// judged are the rules that were applied to the thing or to something of it.
func (in Input) judged(t thing) []JudgedBy {
	var out []JudgedBy
	for _, j := range in.Verdict.Judged {
		if !slices.ContainsFunc(j.Judged, func(s string) bool { return names(s, t.name) }) {
			continue
		}
		found := slices.ContainsFunc(in.against(t), func(f report.Finding) bool { return f.Rule == j.Rule })
		out = append(out, JudgedBy{j.Rule, j.Title, found})
	}
	return out
}
