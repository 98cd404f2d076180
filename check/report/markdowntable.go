package report

import "strings"

type markdown struct {
	strings.Builder
	full bool
}

// para is a paragraph that is Markdown already; an empty one is left out.
func (d *markdown) para(text string) {
	if text != "" {
		d.WriteString("\n" + text + "\n")
	}
}

func (d *markdown) bullets(items []string) {
	d.WriteString("\n")
	for _, item := range items {
		d.WriteString("- " + escape(item) + "\n")
	}
}

// table is a pipe table without the columns that no row fills.
func (d *markdown) table(head []string, rows [][]string) {
	if len(rows) == 0 {
		return
	}
	head, rows = used(head, rows)
	d.WriteString("\n| " + strings.Join(head, " | ") + " |\n|" + strings.Repeat(" --- |", len(head)) + "\n")
	for _, cells := range rows {
		d.WriteString("|")
		for _, cell := range cells {
			d.WriteString(" " + escape(cell) + " |")
		}
		d.WriteString("\n")
	}
}

// escape keeps text from a sheet from becoming markup: a title must not be able to hide a finding.
func escape(s string) string { return markup.Replace(strings.ReplaceAll(s, "\u00a0", " ")) }

var markup = strings.NewReplacer(`\`, `\\`, "`", "\\`", "*", `\*`, "_", `\_`, "[", `\[`, "]", `\]`,
	"<", `\<`, ">", `\>`, "|", `\|`, "#", `\#`, "~", `\~`, "&", `\&`, "!", `\!`)
