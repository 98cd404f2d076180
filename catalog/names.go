package catalog

import (
	"slices"
	"strings"
)

// named is one line of the index: a normalised name and the id it leads to.
type named struct{ kind, name, id string }

func (n named) line() string { return n.kind + "\t" + n.name + "\t" + n.id }

// gaps are what people type alike between the words of a name.
var gaps = strings.NewReplacer("-", " ", "_", " ", "\u2010", " ", "\u2011", " ", "\u2013", " ", "\t", " ")

// normal is the form in which names are compared: lower case, one hyphen between words.
func normal(name string) string {
	joined := strings.Join(strings.Fields(gaps.Replace(strings.ToLower(name))), "-")
	return gluedStandard.ReplaceAllString(glued.ReplaceAllString(joined, "un-$1"), "$1-$2")
}

// ID resolves a name to the id of one entry without reading the entry. An id wins over another
// entry's other name; a name of several entries is an [*Ambiguous] error, an unknown one a [*NotFound].
func (c *Catalog) ID(kind, name string) (string, error) {
	if c.has(entry{kind, name}) {
		return name, nil
	}
	key := normal(name)
	ids := c.idsNamed(kind, key)
	if i := slices.IndexFunc(ids, func(id string) bool { return normal(id) == key }); i >= 0 {
		return ids[i], nil
	}
	switch len(ids) {
	case 0:
		return "", &NotFound{Kind: kind, Name: name, Nearest: c.nearest(kind, name)}
	case 1:
		return ids[0], nil
	}
	return "", &Ambiguous{Kind: kind, Name: name, Choices: ids}
}

// idsNamed returns the ids that the normalised name may mean, sorted. The index is short enough that
// one pass over its text beats parsing it; its first line is a heading, so every name follows a line break.
func (c *Catalog) idsNamed(kind, key string) []string {
	var ids []string
	prefix := "\n" + kind + "\t" + key + "\t"
	for _, rest, found := strings.Cut(c.index, prefix); found; _, rest, found = strings.Cut(rest, prefix) {
		id, _, _ := strings.Cut(rest, "\n")
		ids = append(ids, id)
	}
	for _, n := range c.extra {
		if n.kind == kind && n.name == key {
			ids = append(ids, n.id)
		}
	}
	slices.Sort(ids)
	return slices.Compact(ids)
}

// namesOfKind returns every known name of the kind, for the search of the nearest.
func (c *Catalog) namesOfKind(kind string) []named {
	var all []named
	for line := range strings.Lines(c.index) {
		if f := strings.Split(strings.TrimSuffix(line, "\n"), "\t"); len(f) == 3 && f[0] == kind {
			all = append(all, named{f[0], f[1], f[2]})
		}
	}
	for _, n := range c.extra {
		if n.kind == kind {
			all = append(all, n)
		}
	}
	return all
}

// namesOf returns the names under which an entry is found.
func namesOf(kind string, value any) []named {
	id, names := "", []string(nil)
	switch v := value.(type) {
	case *Fluid:
		id, names = v.ID, append(numbers(v), append(v.Also, v.Name)...)
	case *Material:
		id, names = v.ID, append([]string{v.Name}, v.Also...)
	case *Hose:
		id, names = v.ID, append([]string{v.Name, v.Standard}, v.Also...)
		if v.Class != "" {
			names = append(names, v.Standard+" "+v.Class)
		}
	case *Connection:
		id, names = v.ID, append([]string{v.Name, v.Standard}, v.Also...)
	case *Seal:
		id, names = v.ID, append([]string{v.Name}, v.Also...)
	case *Source:
		id, names = v.ID, []string{v.Document}
	}
	return listed(kind, id, append(names, id))
}

func listed(kind, id string, names []string) []named {
	var all []named
	for _, name := range names {
		if key := normal(name); key != "" && id != "" {
			all = append(all, named{kind, key, id})
		}
	}
	return all
}
