package inspect

import "slices"

// Group is what rejects every item of one sort, told once.
type Group struct {
	Name   string
	Reject []Reject
}

var groupNames = []string{"any cylinder", "any supply", "any joint", "any hose", "any vessel", "any point", "any other part"}

func groupOf(i *Item) string {
	switch i.Kind {
	case "joint", "hose", "vessel", "cylinder", "supply", "point":
		return "any " + i.Kind
	}
	return "any other part"
}

// group takes what all items of a sort have in common out of them and leaves each its own. A sort with one item has none.
func group(items []*Item) (out []Group) {
	of := map[string][]*Item{}
	for _, i := range items {
		of[groupOf(i)] = append(of[groupOf(i)], i)
	}
	for _, name := range groupNames {
		g := Group{Name: name}
		for _, i := range of[name] {
			i.Own = i.Reject
		}
		if len(of[name]) > 1 {
			g.Reject = shareAll(of[name])
		}
		if len(g.Reject) > 0 {
			out = append(out, g)
		}
	}
	return out
}

func shareAll(items []*Item) (common []Reject) {
	for _, r := range items[0].Reject {
		dated := r.Source == intervalOf || r.Source == lifeOf
		if !dated && !slices.ContainsFunc(items, func(i *Item) bool { return !slices.Contains(i.Reject, r) }) {
			common = append(common, r)
		}
	}
	for _, i := range items {
		i.Own = slices.DeleteFunc(slices.Clone(i.Reject), func(r Reject) bool { return slices.Contains(common, r) })
	}
	return common
}
