package report

import "strings"

func textConfirm(p *page, v *Verdict) {
	if len(v.Confirm) == 0 {
		p.section(bold, "TO CONFIRM:", "nothing.")
		return
	}
	p.section(bold, "TO CONFIRM:", number(len(v.Confirm), "value")+" to look up before the line is used.")
	p.lines("")
	p.table(confirmHead, confirmRows(v))
	p.text("", legend(v))
}

var confirmHead = []string{"What", "Where to look", "How known", "Used by"}

func confirmRows(v *Verdict) [][]string {
	var rows [][]string
	for _, c := range v.Confirm {
		rows = append(rows, []string{c.What, where(c), c.Standing, strings.Join(c.UsedBy, ", ")})
	}
	return rows
}

// legend explains the standings that the table of values to confirm uses.
func legend(v *Verdict) string {
	var told []string
	for _, s := range standings {
		for _, c := range v.Confirm {
			if c.Standing == s.word {
				told = append(told, s.word+" = "+s.means)
				break
			}
		}
	}
	if len(told) == 0 {
		return ""
	}
	return "(" + strings.Join(told, "; ") + ")"
}

func textMissing(p *page, v *Verdict) {
	gs := gaps(v)
	if len(gs) == 0 {
		p.section(bold, "COULD NOT BE JUDGED:", "nothing was left open.")
		return
	}
	p.section(bold, "COULD NOT BE JUDGED:", missingLine(len(gs)))
	for _, m := range gs {
		p.lines("")
		p.lines(wrap("  - ", "    ", m.title(), p.width)...)
		p.text("    Find out: ", m.ask)
		p.text("    Waiting:  ", m.waiting(p.full))
		if p.full {
			p.text("    Named:    ", strings.Join(m.facts, ", "))
		}
	}
}

func missingLine(n int) string {
	return number(n, "thing") + " to find out. What is not known is never counted as good."
}

// title is which parts are concerned and what is not known of them.
func (m *missing) title() string {
	why := m.why
	if why == "" {
		why = "not stated"
	}
	if len(m.subjects) == 0 {
		return why
	}
	return strings.Join(m.subjects, ", ") + ": " + why
}

// waiting is how many checks wait for this; a full report names them.
func (m *missing) waiting(full bool) string {
	text := number(len(m.rules), "check")
	if full && len(m.rules) > 0 {
		text += " (" + strings.Join(m.rules, ", ") + ")"
	}
	return text
}
