package compare

import (
	"maps"
	"slices"

	"lineworthy/check/report"
)

// Rest is one thing a verdict rests on, where it differs between two verdicts.
type Rest struct {
	What string `json:"what"`
	Was  string `json:"was"` // SHA-256 in hex, a version, or empty when it was not used
	Now  string `json:"now"`
}

// rests lists what differs of the sheet, the worked-out values, the rules, the site, every catalog row and the program.
func rests(before, after *report.Verdict) []Rest {
	b, a := before.Digests, after.Digests
	all := []Rest{
		{"sheet", b.Sheet, a.Sheet}, {"day judged for", before.AsOf, after.AsOf}, {"worked-out values", b.Facts, a.Facts},
		{"rules", b.Rules, a.Rules}, {"site", b.Site, a.Site}, {"program", before.Tool.Version, after.Tool.Version},
		{"engine", before.Tool.Engine, after.Tool.Engine},
	}
	rows := maps.Clone(a.Catalog)
	if rows == nil {
		rows = map[string]string{}
	}
	maps.Copy(rows, b.Catalog)
	for _, id := range slices.Sorted(maps.Keys(rows)) {
		all = append(all, Rest{"catalog " + id, b.Catalog[id], a.Catalog[id]})
	}
	return slices.DeleteFunc(all, func(r Rest) bool { return r.Was == r.Now })
}

// blame says from which side a changed answer can come: what is the same cannot have caused it.
func blame(rs []Rest) string {
	has := func(what string) bool { return slices.ContainsFunc(rs, func(r Rest) bool { return r.What == what }) }
	rows := slices.ContainsFunc(rs, func(r Rest) bool { return len(r.What) > 8 && r.What[:8] == "catalog " })
	switch {
	case len(rs) == 0:
		return "Both verdicts rest on the same sheet, rules and catalog rows."
	case has("sheet"):
		return "The sheets differ, so what flips may come from them. Compare the sheets themselves to see the change."
	case has("rules") && rows:
		return "The sheet is the same. Rules and catalog rows differ, so what flips comes from these."
	case has("rules"):
		return "The sheet and every catalog row are the same. What flips comes from the rules."
	case rows:
		return "The sheet and the rules are the same. What flips comes from the catalog rows."
	case has("day judged for"):
		return "The sheet, the rules and the catalog rows are the same. What flips comes from the day."
	}
	return "The sheet, the rules and the catalog rows are the same."
}
