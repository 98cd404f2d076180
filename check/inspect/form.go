package inspect

import (
	"fmt"
	"strings"
)

// Form is the list as a record to fill in, YAML with what the sheet says beside each reading.
func (l *List) Form() string {
	var b strings.Builder
	fmt.Fprintf(&b, "# Inspection record of line %s. Fill in every reading; an empty one is never taken as good.\n", oneLine(l.Line))
	fmt.Fprintf(&b, "# Then: lineworthy inspect SHEET --record THIS --store RECORDS.jsonl --who NAME\n")
	fmt.Fprintf(&b, "# %s\n", oneLine(l.Verdict))
	fmt.Fprintf(&b, "line: %q\nsheet_sha256: %q\nday: \"\" # of the inspection, like %s\nitems:\n", l.Line, l.Sum, l.AsOf)
	for _, i := range l.Items {
		fmt.Fprintf(&b, "  - id: %q # %s\n", i.ID, oneLine(strings.TrimSpace(i.Kind+" "+i.Name)))
		for _, f := range i.Fields {
			fmt.Fprintf(&b, "    %s: \"\" # %s%s\n", f.Key, oneLine(f.Label), expects(f))
		}
	}
	b.WriteString("leak_tests:\n")
	for _, t := range l.Tests {
		fmt.Fprintf(&b, "  - run: %q # %s\n    pressure: \"\" # planned: %s\n    fluid: \"\" # %s\n    leaks: \"\" # yes or no\n", t.Run, oneLine(t.Why), orNone(t.Pressure), oneLine(t.Fluid))
	}
	b.WriteString("holds:\n")
	for _, h := range l.Holds {
		fmt.Fprintf(&b, "  - id: %q # %s\n    passed: \"\" # yes or no\n", h.ID, oneLine(h.Text))
	}
	return b.String()
}

func expects(f Field) string {
	if f.Expect == "" {
		return ""
	}
	return "; sheet: " + oneLine(f.Expect)
}

func orNone(s string) string {
	if s == "" {
		return "none can be given"
	}
	return s
}

// oneLine keeps a text of the sheet from ending the comment it stands in.
func oneLine(s string) string {
	return strings.Map(func(r rune) rune {
		if r < ' ' || r == 0x7f || r == '\u0085' || r == '\u2028' || r == '\u2029' {
			return ' '
		}
		return r
	}, s)
}
