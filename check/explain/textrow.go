package explain

import (
	"lineworthy/check/report"
	"strings"
)

func known(s string) string {
	if s == "" {
		return "not known"
	}
	return s
}

func orNone(n int, none string) string {
	if n == 0 {
		return none
	}
	return ""
}

func writtenRows(all []Written) [][]string {
	var rows [][]string
	for _, w := range all {
		rows = append(rows, []string{w.Key, w.Text, w.Position})
	}
	return rows
}

func valueRows(all []Value) [][]string {
	var rows [][]string
	for _, v := range all {
		rows = append(rows, []string{v.Row, v.What, v.document(), v.Standing})
	}
	return rows
}

func restRows(all []Value) [][]string {
	var rows [][]string
	for _, v := range all {
		rows = append(rows, []string{v.What, v.document(), v.Standing})
	}
	return rows
}

func (v Value) document() string {
	text := strings.Trim(v.Source+", "+v.Clause, ", ")
	if text == "" {
		return "no document is known"
	}
	return text
}

// TopicsText lists what can be explained.
func TopicsText(v *report.Verdict, topics []Topic, o report.Options, asMarkdown bool) string {
	p := report.NewPaper(o, asMarkdown)
	p.Title(v.Word, strings.ToUpper(string(v.Word)), v.Line+" "+v.Title)
	p.Para("", "Ask for any of these by its name: lineworthy explain "+v.Sheet+" NAME")
	var rows [][]string
	for _, t := range topics {
		rows = append(rows, []string{t.Name, t.Kind, t.Says})
	}
	p.Table([]string{"Name", "What", "How it stands"}, rows)
	return p.String()
}
