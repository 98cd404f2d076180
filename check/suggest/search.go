package suggest

import (
	"context"
	"runtime"
	"sync"

	"lineworthy/catalog"
	"lineworthy/check"
	"lineworthy/check/facts"
	"lineworthy/check/report"
	"lineworthy/check/resolve"
	"lineworthy/check/sheet"
	"lineworthy/check/units"

	"gopkg.in/yaml.v3"
)

// Options say where to look.
type Options struct {
	Part  string // only changes to this part, its ends and seals
	Stock *Stock // only what the site keeps
	Limit int    // how many suggestions, best first
	AsOf  units.Date
}

// search works on one sheet.
type search struct {
	ctx    context.Context
	engine *check.Engine
	cat    *catalog.Catalog
	o      Options
	file   string
	root   *yaml.Node
	line   *resolve.Line // after the work on the site
	facts  *facts.Facts
	names  map[string]string
	fixed  []change // the work on the site
	judged int
}

// trial is one changed sheet with the verdict of the rules on it.
type trial struct {
	changes []change
	text    []byte
	verdict *report.Verdict
	faults  []fault
	err     error
}

// try judges sheets with these changes, several at a time, and returns the answers in the order asked. A sheet that cannot
// be read or resolved has no verdict and is no suggestion.
func (s *search) try(sets [][]change) []*trial {
	out := make([]*trial, len(sets))
	next := make(chan int)
	var wg sync.WaitGroup
	for range min(runtime.GOMAXPROCS(0), len(sets)) {
		wg.Go(func() {
			for i := range next {
				out[i] = s.judge(sets[i])
			}
		})
	}
	for i := range sets {
		next <- i
	}
	close(next)
	wg.Wait()
	s.judged += len(sets)
	return out
}

func (s *search) judge(changes []change) *trial {
	t := &trial{changes: needed(changes)}
	if t.text, t.err = changed(s.root, together(t.changes), ""); t.err != nil {
		return t
	}
	line, err := sheet.Parse(s.file, t.text)
	if err != nil {
		t.err = err
		return t
	}
	if t.verdict, t.err = s.engine.Check(s.ctx, line); t.err == nil {
		t.faults = faults(t.verdict, s.names)
	}
	return t
}

// look reads the changed sheet again, so that parts are chosen for the line as it then is.
func (s *search) look(t *trial) error {
	line, err := sheet.Parse(s.file, t.text)
	if err != nil {
		return err
	}
	if s.line, err = resolve.Resolve(line, s.cat, resolve.Options{AsOf: s.o.AsOf}); err != nil {
		return err
	}
	s.facts, err = s.engine.Facts(line)
	return err
}

// hot and cold are the extremes of a run, nil when not known.
func (s *search) hot(r *resolve.Run) *units.Temperature {
	return extreme(r, s.line.Sheet.Site.Highest, func(f *resolve.Fluid) *units.Temperature { return f.Hottest }, func(a, b units.Temperature) bool { return a > b })
}

func (s *search) cold(r *resolve.Run) *units.Temperature {
	return extreme(r, s.line.Sheet.Site.Lowest, func(f *resolve.Fluid) *units.Temperature { return f.Lowest }, func(a, b units.Temperature) bool { return a < b })
}

func extreme(r *resolve.Run, site sheet.Of[units.Temperature], of func(*resolve.Fluid) *units.Temperature, beyond func(a, b units.Temperature) bool) *units.Temperature {
	var out *units.Temperature
	if site.Set {
		out = &site.V
	}
	for _, f := range r.Fluids {
		t := of(f)
		if t == nil {
			return nil
		}
		if out == nil || beyond(*t, *out) {
			out = t
		}
	}
	return out
}

// need is the highest known pressure that a thing of this name is asked to hold in ordinary operation.
func (s *search) need(part, what string) units.GaugePressure {
	top := int64(0)
	for _, c := range s.facts.Capacities {
		if c.Part == part && (what == "" || c.What == what) && c.Case != "regulator-failed-open" && c.Case != "heated-vessel" && c.DemandKPa.Known {
			top = max(top, c.DemandKPa.V)
		}
	}
	return units.GaugePressure(top * 1000)
}
