package explain

import (
	"slices"
	"strings"

	"lineworthy/catalog"
	"lineworthy/check/facts"
	"lineworthy/check/report"
)

// Value is one value of the catalog or of a paper, with the document behind it and how it is known.
type Value struct {
	Row      string `json:"row,omitempty"` // kind/id of the catalog entry
	What     string `json:"what"`
	Source   string `json:"source"`
	Clause   string `json:"clause,omitempty"`
	Standing string `json:"standing"`
}

// matters are the words by which a value is known to matter to an area of rules; none means that all do.
var matters = map[string][]string{
	"pressure": {"pressure", "rating", "burst", "no flow", "temperature"}, "temperature": {"temperature"}, "material": {" in "},
	"inspection": {"bend", "test", "life", "pressure"}, "relief": {"pressure", "rating"}, "surge": {"pressure", "rating"},
	"expansion": {"pressure", "rating"}, "service": {"made for", "kept out"}, "connection": {"joins", "that "}, "seal": {"seal", "that "},
}

func matter(rule, what string) bool {
	area, _, _ := strings.Cut(rule, "/")
	words, ok := matters[area]
	return !ok || slices.ContainsFunc(words, func(w string) bool { return strings.Contains(what, w) })
}

// values are the favourable values that the parts of a finding rest on.
func (in Input) values(f report.Finding) []Value {
	var out []Value
	for _, v := range in.Facts.Values {
		if matter(f.Rule, v.What) && slices.ContainsFunc(v.Used, func(u string) bool { return u == f.Subject || u == f.Part }) {
			out = append(out, valueOf(v))
		}
	}
	return out
}

func valueOf(v facts.Value) Value {
	return Value{What: v.What, Source: v.Source, Clause: v.Clause, Standing: v.Standing}
}

// value is a value of a catalog entry with the printed name of its document.
func (in Input) value(row, what string, o catalog.Origin) Value {
	v := Value{Row: row, What: what, Clause: o.Clause, Standing: string(o.Standing), Source: o.Source}
	if s, err := in.Catalog.Source(o.Source); err == nil {
		v.Source = strings.TrimSuffix(s.Document+", "+s.Edition, ", ")
	}
	if v.Source == "" && v.Standing == string(catalog.Practice) {
		v.Source = "common practice, no document"
	}
	return v
}
