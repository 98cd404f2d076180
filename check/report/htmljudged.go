package report

import "strconv"

// judgedTable has the rules that had something to judge; the rest would bury them.
func judgedTable(v *Verdict, full bool) *table {
	names := subjects(v, full)
	var rows [][]string
	for _, j := range v.Judged {
		if len(j.Judged)+len(j.CouldNot) > 0 {
			rows = append(rows, []string{j.Rule, j.Title, j.Severity, names(j.Judged), names(j.CouldNot), strconv.Itoa(j.Found)})
		}
	}
	return newTable("judged-table", "Rules that were applied, and to what",
		[]string{"Rule", "Looks for", "If found", "Judged", "Could not judge", "Findings"}, rows)
}

func notJudgedTable(v *Verdict, full bool) *table {
	names := subjects(v, full)
	var rows [][]string
	for _, j := range v.Judged {
		if len(j.Judged)+len(j.CouldNot) == 0 {
			rows = append(rows, []string{j.Rule, j.Title, names(j.NotApplicable)})
		}
	}
	return newTable("beside-table", "Rules that did not apply to this line", []string{"Rule", "Looks for", "Did not apply to"}, rows)
}

func digestTable(v *Verdict) *table {
	t := newTable("record-table", "What the verdict rests on, with its SHA-256 sum", []string{"SHA-256 of", "Sum"}, digestRows(v.Digests, true))
	if at := t.column("Sum"); at > 0 {
		for i := range t.Rows {
			t.Rows[i][at].Class = "sum"
		}
	}
	return t
}

// onParts shortens what was judged to a count and the drawn parts concerned; what is on no part is named in full.
func onParts(names, drawn []string) string {
	var parts []string
	for _, name := range names {
		known := false
		for _, d := range drawn {
			if mentions(name, d) {
				parts, known = add(parts, d), true
			}
		}
		if !known {
			parts = add(parts, name)
		}
	}
	if len(parts) == len(names) || len(names) == 0 {
		return list(parts)
	}
	return number(len(names), "thing") + " on " + list(parts)
}

// subjects is how a list of subjects is written: all of them, or by part.
func subjects(v *Verdict, full bool) func([]string) string {
	if full {
		return list
	}
	drawn := drawnThings(v)
	return func(names []string) string { return onParts(names, drawn) }
}
