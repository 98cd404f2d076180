package register

import (
	"bufio"
	"fmt"
	"io"
	"slices"
	"strings"
)

// Formats are the forms that Write knows.
var Formats = []string{"text", "csv", "jsonl"}

// Tables are the parts of a register, in the order in which they are written.
var Tables = []string{"verdicts", "faults", "due", "evidence", "hoses", "impact"}

// Check says which form or table is not known.
func Check(format, table string) error {
	if !slices.Contains(Formats, format) {
		return fmt.Errorf("--format %s: want one of %s", format, strings.Join(Formats, ", "))
	}
	if table != "" && !slices.Contains(Tables, table) {
		return fmt.Errorf("--table %s: want one of %s", table, strings.Join(Tables, ", "))
	}
	return nil
}

// Write writes one table, or all of them when table is empty; CSV has one table only, the verdicts when none is named.
func (r *Register) Write(w io.Writer, format, table string) error {
	out := bufio.NewWriterSize(w, 1<<16)
	var err error
	switch format {
	case "csv":
		err = r.csv(out, table)
	case "jsonl":
		err = r.jsonl(out, table)
	default:
		err = r.text(out, table)
	}
	if err != nil {
		return err
	}
	return out.Flush()
}
