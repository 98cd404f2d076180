package compare

import (
	"slices"

	"lineworthy/check/sheet"
)

// rename is a part, vessel or fluid that has another name on the new sheet.
type rename struct{ old, new string }

// spot is a part and where it stands.
type spot struct {
	run  string
	part *sheet.Part
}

func (s spot) id() string { return s.part.ID.V }

func spots(l *sheet.Line) []spot {
	var out []spot
	for i := range l.Runs {
		for k := range l.Runs[i].V.Parts {
			out = append(out, spot{l.Runs[i].Key, &l.Runs[i].V.Parts[k]})
		}
	}
	return out
}

func find(all []spot, id string) (spot, bool) {
	i := slices.IndexFunc(all, func(s spot) bool { return s.id() == id })
	if i < 0 {
		return spot{}, false
	}
	return all[i], true
}

// partPairs matches parts by id, and those left over by kind between the same matched neighbours of the same run.
func partPairs(before, after []spot) map[string]string {
	to := map[string]string{}
	for _, o := range before {
		if n, ok := find(after, o.id()); ok && n.part.Kind.V == o.part.Kind.V {
			to[o.id()] = n.id()
		}
	}
	back := map[string]string{}
	for o, n := range to {
		back[n] = o
	}
	free := gapsOf(after, func(s spot) (string, bool) { id, ok := back[s.id()]; return id, ok })
	for gap, olds := range gapsOf(before, func(s spot) (string, bool) { _, ok := to[s.id()]; return s.id(), ok }) {
		news := free[gap]
		for i := range min(len(olds), len(news)) {
			to[olds[i].id()] = news[i].id()
		}
	}
	return to
}

// gap is a place for parts of one kind: behind the part that both sheets have, or at the start of the run.
type gap struct{ run, behind, kind string }

// gapsOf files the parts that have no match by their gap, in order. anchor gives the old id of a part that has one.
func gapsOf(all []spot, anchor func(spot) (string, bool)) map[gap][]spot {
	out := map[gap][]spot{}
	run, behind := "", ""
	for _, s := range all {
		if s.run != run {
			run, behind = s.run, ""
		}
		if id, ok := anchor(s); ok {
			behind = id
			continue
		}
		g := gap{s.run, behind, s.part.Kind.V}
		out[g] = append(out[g], s)
	}
	return out
}
