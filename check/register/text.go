package register

import (
	"cmp"
	"errors"
	"fmt"
	"io"
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"
)

const (
	shownRows   = 25 // of a long list; the other forms have all
	reasonWidth = 90 // letters
	nameWidth   = 24 // letters
)

// text writes for people. The verdict table is whole; of the other lists it shows the head and says how to get the rest.
func (r *Register) text(w io.Writer, table string) error {
	parts := map[string]func(io.Writer, int) error{
		"verdicts": r.textVerdicts, "faults": r.textFaults, "due": r.textDue, "evidence": r.textEvidence, "hoses": r.textHoses, "impact": r.textImpact,
	}
	for _, t := range Tables {
		if table == "" || table == t {
			most := shownRows
			if table == t {
				most = len(r.places) * 1000
			}
			if err := parts[t](w, most); err != nil {
				return err
			}
		}
	}
	return nil
}

func (r *Register) textVerdicts(w io.Writer, _ int) error {
	wide := min(max(r.widest, 4), nameWidth)
	fmt.Fprintf(w, "REGISTER on %s\n\n%s  %-11s  %5s  %10s  %7s  %10s  %s\n", r.day, pad("Line", wide), "Verdict", "Stops", "Conditions", "Missing", "To confirm", "First reason")
	err := every(r.Rows(), func(x Row) error { return textRow(w, x, wide) })
	if err != nil {
		return err
	}
	_, err = fmt.Fprintf(w, "\n%s\n%s\n", r.counted(),
		"This is a screening aid: the maker's data, local codes and licensed practice decide. Read the verdict of a line with \"check\" before it is used.")
	return err
}

func textRow(w io.Writer, x Row, wide int) error {
	word, line := strings.ToUpper(string(x.Word)), pad(cut(cmp.Or(x.Line, x.Path), wide), wide)
	if x.Word == "" {
		word = "NO VERDICT"
	}
	_, err := fmt.Fprintf(w, "%s  %-11s  %5s  %10s  %7s  %10s  %s\n", line, word, dash(x.Stops), dash(x.Conditions), dash(x.Missing), dash(x.Confirm), cut(x.First, reasonWidth))
	return err
}

// counted is the register in one sentence.
func (r *Register) counted() string {
	var parts []string
	for _, w := range words {
		if n := r.Count(w); n > 0 {
			parts = append(parts, fmt.Sprintf("%d %s", n, strings.ToUpper(string(w))))
		}
	}
	bad, tool := r.Bad()
	if bad > tool {
		parts = append(parts, fmt.Sprintf("%d could not be read", bad-tool))
	}
	if tool > 0 {
		parts = append(parts, fmt.Sprintf("%d without a verdict by a fault in the tool", tool))
	}
	return plural(len(r.places), "sheet") + ": " + strings.Join(parts, ", ") + "."
}

func (r *Register) textFaults(w io.Writer, most int) error {
	if bad, _ := r.Bad(); bad == 0 {
		return nil
	}
	t := &limited{w: w, most: most, table: "faults"}
	fmt.Fprintf(w, "\nSHEETS WITHOUT A VERDICT\n")
	err := r.table("faults", func(x any) error { return t.line("  %s", x.(Fault).Text) })
	return t.end(err)
}

func (r *Register) textDue(w io.Writer, most int) error {
	t := &limited{w: w, most: most, table: "due"}
	fmt.Fprintf(w, "\nDUE by %s, overdue first\n", daysAfter(r.day, r.o.DueDays))
	err := every(r.Due(), func(d DueLine) error {
		if t.n == most {
			return errEnough
		}
		when := fmt.Sprintf("in %s", plural(d.Days, "day"))
		if d.Days < 0 {
			when = fmt.Sprintf("OVERDUE %s", plural(-d.Days, "day"))
		} else if d.Days == 0 {
			when = "today"
		}
		part := d.Part
		if d.Tag != "" {
			part += " (" + d.Tag + ")"
		}
		if d.Earlier {
			part += ", of an earlier sheet"
		}
		return t.line("  %s  %-18s  %-23s  %s %s", d.Date, when, d.What, d.Line, part)
	})
	if errors.Is(err, errEnough) {
		t.n, err = len(r.dates), nil
	}
	return t.end(err)
}

// errEnough ends a list of which only the length is still wanted.
var errEnough = errors.New("enough")

func (r *Register) textEvidence(w io.Writer, most int) error {
	t := &limited{w: w, most: most, table: "evidence"}
	fmt.Fprintf(w, "\nTO CONFIRM, in the order that frees most lines. %s would be fit once all of it is confirmed\n", plural(r.papers.open, "line"))
	fmt.Fprintf(w, "  %8s  %9s  %s\n", "Fit then", "Rest on it", "Value and where to look")
	err := list(r.Evidence(), func(e Evidence) error {
		return t.line("  %8d  %9d  %s [%s] in: %s", e.Freed, e.Lines, e.What, e.Standing, strings.TrimSpace(e.Source+" "+e.Clause))
	})
	return t.end(err)
}

func (r *Register) textHoses(w io.Writer, most int) error {
	t := &limited{w: w, most: most, table: "hoses"}
	fmt.Fprintf(w, "\nHOSES AND LINE NUMBERS in more than one place\n")
	all, err := r.Meetings()
	if err != nil {
		return err
	}
	err = list(all, func(m Meeting) error {
		where := strings.Join(m.Lines, ", ")
		if m.Count > len(m.Lines) {
			where += fmt.Sprintf(" and %d more", m.Count-len(m.Lines))
		}
		text := m.Text
		if m.Tag != "" {
			text = m.Tag + ": " + text
		}
		return t.line("  %-17s  %s  %s [%s]", m.Kind, m.Date, text, where)
	})
	return t.end(err)
}

func (r *Register) textImpact(w io.Writer, most int) error {
	if !r.Compared() {
		return nil
	}
	t := &limited{w: w, most: most, table: "impact"}
	fmt.Fprintf(w, "\nIMPACT against the earlier state\n")
	flips, changed := map[string]int{}, 0
	err := r.table("impact", func(x any) error {
		c := x.(Change)
		if !c.Flips {
			changed++
			return nil
		}
		flips[c.Was+" to "+c.Is]++
		return t.line("  %s: %s to %s%s%s%s", cmp.Or(c.Line, c.Path), c.Was, c.Is, some("; appeared", c.Appeared), some("; cleared", c.Cleared), some("; differs", c.Differs))
	})
	if err := t.end(err); err != nil {
		return err
	}
	var kinds []string
	for k, n := range flips {
		kinds = append(kinds, fmt.Sprintf("%d %s", n, k))
	}
	slices.Sort(kinds)
	_, err = fmt.Fprintf(w, "  Flips: %s. Same verdict for other reasons: %d.\n", orNone(strings.Join(kinds, ", ")), changed)
	return err
}

func orNone(s string) string {
	if s == "" {
		return "none"
	}
	return s
}

const shownReasons = 4

func some(head string, all []string) string {
	if len(all) == 0 {
		return ""
	}
	text := head + " " + strings.Join(all[:min(len(all), shownReasons)], ", ")
	if more := len(all) - shownReasons; more > 0 {
		text += fmt.Sprintf(" and %d more", more)
	}
	return text
}

// limited writes the head of a list and counts the rest.
type limited struct {
	w     io.Writer
	most  int
	table string
	n     int
}

func (t *limited) line(format string, args ...any) error {
	if t.n++; t.n > t.most {
		return nil
	}
	_, err := fmt.Fprintln(t.w, printed(fmt.Sprintf(format, args...)))
	return err
}

// printed keeps a file name from breaking a line, or from telling the terminal something.
func printed(s string) string {
	if !strings.ContainsFunc(s, unicode.IsControl) {
		return s
	}
	return strings.Map(func(r rune) rune {
		if unicode.IsControl(r) {
			return '?'
		}
		return r
	}, s)
}

func (t *limited) end(err error) error {
	if err != nil {
		return err
	}
	switch more := t.n - t.most; {
	case t.n == 0:
		_, err = fmt.Fprintln(t.w, "  none")
	case more > 0:
		_, err = fmt.Fprintf(t.w, "  and %d more: --table %s shows all\n", more, t.table)
	}
	return err
}

func plural(n int, word string) string {
	if n == 1 {
		return "1 " + word
	}
	return strconv.Itoa(n) + " " + word + "s"
}

func dash(n int) string {
	if n == 0 {
		return "-"
	}
	return strconv.Itoa(n)
}

func pad(s string, wide int) string {
	return s + strings.Repeat(" ", max(0, wide-utf8.RuneCountInString(s)))
}

func cut(s string, wide int) string {
	s = printed(strings.ReplaceAll(s, "\n", " "))
	if utf8.RuneCountInString(s) <= wide {
		return s
	}
	return string([]rune(s)[:wide-1]) + "…"
}
