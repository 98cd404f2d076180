package suggest

import (
	"slices"
	"strings"

	"lineworthy/check"
	"lineworthy/check/report"
	"lineworthy/check/resolve"
)

// fault is one thing that stands against the line: a stop, a condition, or a fact that is missing.
type fault struct {
	spot     string // empty when it belongs to no part that could be changed
	rule     string
	severity string // stop, unknown, condition
	subject  string
	text     string
	action   string
	finding  *report.Finding
	// toFindOut: the sheet leaves it out, and another part would not tell it either.
	toFindOut bool
}

// spot is a place where a part can be changed: a hose, another part, a joint, or a point in reach.
type spot struct {
	id    string
	kind  string // hose, body, joint, point
	run   *resolve.Run
	part  *resolve.Part
	joint *resolve.Joint
	point *resolve.Point
}

// failures are the cases in which a part is asked to hold what a relief device should have let off. A stronger part is no
// cure: with 200 bar behind a regulator everything after it, vessels too, would have to hold 200 bar.
var failures = []string{check.CaseWords("regulator-failed-open"), check.CaseWords("heated-vessel")}

// spots are the places of the line, in its order, and the names that findings call them by.
func spots(l *resolve.Line) (out []*spot, names map[string]string) {
	names = map[string]string{}
	for _, r := range l.Runs {
		for _, p := range r.Parts {
			s := &spot{id: p.ID, kind: "body", run: r, part: p}
			if p.Sheet.Kind.V == "hose" {
				s.kind = "hose"
			}
			out, names[p.ID] = append(out, s), p.ID
		}
		for _, j := range r.Joints {
			out, names[j.ID] = append(out, &spot{id: j.ID, kind: "joint", run: r, joint: j}), j.ID
			for _, e := range []*resolve.End{j.A, j.B} {
				names[e.Owner+" "+e.Name] = j.ID
			}
		}
	}
	for _, p := range l.Nearby {
		out, names[p.ID] = append(out, &spot{id: p.ID, kind: "point", point: p, run: runInto(l)}), p.ID
	}
	return out, names
}

// runInto is a run that ends at a vessel point, which a point in reach could be mistaken for.
func runInto(l *resolve.Line) *resolve.Run {
	for _, r := range l.Runs {
		if r.Target != nil && r.TargetEnd != nil && r.TargetEnd.Family != nil {
			return r
		}
	}
	return nil
}

// faults lists everything that stands against a verdict, notes and values to confirm left out.
func faults(v *report.Verdict, names map[string]string) (out []fault) {
	for i := range v.Findings {
		f := &v.Findings[i]
		if f.Severity == "note" {
			continue
		}
		x := fault{rule: f.Rule, severity: f.Severity, subject: f.Subject, text: f.Message, action: f.Action, finding: f}
		if own := spotOf(names, f.Subject); !failure(f) && strings.HasPrefix(own, reliefSpot) {
			x.spot = own // what is wrong with a device that was put in counts against it, whatever the rule is about
		} else if !failure(f) && !system(f.Rule) {
			x.spot = spotOf(names, f.Part, f.Subject)
		}
		out = append(out, x)
	}
	for _, u := range v.Unjudged {
		x := fault{
			rule: strings.Join(u.Rules, ", "), severity: "unknown", subject: u.Subject, text: u.Subject + ": " + u.Why, action: "Find out: " + u.Ask,
		}
		if u.Why == "not stated" {
			x.text, x.toFindOut = u.Subject+": "+u.Ask+" is not stated", true
		}
		if !ofTheSource(u.Fact) && !system(x.rule) {
			x.spot = spotOf(names, u.Subject)
		} else if i := slices.IndexFunc(out, func(y fault) bool { return y.severity == "unknown" && y.action == x.action }); i >= 0 {
			continue // one unknown pressure counts once, not for every part that it reaches
		}
		out = append(out, x)
	}
	return out
}

// system says whether a rule is about the line and its safeguards, which another part in the same place does not change.
func system(rule string) bool {
	return slices.ContainsFunc([]string{"expansion/", "relief/", "surge/", "flow/"}, func(area string) bool { return strings.HasPrefix(rule, area) })
}

// ofTheSource says whether the missing fact is what pushes, and so nothing that the part pushed on can tell.
func ofTheSource(fact string) bool {
	return fact == "capacities.demand_kpa" || strings.HasPrefix(fact, "cases.")
}

func failure(f *report.Finding) bool {
	return f.Rule == "pressure/rating_below_demand" && (f.Case == failures[0] || f.Case == failures[1])
}

// spotOf is the spot with the longest name that one of the texts begins with.
func spotOf(names map[string]string, texts ...string) string {
	for _, text := range texts {
		best := ""
		for name := range names {
			rest, ok := strings.CutPrefix(text, name)
			if ok && (rest == "" || strings.ContainsAny(rest[:1], " ,")) && len(name) > len(best) {
				best = name
			}
		}
		if best != "" {
			return names[best]
		}
	}
	return ""
}

// count counts the faults of a spot by severity; an empty spot counts all.
func count(fs []fault, spot, severity string) (n int) {
	for _, f := range fs {
		if (spot == "" || f.spot == spot) && f.severity == severity {
			n++
		}
	}
	return n
}
