package suggest

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"lineworthy/check/report"
)

// caution stands above every suggestion.
const caution = "A suggestion is a place to start engineering from. It is to be checked and confirmed by a competent person: " +
	"what a new part has to bring is written as if it were there, and none of it is shown yet."

func (s *search) result(base *trial, all []*ways, found []*trial) *Result {
	v := base.verdict
	r := &Result{
		Schema: Schema, Line: v.Line, Title: v.Title, Sheet: v.Sheet, AsOf: v.AsOf, Now: v.Word, Reason: v.Reason, Caution: caution,
		Offers: []Offer{}, Nothing: []Nothing{}, NoPart: []NoPart{}, Judged: s.judged, AnyCured: usable(v.Word),
	}
	seen := map[string]bool{}
	for _, t := range found {
		key := told(t)
		if seen[key] || len(r.Offers) == max(s.o.Limit, 1) || len(t.changes) == 0 {
			continue
		}
		seen[key] = true
		r.Offers = append(r.Offers, s.offer(t, len(r.Offers)+1, v.Line))
		r.AnyCured = r.AnyCured || usable(t.verdict.Word)
	}
	best := base
	if len(found) > 0 {
		best = found[0]
	}
	r.Nothing = nothing(all, best)
	r.NoPart = noPart(all, best)
	return r
}

func usable(w report.Word) bool { return w == report.Fit || w == report.Conditional }

// told is what tells one suggestion from another: what is done where, seals and reinforcements aside.
func told(t *trial) string {
	var words []string
	for _, c := range t.changes {
		words = append(words, c.where)
		for _, id := range c.uses {
			if strings.HasPrefix(id, "hoses/") || strings.HasPrefix(id, "connections/") || c.kind == "hose" || c.kind == "body" {
				words = append(words, id)
			}
		}
	}
	return strings.Join(words, "\n")
}

func (s *search) offer(t *trial, n int, line string) Offer {
	o := Offer{
		Word: t.verdict.Word, Reason: t.verdict.Reason, Worst: t.verdict.Governing, Parts: replaced(t.changes),
		Changes: []Change{}, OnSite: []string{}, Needs: []string{}, Left: []Left{}, Confirm: map[string]int{},
	}
	for _, c := range t.changes {
		for _, need := range c.needs {
			if !slices.Contains(o.Needs, need) {
				o.Needs = append(o.Needs, need)
			}
		}
		if c.kind == "site" {
			o.OnSite = append(o.OnSite, c.after)
			continue
		}
		o.Changes = append(o.Changes, Change{c.where, c.kind, c.before, c.after, c.uses})
	}
	for _, f := range t.faults {
		o.Left = append(o.Left, Left{f.severity, f.rule, f.text, f.action})
	}
	for _, c := range t.verdict.Confirm {
		o.Confirm[c.Standing]++
	}
	o.Text, _ = changed(s.root, together(t.changes), head(n, line, o))
	return o
}

// head is the comment at the top of a written sheet.
func head(n int, line string, o Offer) string {
	rows := []string{
		fmt.Sprintf("PROPOSAL %d for line %s: judged %s, were all of this so. To be engineered and confirmed.", n, line, o.Word),
		"What stands behind a # beside a value is still to be shown. Needed before use:",
	}
	for _, x := range append(slices.Clone(o.OnSite), o.Needs...) {
		rows = append(rows, "- "+x)
	}
	return "# " + strings.Join(rows, "\n# ") + "\n#"
}

// nothing are the spots that the best sheet still does not put right, though every part of the catalog was tried.
func nothing(all []*ways, best *trial) []Nothing {
	out := []Nothing{}
	for _, w := range all {
		id := w.spot.id
		if count(best.faults, id, "stop")+count(best.faults, id, "unknown") == 0 {
			continue
		}
		n := Nothing{Where: id, Tried: w.tried}
		from := best
		if len(w.best) > 0 && at(id)(w.best[0], w.as) < 0 {
			from = w.best[0]
			n.Near = from.changes[len(from.changes)-1].after
		}
		for _, f := range from.faults {
			if f.spot == id && f.severity != "condition" && !f.toFindOut {
				n.Wants = append(n.Wants, f.text)
			}
		}
		if len(n.Wants) > 0 {
			out = append(out, n)
		}
	}
	return out
}

// noPart are the faults of the best sheet that belong to no spot, alike ones counted together.
func noPart(all []*ways, best *trial) []NoPart {
	out := []NoPart{}
	for _, f := range best.faults {
		if f.spot != "" && !f.toFindOut && slices.ContainsFunc(all, func(w *ways) bool { return w.spot.id == f.spot }) {
			continue
		}
		key := f.rule
		if f.finding != nil && failure(f.finding) {
			key += " in " + f.finding.Case
		}
		i := slices.IndexFunc(out, func(n NoPart) bool { return n.Rule == key && (f.severity != "unknown" || n.Action == f.action) })
		if i >= 0 {
			out[i].Count++
			if worseFailure(best, f, out[i].Text) {
				out[i].Text = f.text
			}
			continue
		}
		n := NoPart{Severity: f.severity, Rule: key, Text: f.text, Count: 1, Action: f.action}
		if f.finding != nil && failure(f.finding) {
			n.Action = "A stronger part is no cure: fit a relief device that holds the pressure below what the weakest part bears, or lower the source. " +
				"Size it by calculation. One is suggested only where all it protects has a known rating that leaves room for a set pressure."
		}
		out = append(out, n)
	}
	slices.SortStableFunc(out, func(a, b NoPart) int { return cmp.Compare(severityRank(a.Severity), severityRank(b.Severity)) })
	return out
}

// worseFailure says whether f asks more of a weaker part than the fault with that text.
func worseFailure(t *trial, f fault, text string) bool {
	if f.finding == nil || f.rule != "pressure/rating_below_demand" {
		return false
	}
	for _, x := range t.faults {
		if x.text == text && x.finding != nil {
			return f.finding.Numbers["have_kpa"] < x.finding.Numbers["have_kpa"]
		}
	}
	return false
}

func severityRank(s string) int { return slices.Index([]string{"stop", "unknown", "condition"}, s) }
