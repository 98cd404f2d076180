package compare

import (
	"slices"

	"lineworthy/check/sheet"
)

// fluidPairs matches fluids by name, and those left over by what they are and do.
func (n names) fluidPairs(before, after *sheet.Line) map[string]string {
	what := func(f sheet.Named[sheet.Fluid]) string {
		return n.id(kinds["Fluid.fluid"], f.V.Fluid.V) + " " + f.V.Role.V
	}
	return pairNamed(before.Fluids, after.Fluids, what)
}

// vesselPairs matches vessels by name, and those left over by the runs they stand at.
func vesselPairs(before, after *sheet.Line) map[string]string {
	at := func(l *sheet.Line) func(sheet.Named[sheet.Vessel]) string {
		return func(v sheet.Named[sheet.Vessel]) string { return ends(l, v.Key) }
	}
	return pairNamedBy(before.Vessels, after.Vessels, at(before), at(after))
}

// ends are the ends of runs that a vessel stands at.
func ends(l *sheet.Line, vessel string) string {
	out := ""
	for _, r := range l.Runs {
		if r.V.Source.Vessel.V == vessel {
			out += "from " + r.Key + " "
		}
		if r.V.To.Vessel.V == vessel {
			out += "to " + r.Key + " "
		}
	}
	return out
}

func pairNamed[T any](before, after []sheet.Named[T], what func(sheet.Named[T]) string) map[string]string {
	return pairNamedBy(before, after, what, what)
}

// pairNamedBy matches by key, then by a description that is not empty.
func pairNamedBy[T any](before, after []sheet.Named[T], whatOld, whatNew func(sheet.Named[T]) string) map[string]string {
	has := func(all []sheet.Named[T], key string) bool {
		return slices.ContainsFunc(all, func(n sheet.Named[T]) bool { return n.Key == key })
	}
	to, taken := map[string]string{}, map[string]bool{}
	for _, o := range before {
		if has(after, o.Key) {
			to[o.Key] = o.Key
			continue
		}
		for _, n := range after {
			if what := whatOld(o); what != "" && what == whatNew(n) && !has(before, n.Key) && !taken[n.Key] {
				to[o.Key], taken[n.Key] = n.Key, true
				break
			}
		}
	}
	return to
}
