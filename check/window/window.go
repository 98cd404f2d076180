package window

import (
	"slices"

	"lineworthy/catalog"
	"lineworthy/check"
	"lineworthy/check/facts"
	"lineworthy/check/report"
	"lineworthy/check/resolve"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

// Of works out the region of a sheet. The error is sheet.Problems when a name is not in the catalog, and anything else is
// a fault in the tool.
func Of(s *sheet.Line, c *catalog.Catalog, asOf units.Date) (*Result, error) {
	line, err := resolve.Resolve(s, c, resolve.Options{AsOf: asOf})
	if err != nil {
		return nil, err
	}
	w, err := facts.Windows(line, c)
	if err != nil {
		return nil, err
	}
	d := &drawer{line: line, w: w, show: check.ShownAs(s)}
	r := &Result{
		Schema: Schema, Line: s.ID.V, Title: s.Title.V, Sheet: s.File, Units: d.show.Units(), Scopes: []Scope{},
		Vapours: d.vapours(), Cautions: report.StandingCautions(),
	}
	for _, a := range d.areas() {
		r.Scopes = append(r.Scopes, d.scope(a, r.Vapours))
	}
	return r, nil
}

// drawer works out one line.
type drawer struct {
	line *resolve.Line
	w    *facts.Window
	show check.Shown
}

// area is what one scope takes in: a run, or a part of it by half parts; the line when run is nil.
type area struct {
	kind, id, from, to string
	run                *resolve.Run
	lo, hi             int
}

// closing are the kinds of part that can part a run in two (the design's sections: the unit that can be blocked in).
var closing = []string{"valve", "check-valve", "excess-flow", "breakaway", "coupling", "regulator", "pump", "nozzle"}

func (d *drawer) areas() []area {
	out := []area{{kind: "line", id: "line"}}
	for _, r := range d.line.Runs {
		end := 2 * len(r.Parts)
		out = append(out, area{kind: "run", id: r.Key, run: r, from: r.SourceEnd.Owner, to: r.TargetEnd.Owner, hi: end})
		start, from := 0, r.SourceEnd.Owner
		for i, p := range r.Parts {
			if !slices.Contains(closing, p.Sheet.Kind.V) {
				continue
			}
			out = append(out, section(r, from, p.ID, start, 2*i))
			start, from = 2*i+1, p.ID
		}
		if start > 0 {
			out = append(out, section(r, from, r.TargetEnd.Owner, start, end))
		}
	}
	return out
}

func section(r *resolve.Run, from, to string, lo, hi int) area {
	return area{kind: "section", id: r.Key + " " + from + " to " + to, run: r, from: from, to: to, lo: lo, hi: hi}
}

// has says whether something at the place belongs to the area.
func (a area) has(p facts.Place) bool {
	return a.run == nil || p.Meets(facts.Place{Run: a.run.Key, From: a.lo, To: a.hi})
}

func (a area) hasAny(ps []facts.Place) bool { return slices.ContainsFunc(ps, a.has) }

func (a area) strengths(w *facts.Window) (out []facts.Strength) {
	for _, s := range w.Strengths {
		if a.hasAny(s.Places) {
			out = append(out, s)
		}
	}
	return out
}

func (a area) bounds(w *facts.Window) (out []facts.Bounds) {
	for _, b := range w.Bounds {
		if a.has(b.Place) {
			out = append(out, b)
		}
	}
	return out
}
