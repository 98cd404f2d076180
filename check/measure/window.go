package measure

import (
	"fmt"
	"slices"

	"lineworthy/check/units"
)

// Interval is a closed span of temperatures.
type Interval struct{ From, To units.Temperature }

// Window is every interval of temperature in which all items hold the demand, hot and cold ends alike: exact, because
// tables are made of straight pieces whose products are solved piece by piece. Where a table ends, so does the window.
// A table that is empty or out of order is an error, and so is an item with more than two that slope.
func Window(items []Rated, demand Curve) ([]Interval, error) {
	if err := demand.check(); err != nil {
		return nil, err
	}
	whole := []Interval{domain(demand)}
	for _, it := range items {
		in, err := itemWindow(it, demand)
		if err != nil {
			return nil, err
		}
		whole = intersect(whole, in)
	}
	return whole, nil
}

// WindowFlip is the nearest end of the window to t: where the answer changes. It is false when there is no window or t is
// no temperature.
func WindowFlip(in []Interval, t units.Temperature) (at units.Temperature, ok bool) {
	for _, i := range in {
		for _, end := range []units.Temperature{i.From, i.To} {
			if !ok || abs(end-t) < abs(at-t) {
				at, ok = end, true
			}
		}
	}
	return at, ok
}

func abs(t units.Temperature) units.Temperature { return max(t, -t) }

func domain(c Curve) Interval {
	from := c.T[0]
	if c.FlatFrom > 0 {
		from = min(from, c.FlatFrom)
	}
	return Interval{from, c.T[len(c.T)-1]}
}

// itemWindow joins the pieces between breakpoints in which the margin is not negative.
func itemWindow(it Rated, demand Curve) ([]Interval, error) {
	curves, sloped := append([]Curve{it.Table, demand}, it.By...), 0
	for i, c := range curves {
		if err := c.check(); err != nil {
			return nil, fmt.Errorf("%s: %w", it.ID, err)
		}
		if i != 1 && !c.Steps && len(c.T) > 1 {
			sloped++
		}
	}
	if sloped > 2 {
		return nil, fmt.Errorf("%s has %d tables that slope with temperature: two can be solved exactly", it.ID, sloped)
	}
	margin := func(t units.Temperature) float64 {
		have, _ := it.Allowable(t)
		need, _ := demand.At(t)
		return float64(have) - need
	}
	var out []Interval
	ends := breakpoints(curves)
	for i := 0; i+1 < len(ends); i++ {
		out = append(out, piece(ends[i], ends[i+1], margin)...)
	}
	return join(out), nil
}

// breakpoints are the rows of all curves within the span that all of them know.
func breakpoints(curves []Curve) []units.Temperature {
	span := domain(curves[0])
	var ts []units.Temperature
	for _, c := range curves {
		d := domain(c)
		span = Interval{max(span.From, d.From), min(span.To, d.To)}
		ts = append(append(ts, d.From), c.T...)
	}
	ts = slices.DeleteFunc(append(ts, span.From, span.To), func(t units.Temperature) bool { return t < span.From || t > span.To })
	slices.Sort(ts)
	return slices.Compact(ts)
}
