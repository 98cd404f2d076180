package suggest

import (
	"cmp"
	"slices"
)

// change is one thing done to the line: a part replaced, the ends of a joint or its seal changed, or work on the site.
type change struct {
	spot   string
	kind   string // hose, body, joint, point, site, relief
	where  string
	before string
	after  string
	needs  []string // what has to be shown before it counts
	uses   []string // catalog entries it brings in, kind/id
	parts  []string // physical things that are replaced, for counting
	edits  []edit
	cost   int  // how far it reaches: a hose end is changed more easily than a vessel
	record bool // a test or a look at a hose, which a new hose brings itself
}

// together are all edits of several changes. Later ones win, so that a joint has the last word on its ends.
func together(cs []change) (out []edit) {
	for _, kind := range []string{"site", "hose", "body", "point", "joint"} {
		for _, c := range cs {
			if c.kind == kind {
				out = append(out, c.edits...)
			}
		}
	}
	return append(out, inserted(cs)...)
}

// inserted are the parts that are added, from the end of each run: what is put in moves only what lies behind it.
func inserted(cs []change) (out []edit) {
	for _, c := range cs {
		if c.kind == "relief" {
			out = append(out, c.edits...)
		}
	}
	slices.SortStableFunc(out, func(a, b edit) int { return cmp.Compare(b.at(), a.at()) })
	return out
}

// needed leaves out the records of hoses that are replaced.
func needed(cs []change) (out []change) {
	for _, c := range cs {
		if c.record && slices.ContainsFunc(cs, func(x change) bool { return x.kind == "hose" && x.where == c.where }) {
			continue
		}
		out = append(out, c)
	}
	return out
}

// replaced counts the physical things that the changes touch. The ends of a hose come with it.
func replaced(cs []change) int {
	var parts []string
	for _, c := range cs {
		parts = append(parts, c.parts...)
	}
	slices.Sort(parts)
	return len(slices.Compact(parts))
}
