package report

import (
	"slices"
	"strconv"
	"strings"
)

// table is a table of the page. The first cell of a row is its head.
type table struct {
	ID, Caption string
	Columns     []tableColumn
	Rows        [][]cell
}

type tableColumn struct {
	Head    string
	Percent int
}

// cell is one cell. Bar draws a bar of Percent of the width below the text.
type cell struct {
	Text, Class string
	Bar         bool
	Percent     int
}

// shares is how wide a column is beside the others of its table. Fixed widths keep a long word from pushing the table off
// the paper.
var shares = map[string]int{
	"Where": 22, "What": 36, "Have": 12, "Need": 12, "Margin": 12, "Sheet line": 10,
	"Where to look": 28, "How known": 11, "Used by": 34, "Mark": 7, "Not known": 36, "Find out": 30, "Waiting": 27,
	"Run": 10, "From": 12, "Case": 20, "Pressure": 20, "Temperature": 14, "Cause": 34,
	"Rule": 24, "Looks for": 24, "If found": 11, "Judged": 34, "Could not judge": 22, "Findings": 11,
	"SHA-256 of": 28, "Sum": 72, "No.": 7, "Allowed up to": 16, "Just above": 16, "Weakest from here on": 40, "Reaches": 22, "Held": 10, "Least to spare": 22, "Did not apply to": 36,
}

// newTable is nil when there is no row, and has no column that no row fills.
func newTable(id, caption string, head []string, rows [][]string) *table {
	if len(rows) == 0 {
		return nil
	}
	head, rows = used(head, rows)
	t := &table{ID: id, Caption: caption}
	sum := 0
	for _, h := range head {
		sum += shares[h]
	}
	for _, h := range head {
		t.Columns = append(t.Columns, tableColumn{h, shares[h] * 100 / max(sum, 1)})
	}
	for _, row := range rows {
		var cells []cell
		for _, text := range row {
			cells = append(cells, cell{Text: text})
		}
		t.Rows = append(t.Rows, cells)
	}
	return t
}

// column is where a head stands, or -1.
func (t *table) column(head string) int {
	return slices.IndexFunc(t.Columns, func(c tableColumn) bool { return c.Head == head })
}

func confirmTable(v *Verdict) *table {
	return newTable("confirm-table", number(len(v.Confirm), "value")+" to look up before the line is used", confirmHead, confirmRows(v))
}

func openTable(v *Verdict) *table {
	var rows [][]string
	for i, m := range gaps(v) {
		rows = append(rows, []string{question(i), m.title(), m.ask, m.waiting(true), strings.Join(m.facts, ", ")})
	}
	return newTable("open-table", number(len(rows), "thing")+" to find out", []string{"Mark", "Not known", "Find out", "Waiting"}, cut(rows, 4))
}

// cut keeps the first n cells of every row.
func cut(rows [][]string, n int) [][]string {
	for i := range rows {
		rows[i] = rows[i][:n]
	}
	return rows
}

// question is the mark of a thing to find out, counted from 0.
func question(i int) string { return "Q" + strconv.Itoa(i+1) }

func caseTable(v *Verdict) *table {
	t := newTable("cases-table", "Gauge pressure each case can bring; the bars share one scale", caseHead, caseRows(v))
	if t == nil {
		return nil
	}
	var most int64 = 1
	for _, c := range v.Cases {
		most = max(most, c.KPa)
	}
	if at := t.column("Pressure"); at > 0 {
		for i, c := range v.Cases {
			known := strings.ContainsAny(c.Pressure, "0123456789") // an empty bar would pass for no pressure
			t.Rows[i][at].Bar, t.Rows[i][at].Percent = known, percent(c.KPa, most)
		}
	}
	return t
}

// percent is part of whole, none for a vacuum and at least 1 for any pressure.
func percent(part, whole int64) int {
	if part <= 0 || whole <= 0 {
		return 0
	}
	return max(1, int(float64(part)/float64(whole)*100))
}

// Pieces are where a long id may be broken: behind its slashes and underscores.
func (c cell) Pieces() []string {
	return strings.Split(strings.NewReplacer("/", "/\x00", "_", "_\x00").Replace(c.Text), "\x00") // a text has no NUL: see clean
}
