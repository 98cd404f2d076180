package register

import (
	"bytes"
	"encoding/json"
	"io"
)

// news are the rows that one look at the folder brings. They are written at once, so that a reader never gets half of them.
type news struct {
	out    io.Writer
	format string
	wide   int // letters of a line number
	text   bytes.Buffer
	err    error
}

func (n *news) verdict(e *Entry) {
	if n.format == "jsonl" {
		n.json("verdicts", row(e))
		return
	}
	n.note(textRow(&n.text, row(e), n.wide))
}

// gone tells of a sheet that is no longer there.
func (n *news) gone(e *Entry) {
	if n.format == "jsonl" {
		n.json("gone", struct {
			Path string `json:"path"`
			Line string `json:"line"`
		}{e.Path, e.Line})
		return
	}
	n.text.WriteString(pad(cut(name(e), n.wide), n.wide) + "  GONE         " + printed(e.Path) + " is no longer there\n")
}

func (n *news) json(table string, row any) {
	e := json.NewEncoder(&n.text)
	e.SetEscapeHTML(false)
	n.note(e.Encode(tabled{table, row}))
}

func (n *news) note(err error) {
	if n.err == nil {
		n.err = err
	}
}

func (n *news) end() error {
	if n.err != nil || n.text.Len() == 0 {
		return n.err
	}
	_, err := n.out.Write(n.text.Bytes())
	return err
}
