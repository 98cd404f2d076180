package report

// mark is a small sign in the drawing: its shape says the severity, its text which finding.
type mark struct {
	Severity, Text, Path string
	X, Y                 int
}

// legendMark is a mark with what it means.
type legendMark struct {
	mark
	Means string
}

const open = "open" // something to find out, beside the severities of findings

// shapes are 26 by 18: cut corners for a stop, points for a condition, round for a note, a plain box for a question.
var shapes = map[string]string{
	stop:      "M6 0H20L26 6V12L20 18H6L0 12V6Z",
	condition: "M8 0H18L26 9L18 18H8L0 9Z",
	note:      "M9 0H17A9 9 0 0 1 17 18H9A9 9 0 0 1 9 0Z",
	open:      "M0 0H26V18H0Z",
}

func newMark(severity, text string) mark {
	return mark{Severity: severity, Text: text, Path: shapes[severity]}
}

func legendMarks() []legendMark {
	return []legendMark{
		{newMark(stop, "1"), "cut corners, filled: a finding that stops the line"},
		{newMark(condition, "2"), "points: a condition"},
		{newMark(note, "3"), "rounded: a note"},
		{newMark(open, "Q1"), "dashed box: something to find out"},
	}
}
