package catalog

import (
	"fmt"
	"io/fs"
	"reflect"
)

// Table is one file of tables/ other than the reactions: figures of a document that belong to no one entry.
type Table struct {
	ID      string     `yaml:"id"`
	Title   string     `yaml:"title"`
	Columns []string   `yaml:"columns,flow"` // the unit is in the name of the column
	Rows    []TableRow `yaml:"rows"`
}

// TableRow is one row: one cell per column; an empty cell is unknown or not applicable.
type TableRow struct {
	Cells  []string `yaml:"cells,flow"`
	Origin `yaml:",inline"`
}

const (
	tables       = "tables"
	reactionRows = "reactions" // a list of [Reaction], not a Table
)

// TableIDs returns the ids of the tables, sorted.
func (c *Catalog) TableIDs() []string {
	var ids []string
	for _, id := range c.IDs(tables) {
		if id != reactionRows {
			ids = append(ids, id)
		}
	}
	return ids
}

// Table reads one table. The error is a [*NotFound] or the [Faults] of its file.
func (c *Catalog) Table(id string) (*Table, error) {
	e := entry{tables, id}
	raw := c.builtIn(e)
	if raw == nil || id == reactionRows {
		return nil, &NotFound{Kind: tables, Name: id}
	}
	t := new(Table)
	return t, decode(e.path(), raw, t)
}

// lintTables checks the tables that are no entries.
func (l *linter) lintTables() *linter {
	files, _ := fs.Glob(l.c.files, tables+"/*.yaml")
	for _, path := range files {
		e := entry{tables, idOf(path)}
		shape := reflect.TypeFor[Table]()
		if e.id == reactionRows {
			shape = reflect.TypeFor[[]Reaction]()
		} else if _, err := l.c.Table(e.id); err != nil {
			l.faults = append(l.faults, asFaults(path, err)...)
			continue
		}
		raw := l.c.builtIn(e)
		walk(spot{file: &file{e, path, raw, false}, node: parse(raw), as: shape}, l.visit)
	}
	return l
}

// tableOf checks that every row fills every column.
func (l *linter) tableOf(s spot, t Table) {
	for i, row := range t.Rows {
		if len(row.Cells) != len(t.Columns) {
			l.faults = append(l.faults, Fault{s.file.path, s.node.Line, fmt.Sprintf("row %d has %d cells; want %d, one per column", i+1, len(row.Cells), len(t.Columns))})
		}
	}
}
