package suggest

import (
	"context"
	"fmt"
	"slices"
	"strings"

	"lineworthy/catalog"
	"lineworthy/check"
	"lineworthy/check/sheet"
)

// kept is how many ways are kept for each spot, and rounds how often they are tried against each other.
const (
	kept   = 3
	rounds = 2
)

// For looks for parts that make the line of the sheet fit or fitter. The error is sheet.Problems for a faulty sheet, a
// PartError for a part the line does not have, and anything else is a fault in the tool.
func For(ctx context.Context, e *check.Engine, c *catalog.Catalog, file string, text []byte, o Options) (*Result, error) {
	if _, err := sheet.Parse(file, text); err != nil {
		return nil, err
	}
	root, err := parse(text)
	if err != nil {
		return nil, err
	}
	s := &search{ctx: ctx, engine: e, cat: c, o: o, file: file, root: root}
	base, err := s.begin()
	if err != nil {
		return nil, err
	}
	tried := s.tryAll()
	found := s.combine(base, tried)
	return s.result(base, tried, found), nil
}

// PartError says that the line has no such part.
type PartError struct {
	Part string
	Have []string
}

func (e *PartError) Error() string {
	return fmt.Sprintf("the line has no part %q: it has %s", e.Part, strings.Join(e.Have, ", "))
}

// begin judges the sheet as it is, and again with all that can be put right on the site.
func (s *search) begin() (*trial, error) {
	base := s.try([][]change{nil})[0]
	if base.err != nil {
		return nil, base.err
	}
	if err := s.look(base); err != nil {
		return nil, err
	}
	if err := s.askedPart(); err != nil {
		return nil, err
	}
	_, s.names = spots(s.line)
	base.faults = faults(base.verdict, s.names)
	now := base
	for range rounds {
		work := s.work(now)
		if len(work) == 0 {
			break
		}
		next := s.try([][]change{append(slices.Clone(s.fixed), work...)})[0]
		if next.err != nil || compare(next, now) >= 0 && !better(next, now) {
			break
		}
		s.fixed, now = next.changes, next
		if err := s.look(now); err != nil {
			return nil, err
		}
		_, s.names = spots(s.line)
		now.faults = faults(now.verdict, s.names)
	}
	return base, nil
}

func (s *search) askedPart() error {
	if s.o.Part == "" {
		return nil
	}
	var have []string
	for _, r := range s.line.Runs {
		for _, p := range r.Parts {
			if p.ID == s.o.Part {
				return nil
			}
			have = append(have, p.ID)
		}
	}
	return &PartError{s.o.Part, have}
}

// ways are the best ways found for one spot, each judged alone, and the one that leaves it as it is.
type ways struct {
	spot  *spot
	as    *trial
	best  []*trial
	tried int
}

// tryAll tries, for each spot that something stands against, every candidate by itself.
func (s *search) tryAll() (out []*ways) {
	as := s.try([][]change{s.fixed})[0]
	all, _ := spots(s.line)
	for _, sp := range all {
		if as.err != nil || !s.asked(sp) || count(as.faults, sp.id, "stop")+count(as.faults, sp.id, "unknown")+count(as.faults, sp.id, "condition") == 0 {
			continue
		}
		w := &ways{spot: sp, as: as}
		for batch := range slices.Chunk(s.candidates(sp), atATime) {
			if w.enough() {
				break
			}
			s.tryAt(w, batch)
		}
		w.best = w.best[:min(len(w.best), kept)]
		out = append(out, w)
	}
	return append(out, s.reliefs(out)...)
}

// atATime is how many candidates are judged before it is asked whether enough of them do: those that change least come
// first.
const atATime = 8

func (s *search) tryAt(w *ways, batch []change) {
	var sets [][]change
	for _, c := range batch {
		sets = append(sets, append(slices.Clone(s.fixed), c))
	}
	w.tried += len(sets)
	w.best = sound(append(w.best, s.try(sets)...), at(w.spot.id))
}

// enough says whether as many ways as are kept leave nothing against the spot.
func (w *ways) enough() bool {
	if len(w.best) < kept {
		return false
	}
	last := w.best[kept-1]
	return count(last.faults, w.spot.id, "stop")+count(last.faults, w.spot.id, "unknown")+count(last.faults, w.spot.id, "condition") == 0
}

func (s *search) candidates(sp *spot) []change {
	switch sp.kind {
	case "hose":
		return s.hoses(sp)
	case "body":
		return s.bodies(sp)
	case "joint":
		return s.joints(sp)
	}
	return s.points(sp)
}

// asked says whether the spot is the part asked for, or a joint of it.
func (s *search) asked(sp *spot) bool {
	switch {
	case s.o.Part == "":
		return true
	case sp.part != nil:
		return sp.part.ID == s.o.Part
	case sp.joint != nil:
		return sp.joint.A.Owner == s.o.Part || sp.joint.B.Owner == s.o.Part
	}
	return false
}
