package register

import (
	"cmp"
	"iter"
	"maps"
	"slices"
)

// Change is one sheet whose verdict is not what it was in the earlier state, or which is new.
type Change struct {
	Line     string   `json:"line"`
	Path     string   `json:"path"`
	Was      string   `json:"was"`      // verdict word, "bad sheet" or "new"
	Is       string   `json:"is"`       // the same, or "gone"
	Flips    bool     `json:"flips"`    // the word changed; else only what stands behind it
	Appeared []string `json:"appeared"` // stops, conditions, missing facts and values to confirm that were not there
	Cleared  []string `json:"cleared"`
	Differs  []string `json:"differs"` // of what the verdict rests on: sheet, day, rules, tool, catalog rows
}

// Compared says whether there is an earlier state.
func (r *Register) Compared() bool { return r.earlier != nil }

// Changes go through the sheets in the order of their paths; what stayed the same is left out.
func (r *Register) Changes() iter.Seq2[Change, error] {
	return func(yield func(Change, error) bool) {
		for e, err := range r.Entries() {
			if err != nil {
				yield(Change{}, err)
				return
			}
			if c, differs := r.change(e); differs && !yield(c, nil) {
				return
			}
		}
	}
}

// Gone are the sheets of the earlier state that are no longer there, by path.
func (r *Register) Gone() ([]Change, error) {
	left := maps.Clone(r.earlier.index.last)
	for x, err := range r.Rows() {
		if err != nil {
			return nil, err
		}
		delete(left, r.earlier.index.key(x.Path))
	}
	var out []Change
	for _, p := range left {
		e, err := r.earlier.at(p)
		if err != nil {
			return nil, err
		}
		out = append(out, Change{Line: e.Line, Path: e.Path, Was: word(e), Is: "gone", Flips: true, Appeared: []string{}, Cleared: []string{}, Differs: []string{}})
	}
	slices.SortFunc(out, func(a, b Change) int { return cmp.Compare(a.Path, b.Path) })
	return out, nil
}

func (r *Register) change(e *Entry) (Change, bool) {
	c := Change{Line: e.Line, Path: e.Path, Is: word(e), Was: "new", Flips: true, Appeared: []string{}, Cleared: []string{}, Differs: []string{}}
	old, _, ok := r.earlier.about(e.Path)
	if !ok {
		return c, true
	}
	c.Was, c.Line = word(old), cmp.Or(e.Line, old.Line)
	c.Flips = c.Was != c.Is
	c.Appeared, c.Cleared = without(stands(e), stands(old)), without(stands(old), stands(e))
	c.Differs = r.differs(old, e)
	return c, c.Flips || len(c.Appeared)+len(c.Cleared) > 0
}

func word(e *Entry) string {
	if e.bad() {
		return "bad sheet"
	}
	return cmp.Or(string(e.Word), "bad sheet")
}

// stands is everything that stands against a line. Notes never change a verdict.
func stands(e *Entry) []string {
	out := []string{}
	for _, f := range e.Found {
		if len(f) < 5 || f[:5] != "note " {
			out = append(out, f)
		}
	}
	for _, a := range e.Asks {
		out = append(out, "missing "+a)
	}
	for _, c := range e.Confirm {
		out = append(out, "confirm "+c.What)
	}
	return append(out, e.Faults...)
}

func without(all, known []string) []string {
	out := slices.DeleteFunc(slices.Clone(all), func(s string) bool { return slices.Contains(known, s) })
	if out == nil {
		out = []string{}
	}
	return out
}

// differs names what the two verdicts rest on differently, which is what the change can come from.
func (r *Register) differs(old, e *Entry) []string {
	out := []string{}
	if old.Sum != e.Sum {
		out = append(out, "sheet")
	}
	if old.AsOf != e.AsOf {
		out = append(out, "day "+old.AsOf+" to "+e.AsOf)
	}
	a, b := r.earlier.bases[old.Basis], r.state.bases[e.Basis]
	if a.Rules != b.Rules {
		out = append(out, "rules")
	}
	if a.Tool != b.Tool {
		out = append(out, "tool "+a.Tool+" to "+b.Tool)
	}
	for _, row := range sorted(append(slices.Clone(old.Rows), e.Rows...)) {
		if a.Rows[row] != b.Rows[row] {
			out = append(out, row)
		}
	}
	return out
}
