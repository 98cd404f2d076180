package facts

import (
	"lineworthy/catalog"
	"lineworthy/check/measure"
	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

// Place is where along a run something stands, in half parts: the inlet side of part i is 2i, its outlet side 2i+1, and
// what is the same on both sides spans the two. The far end of a run of n parts is 2n.
type Place struct {
	Run      string
	From, To int
}

// Meets says whether two places share some of a run.
func (p Place) Meets(q Place) bool { return p.Run == q.Run && p.From <= q.To && q.From <= p.To }

// Strength is one thing that holds pressure, over all temperatures, with all that pushes on it. Why is not empty when
// what it holds is not known at any temperature; Ask is who or what can tell.
type Strength struct {
	ID, Part, What string
	Places         []Place
	Holds          []Hold // the lowest counts
	Why, Ask       string
	Pushes         []Push
	Hot            *units.Temperature // the hottest it gets, at which the pushes stand; nil when not known
}

// Hold is one bound on what a thing holds: Scale times a table, or Flat, or PerCelsius over the temperature in °C (above
// 0 °C only). A table bounds nothing where it says nothing, and then nothing is known.
type Hold struct {
	Table      *measure.Curve
	Scale      float64
	Flat       units.GaugePressure
	PerCelsius float64 // Pa °C
}

// Push is one pressure case as it reaches a thing; From is the part behind which it stands.
type Push struct {
	Name, From, Cause string
	P                 units.GaugePressure
	Known             bool
	Why               string
}

// Bounds is one temperature range that something must stay inside; a nil side is not known.
type Bounds struct {
	ID, Part, What string
	Place          Place
	Low, High      *units.Temperature
	Ask            string
}

// Reach is how hot one material is known to bear one fluid of the run. None when it does not bear it at all.
type Reach struct {
	Part, Layer, Material, Fluid string
	Place                        Place
	Limited                      bool
	High                         *units.Temperature
}

// Window is all that bounds pressure and temperature along a line.
type Window struct {
	Strengths []Strength
	Bounds    []Bounds
	Reaches   []Reach
	Facts     *Facts
}

// Windows works out what bounds pressure and temperature along the line: from the same tables, in the same way, as Build.
// The error is a fault of the catalog or of the tool.
func Windows(l *resolve.Line, c *catalog.Catalog) (*Window, error) {
	f, err := Build(l, c)
	if err != nil {
		return nil, err
	}
	b := newBuilder(l, c, newScratch())
	w := &Window{Facts: f}
	for _, r := range l.Runs {
		for i, p := range r.Parts {
			w.Strengths = append(w.Strengths, b.partStrengths(r, i)...)
			w.Bounds = append(w.Bounds, b.bounds(part(r, i), func() { b.partLimits(p) })...)
		}
		for n, j := range r.Joints {
			w.Strengths = append(w.Strengths, b.jointStrengths(r, n)...)
			w.Bounds = append(w.Bounds, b.bounds(joint(r, n), func() { b.jointLimits(j) })...)
		}
		w.Reaches = append(w.Reaches, b.reaches(r)...)
	}
	for _, v := range l.Vessels {
		w.Strengths = append(w.Strengths, b.vesselStrength(v)...)
	}
	return w, b.err
}

func part(r *resolve.Run, i int) Place { return Place{r.Key, 2 * i, 2*i + 1} }

// joint is the place before the part that the n-th joint leads to, or the far end.
func joint(r *resolve.Run, n int) Place {
	at := 2 * len(r.Parts)
	if p := r.Joints[n].B.Part; p != nil {
		at = 2 * p.Index
	}
	return Place{r.Key, at, at}
}

// bounds are the temperature limits that a step files, as they stand in the catalog and on the sheet.
func (b *builder) bounds(at Place, step func()) (out []Bounds) {
	b.f.Limits, b.why = nil, map[[2]string]Unknown{}
	step()
	for _, l := range b.f.Limits {
		x := Bounds{ID: l.ID, Part: l.Part, What: l.What, Place: at, Low: kelvin(l.LowestCK), High: kelvin(l.HighestCK)}
		for _, fact := range []string{"limits.highest_ck", "limits.lowest_ck"} {
			if u, ok := b.why[[2]string{l.ID, fact}]; ok {
				x.Ask = u.Ask
			}
		}
		out = append(out, x)
	}
	return out
}

func kelvin(n Int) *units.Temperature {
	if !n.Known {
		return nil
	}
	t := units.Temperature(float64(n.V) / 100)
	return &t
}

func pushed(ps []push) (out []Push) {
	for _, p := range hardest(nil, ps) {
		out = append(out, Push{Name: p.name, From: p.from, Cause: p.cause, P: max(p.p, 0), Known: p.known, Why: p.why})
	}
	return out
}
