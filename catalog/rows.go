package catalog

import (
	"bytes"
	"slices"
	"strings"
	"sync"
)

// table is the compatibility block of a fluid. Most of a fluid file is rows about materials that a line
// does not have, so the block stays text and only the rows asked for are decoded.
type table struct {
	path  string
	text  string // from the line of the key on
	above int    // lines of the file before text, so that faults name the right line
	site  []Row  // rows of site files

	mu   sync.Mutex
	seen map[string][]Row
}

const tableKey = "compatibility:"

// cut takes the compatibility block out of a fluid file. The head keeps its line numbers.
func cut(path string, raw []byte) (head []byte, t *table) {
	t = &table{path: path}
	from := bytes.Index(append([]byte("\n"), raw...), []byte("\n"+tableKey))
	if from < 0 {
		return raw, t
	}
	to := from + blockLength(string(raw[from:]))
	t.text, t.above = string(raw[from:to]), bytes.Count(raw[:from], []byte("\n"))
	blank := strings.Repeat("\n", strings.Count(t.text, "\n"))
	return slices.Concat(raw[:from], []byte(blank), raw[to:]), t
}

// blockLength is the length of the block that starts text: up to the next line that starts a key.
func blockLength(text string) int {
	length := 0
	for line := range strings.Lines(text) {
		if length > 0 && !strings.ContainsAny(line[:1], " #\n\r") {
			break
		}
		length += len(line)
	}
	return length
}

// Rows returns the rows for any of the materials (ids) in file order. An empty result means that nothing
// is known. They are shared and must not be changed. The error names the line of a row that cannot be read.
func (f *Fluid) Rows(materials ...string) ([]Row, error) {
	if len(materials) == 1 { // the usual question needs no copy
		rows, err := f.table.of(materials[0])
		return slices.Clip(rows), err
	}
	var rows []Row
	for _, m := range materials {
		found, err := f.table.of(m)
		if err != nil {
			return nil, err
		}
		rows = append(rows, found...)
	}
	return rows, nil
}

// AllRows returns every row of the fluid, decoding the whole block.
func (f *Fluid) AllRows() ([]Row, error) {
	if f.table == nil {
		return nil, nil
	}
	whole, err := f.table.whole()
	if err != nil {
		return nil, err
	}
	return outvote(whole.All(), f.table.site), nil
}

func (t *table) of(material string) ([]Row, error) {
	if t == nil {
		return nil, nil
	}
	t.mu.Lock()
	defer t.mu.Unlock()
	if rows, ok := t.seen[material]; ok {
		return rows, nil
	}
	rows, err := t.read(material)
	if err != nil {
		return nil, err
	}
	if t.seen == nil {
		t.seen = map[string][]Row{}
	}
	t.seen[material] = rows
	return rows, nil
}

func (t *table) read(material string) ([]Row, error) {
	var rows []Row
	if text, ok := t.pick(material); ok {
		if err := strict(t.path, []byte(text), &rows); text != "" && err != nil {
			return nil, err
		}
	} else if whole, err := t.whole(); err != nil {
		return nil, err
	} else {
		rows = about(whole.All(), material)
	}
	return outvote(rows, about(t.site, material)), nil
}

// pick keeps the lines of the material and blanks the others, so that faults keep their line numbers.
// It is false if any line is not a group heading, a comment or a row on one line.
func (t *table) pick(material string) (text string, ok bool) {
	var kept strings.Builder
	kept.WriteString(strings.Repeat("\n", t.above))
	found := false
	for line := range strings.Lines(t.text) {
		row := strings.TrimSpace(line)
		m, isRow := rowOf(row)
		if !isRow && !heading(row) {
			return "", false
		}
		if isRow && m == material {
			found = true
			kept.WriteString(row)
		}
		kept.WriteByte('\n')
	}
	if !found {
		return "", true
	}
	return kept.String(), true
}

// rowOf returns the material of a row that is written on one line with the material first.
func rowOf(line string) (material string, ok bool) {
	rest, isRow := strings.CutPrefix(line, "- {m: ")
	m, _, more := strings.Cut(rest, ",")
	return strings.Trim(m, `"' `), isRow && more && strings.HasSuffix(line, "}")
}

// heading is also true of blank lines and comments: lines that hold no row.
func heading(line string) bool {
	return line == "" || line[0] == '#' || (strings.HasSuffix(line, ":") && !strings.ContainsAny(line, " {\"'"))
}

// whole decodes the block strictly.
func (t *table) whole() (Compatibility, error) {
	var file struct {
		Compatibility `yaml:"compatibility"`
	}
	if t.text == "" {
		return file.Compatibility, nil
	}
	err := strict(t.path, []byte(strings.Repeat("\n", t.above)+t.text), &file)
	return file.Compatibility, err
}

func about(rows []Row, material string) []Row {
	return slices.DeleteFunc(slices.Clone(rows), func(r Row) bool { return r.Material != material })
}
