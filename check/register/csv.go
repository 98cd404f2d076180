package register

import (
	"cmp"
	"encoding/csv"
	"io"
	"strconv"
	"strings"
)

var heads = map[string][]string{
	"verdicts": {"path", "line", "title", "verdict", "as_of", "stops", "conditions", "missing", "to_confirm", "first_reason", "sheet_sha256"},
	"faults":   {"path", "fault"},
	"due":      {"date", "days", "what", "line", "part", "tag", "path", "earlier_sheet"},
	"evidence": {"frees_so_far", "frees_alone", "lines", "what", "standing", "source", "clause"},
	"hoses":    {"kind", "tag", "date", "count", "lines", "text"},
	"impact":   {"path", "line", "was", "is", "flips", "appeared", "cleared", "differs"},
}

// csv writes one table (RFC 4180). Lists within a cell are parted by "; ".
func (r *Register) csv(out io.Writer, table string) error {
	table = cmp.Or(table, "verdicts")
	w := csv.NewWriter(out)
	w.UseCRLF = true
	if err := w.Write(heads[table]); err != nil {
		return err
	}
	err := r.each(table, func(_ string, row any) error { return w.Write(cells(row)) })
	if err != nil {
		return err
	}
	w.Flush()
	return w.Error()
}

func cells(row any) []string {
	n, joined := strconv.Itoa, func(s []string) string { return strings.Join(s, "; ") }
	switch x := row.(type) {
	case Row:
		return plain(x.Path, x.Line, x.Title, string(x.Word), x.AsOf, n(x.Stops), n(x.Conditions), n(x.Missing), n(x.Confirm), x.First, x.Sum)
	case Fault:
		return plain(x.Path, x.Text)
	case DueLine:
		return append([]string{x.Date, n(x.Days)}, plain(x.What, x.Line, x.Part, x.Tag, x.Path, strconv.FormatBool(x.Earlier))...)
	case Evidence:
		return plain(n(x.Freed), n(x.Alone), n(x.Lines), x.What, x.Standing, x.Source, x.Clause)
	case Meeting:
		return plain(x.Kind, x.Tag, x.Date, n(x.Count), joined(x.Lines), x.Text)
	case Change:
		return plain(x.Path, x.Line, x.Was, x.Is, strconv.FormatBool(x.Flips), joined(x.Appeared), joined(x.Cleared), joined(x.Differs))
	}
	return nil
}

// plain puts an apostrophe before a text that a spreadsheet would carry out as a formula: sheets come from many hands.
func plain(all ...string) []string {
	for i, s := range all {
		if s != "" && strings.ContainsRune("=+-@\t\r", rune(s[0])) {
			all[i] = "'" + s
		}
	}
	return all
}
