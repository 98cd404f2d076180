package catalog

import (
	"cmp"
	"fmt"
	"reflect"
	"slices"
	"strings"

	"gopkg.in/yaml.v3"
)

// file is one file of the catalog under examination.
type file struct {
	entry
	path string
	raw  []byte
	site bool
}

// linter collects what is wrong, and what can only be judged once every file has been seen.
type linter struct {
	c      *Catalog
	faults Faults
	used   map[string]bool   // sources that a value names
	mates  map[string]string // pair of connections -> where it was written
	rows   map[string]int    // fluid row -> line

	offered map[string]bool // service words that some fluid carries
	needed  []need
}

// Lint reads every file, built-in and site, and returns everything wrong with them, sorted by file and
// line. It is slow: a look-up never needs it.
func (c *Catalog) Lint() Faults {
	l := c.lint(c.allFiles())
	l.selfMates()
	l.deadWords()
	return l.sorted()
}

// UnusedSources returns the ids of sources that no value of the catalog names.
func (c *Catalog) UnusedSources() []string {
	l := c.lint(c.allFiles())
	return slices.DeleteFunc(c.IDs(Sources), func(id string) bool { return l.used[id] })
}

// lintSite checks the site files alone against the whole catalog.
func (c *Catalog) lintSite() Faults {
	return c.lint(slices.DeleteFunc(c.allFiles(), func(f *file) bool { return !f.site })).sorted()
}

func (c *Catalog) allFiles() []*file {
	var files []*file
	for _, kind := range Kinds {
		for _, id := range c.IDs(kind) {
			e := entry{kind, id}
			if raw := c.builtIn(e); raw != nil {
				files = append(files, &file{e, e.path(), raw, false})
			}
			for _, s := range c.site[e] {
				files = append(files, &file{e, s.path, s.raw, true})
			}
		}
	}
	return files
}

func (c *Catalog) lint(files []*file) *linter {
	l := &linter{c: c, used: map[string]bool{}, mates: map[string]string{}, offered: map[string]bool{}}
	for _, f := range files {
		value := reflect.New(shapes[f.kind]).Interface()
		if err := decodeWhole(f.path, f.raw, value); err != nil {
			l.faults = append(l.faults, asFaults(f.path, err)...)
			continue
		}
		l.rows = map[string]int{}
		root := spot{file: f, node: parse(f.raw), as: shapes[f.kind]}
		l.complete(root)
		walk(root, l.visit)
	}
	return l.lintTables()
}

// wanted are the keys without which an entry says nothing; a file laid over another may leave them out.
var wanted = map[string][]string{Fluids: {"name", "form"}, Materials: {"name", "family"}, Hoses: {"name", "standard"},
	Connections: {"name", "kind", "sized_by"}, Seals: {"name", "kind"}, Sources: {"document"}}

func (l *linter) complete(root spot) {
	if root.file.site && (l.c.builtIn(root.file.entry) != nil || l.c.site[root.file.entry][0].path != root.file.path) {
		return
	}
	for _, key := range wanted[root.file.kind] {
		if _, written := find(root, key); !written {
			l.fault(root, "no %s: a %s of its own needs one", key, singular(root.file.kind))
		}
	}
}

// decodeWhole decodes a file with nothing left for later.
func decodeWhole(path string, raw []byte, into any) error {
	if err := decode(path, raw, into); err != nil {
		return err
	}
	if anchored(parse(raw)) {
		return Faults{{path, 0, "anchors and aliases are not used here: a row must be readable on its own"}}
	}
	return nil
}

func anchored(n *yaml.Node) bool {
	return n.Anchor != "" || n.Kind == yaml.AliasNode || slices.ContainsFunc(n.Content, anchored)
}

// visit runs the checks that fit the node.
func (l *linter) visit(s spot) {
	if hasOrigin(s.as) {
		l.origin(s)
	}
	if check := checks[s.as]; check != nil {
		check(l, s)
	}
	switch s.as.Kind() {
	case reflect.Float64:
		l.plausible(s)
	case reflect.String:
		l.word(s)
	}
}

func (l *linter) fault(s spot, format string, a ...any) {
	l.faults = append(l.faults, Fault{s.file.path, s.node.Line, fmt.Sprintf(format, a...)})
}

func (l *linter) sorted() Faults {
	slices.SortStableFunc(l.faults, func(a, b Fault) int {
		return cmp.Or(strings.Compare(a.File, b.File), a.Line-b.Line, strings.Compare(a.Text, b.Text))
	})
	return slices.Compact(l.faults)
}

// refer checks that ids lead to entries of the kind.
func (l *linter) refer(s spot, kind string, ids ...string) {
	for _, id := range ids {
		if !l.c.has(entry{kind, id}) {
			l.fault(s, "%s", (&NotFound{Kind: kind, Name: id, Nearest: l.c.nearest(kind, id)}).Error())
		}
	}
}
