package compare

import (
	"slices"
	"strings"

	"lineworthy/check/sheet"
)

// Change is one difference between two sheets.
type Change struct {
	What    string `json:"what"` // changed, added, removed, replaced, moved, renamed
	Thing   string `json:"thing"`
	Key     string `json:"key,omitempty"` // dotted key below the thing
	Aspect  string `json:"aspect"`
	Design  bool   `json:"design"` // false for a date, a name, a mark or a paper
	Was     string `json:"was,omitempty"`
	Now     string `json:"now,omitempty"`
	OldLine int    `json:"old_line,omitempty"` // in the old sheet, from 1
	NewLine int    `json:"new_line,omitempty"`
}

// Open says that a value stands on one sheet only, so that nobody can tell from the sheets whether it changed.
func (c Change) Open() bool { return c.What == "changed" && (c.Was == "" || c.Now == "") }

// differ walks two sheets side by side.
type differ struct {
	old, new *sheet.Line
	names    names
	renamed  []rename
	changes  []Change
	bare     []string // decisive values of swapped parts that neither sheet states
}

func (d *differ) run() {
	d.changes = []Change{}
	to := map[string]string{}
	for _, pairs := range []map[string]string{
		partPairs(spots(d.old), spots(d.new)), d.names.fluidPairs(d.old, d.new), vesselPairs(d.old, d.new),
	} {
		for o, n := range pairs {
			if o != n {
				to[o] = n
			}
		}
	}
	renamed := func(id string) string {
		if n, ok := to[id]; ok {
			return n
		}
		return id
	}
	for o, n := range to {
		d.renamed = append(d.renamed, rename{o, n})
	}
	slices.SortFunc(d.renamed, func(a, b rename) int { return strings.Compare(a.old, b.old) })
	before, after := d.things(d.old, renamed), d.things(d.new, func(s string) string { return s })
	d.pairs(before, after)
	d.moved(renamed)
}

// pairs goes through the things of both sheets in the order of the new one; what is gone comes last.
func (d *differ) pairs(before, after []thing) {
	at := map[string]thing{}
	for _, t := range before {
		at[t.id] = t
	}
	for _, n := range after {
		if o, ok := at[n.id]; ok {
			d.values(o, n)
			delete(at, n.id)
			continue
		}
		d.changes = append(d.changes, Change{What: "added", Thing: n.label, Aspect: aspectOfThing(n), Design: design(aspectOfThing(n)), NewLine: n.line})
	}
	for _, o := range before {
		if _, gone := at[o.id]; gone {
			d.changes = append(d.changes, Change{What: "removed", Thing: o.label, Aspect: aspectOfThing(o), Design: design(aspectOfThing(o)), OldLine: o.line})
		}
	}
}

// values compares the values of one thing, in the order in which a sheet's keys are known.
func (d *differ) values(o, n thing) {
	if o.label != n.label && (isPart(n) || n.kind == "fluid" || n.kind == "vessel") {
		what, aspect := "renamed", aRecord
		if isPart(n) {
			what, aspect = "replaced", aIdentity
		}
		d.changes = append(d.changes, Change{What: what, Thing: o.label, Aspect: aspect, Was: o.label, Now: n.label, OldLine: o.line, NewLine: n.line})
	}
	if isPart(n) && swapped(o, n) {
		d.bare = append(d.bare, bare(o, n)...)
	}
	for _, key := range keysOf(n.leaves, o.leaves) {
		was, hadOld := leafAt(o.leaves, key)
		now, hasNew := leafAt(n.leaves, key)
		if hadOld && hasNew && same(was, now) {
			continue
		}
		l := now
		if !hasNew {
			l = was
		}
		aspect := aspectOf(n, l)
		d.changes = append(d.changes, Change{"changed", n.label, key, aspect, design(aspect), was.text, now.text, was.line, now.line})
	}
}

// moved reports the parts that stand elsewhere than before among those both sheets have.
func (d *differ) moved(to func(string) string) {
	before, after := spots(d.old), spots(d.new)
	for _, run := range d.new.Runs {
		var was, now []string
		for _, s := range before {
			if _, kept := find(after, to(s.id())); kept && s.run == run.Key {
				was = append(was, to(s.id()))
			}
		}
		for _, s := range after {
			if slices.ContainsFunc(before, func(o spot) bool { return to(o.id()) == s.id() }) && s.run == run.Key {
				now = append(now, s.id())
			}
		}
		if !slices.Equal(was, now) {
			d.changes = append(d.changes, Change{"moved", "run " + run.Key, "parts", aRun, true,
				strings.Join(was, ", "), strings.Join(now, ", "), 0, run.Pos.Line})
		}
	}
}
