package explain

import (
	"fmt"
	"slices"
	"strings"

	"lineworthy/catalog"
	"lineworthy/check/report"
)

// rows are the rows of the catalog that speak of what a finding is about.
func (in Input) rows(f report.Finding) []Value {
	out := in.pairRows(f)
	out = append(out, in.mateRows(f)...)
	for _, t := range in.about(f) {
		if p := in.Facts.HoseOf(t.name); p != "" {
			out = append(out, in.hoseRows(p, f.Rule)...)
		}
	}
	return out
}

// pairRows are the rows of a material in a fluid, or the bar of a law on it.
func (in Input) pairRows(f report.Finding) []Value {
	id := f.Words["material"]
	if id == "" {
		return nil
	}
	var out []Value
	for _, fl := range in.Facts.Fluids {
		cat, err := in.Catalog.Fluid(fl.Fluid)
		if err != nil || fl.Name != f.Words["fluid"] {
			continue
		}
		rows, _ := cat.Rows(id)
		rows = slices.Clone(rows) // the catalog shares them
		slices.SortStableFunc(rows, func(a, b catalog.Row) int { return weight(f.Rule, a.Rating) - weight(f.Rule, b.Rating) })
		for _, r := range rows {
			out = append(out, in.value("fluids/"+cat.ID, fmt.Sprintf("%s in %s up to %g °C: %s%s", id, cat.Name, r.ToC, r.Rating, dash(r.Effect)), r.Origin))
		}
		if strings.HasPrefix(f.Rule, "material/barred") {
			for _, b := range cat.Bars {
				out = append(out, in.value("fluids/"+cat.ID, b.Regime+": "+b.Why, b.Origin))
			}
		}
		break
	}
	return out
}

// weight puts the rows that a rule speaks of first.
func weight(rule, rating string) int {
	if strings.HasSuffix(rule, "limited_use") == (rating == "limited") {
		return slices.Index([]string{"unsuitable", "limited", "suitable"}, rating)
	}
	return 3 + slices.Index([]string{"unsuitable", "limited", "suitable"}, rating)
}

func dash(s string) string {
	if s == "" {
		return ""
	}
	return ", " + s
}

// mateRows are the rows that say how the two ends of a joint go together.
func (in Input) mateRows(f report.Finding) []Value {
	var out []Value
	for _, j := range in.Facts.Joints {
		if j.ID != f.Subject || j.FamilyA == "" || j.FamilyB == "" {
			continue
		}
		for _, pair := range [][2]string{{j.FamilyA, j.FamilyB}, {j.FamilyB, j.FamilyA}} {
			c, err := in.Catalog.Connection(pair[0])
			if err != nil {
				continue
			}
			for _, m := range c.Mates {
				if m.With == pair[1] {
					out = append(out, in.value("connections/"+c.ID, c.ID+" with "+m.With+": "+m.Verdict+dash(m.Why), m.Origin))
				}
			}
			if pair[0] == pair[1] {
				break
			}
		}
	}
	return out
}

// hoseRows are what the class of a hose says of the matter.
func (in Input) hoseRows(class, rule string) []Value {
	h, err := in.Catalog.Hose(class)
	if err != nil {
		return nil
	}
	var out []Value
	add := func(what string, o catalog.Origin) { out = append(out, in.value("hoses/"+h.ID, what, o)) }
	switch area, _, _ := strings.Cut(rule, "/"); {
	case area == "service" && h.For != nil:
		add(h.Name+" is for "+strings.Join(h.For.Values, ", "), h.For.Origin)
	case area == "pressure" && h.Rating != nil:
		add("working pressure of the class", h.Rating.Origin)
	case area == "temperature" && h.Temperature != nil:
		add("temperature range of the class", h.Temperature.Origin)
	case area == "marking" && h.Marks != nil:
		add("marks of the class: "+strings.Join(h.Marks.Values, ", "), h.Marks.Origin)
	}
	if strings.HasPrefix(rule, "service/") {
		for _, x := range h.NotFor {
			add(h.Name+" is not for "+x.Service+dash(x.Why), x.Origin)
		}
	}
	return out
}
