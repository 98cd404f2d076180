package report

import "strconv"

// entry is one numbered advice of the page with the findings it answers.
type entry struct {
	Number                   int
	Severity, Heading, Title string
	Action, Rule             string
	Basis                    []string
	Mark                     mark
	Short                    bool // kept on one page
	Table                    *table
}

const mostTogether = 5 // findings; a longer table is broken rather than moved to the next page

// entries are numbered as in the text report, so that both can be talked about.
func entries(v *Verdict) []entry {
	var out []entry
	for _, s := range severities {
		for _, g := range groups(v, s) {
			n := len(out) + 1
			e := entry{Number: n, Severity: s, Heading: s + ":", Title: g.Title, Action: g.Action, Rule: g.Rule, Short: len(g.items) <= mostTogether, Mark: newMark(s, strconv.Itoa(n)), Table: findingTable(n, g)}
			for _, b := range g.Basis {
				e.Basis = append(e.Basis, cite(b))
			}
			out = append(out, e)
		}
	}
	return out
}

func findingTable(n int, g group) *table {
	var rows [][]string
	for i, f := range g.items {
		no := strconv.Itoa(n)
		if len(g.items) > 1 {
			no += "." + strconv.Itoa(i+1)
		}
		rows = append(rows, []string{no, f.Message, bound(f.Have), bound(f.Need), bound(f.Margin), place(f), sheetColumn(f.Position)})
	}
	return newTable("finding-"+strconv.Itoa(n), "",
		[]string{"No.", "What", "Have", "Need", "Margin", "Where", "Sheet line"}, rows)
}

// sheetColumn is line and column in the sheet, as editors write a place.
func sheetColumn(at *Position) string {
	if at == nil {
		return ""
	}
	return strconv.Itoa(at.Line) + ":" + strconv.Itoa(at.Col)
}
