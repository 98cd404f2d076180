package compare

import (
	"slices"
	"strings"
)

// listed turns every name of a list.
func listed(norm string, to func(string) string) string {
	parts := strings.Split(norm, ", ")
	for i, p := range parts {
		parts[i] = to(p)
	}
	slices.Sort(parts)
	return strings.Join(parts, ", ")
}

func leafAt(all []leaf, key string) (leaf, bool) {
	i := slices.IndexFunc(all, func(l leaf) bool { return l.key == key })
	if i < 0 {
		return leaf{}, false
	}
	return all[i], true
}

// keysOf are the keys of the first list and then those only the second has. The id of a part is told by its label.
func keysOf(first, second []leaf) []string {
	var out []string
	for _, l := range append(slices.Clone(first), second...) {
		if l.owner == "Part" && l.name == "id" || slices.Contains(out, l.key) {
			continue
		}
		out = append(out, l.key)
	}
	return out
}

// otherThings are the things of a sheet that are no parts, with what they are about.
var otherThings = map[string]string{
	"line": aRecord, "fluid": aFluid, "vessel": aVessel, "point": aConnection, "run": aRun, "nearby": aRun, "evidence": aRecord,
}

func isPart(t thing) bool { return otherThings[t.kind] == "" }

func aspectOfThing(t thing) string {
	if isPart(t) {
		return aPart
	}
	return otherThings[t.kind]
}
