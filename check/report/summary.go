package report

import (
	"errors"
	"io"
	"strconv"
	"strings"
)

// Summary writes one row for each verdict, in the order given, and how many there are of each word.
// It refuses all of them when one contradicts itself.
func Summary(w io.Writer, all []*Verdict, o Options) error {
	var faults []error
	var rows [][]string
	counts := map[Word]int{}
	for _, v := range all {
		v, err := ready(v)
		if err != nil {
			faults = append(faults, err)
			continue
		}
		counts[v.Word]++
		rows = append(rows, []string{v.Line, capitals(v.Word), tally(count(v, stop)), tally(count(v, condition)), tally(len(gaps(v))), v.Reason})
	}
	if err := errors.Join(faults...); err != nil {
		return err
	}
	p := newPage(o)
	if len(rows) > 0 {
		p.table([]string{"Line", "Verdict", "Stops", "Conditions", "Missing", "Reason"}, rows)
		p.lines("")
	}
	p.text("", number(len(all), "line")+countLine(counts))
	p.text("", StandingCautions()[0])
	_, err := io.WriteString(w, p.String())
	return err
}

// tally leaves none as a dash, so that the eye finds the numbers.
func tally(n int) string {
	if n == 0 {
		return "-"
	}
	return strconv.Itoa(n)
}

func countLine(counts map[Word]int) string {
	var parts []string
	for _, w := range verdictWords {
		if counts[w] > 0 {
			parts = append(parts, strconv.Itoa(counts[w])+" "+capitals(w))
		}
	}
	if len(parts) == 0 {
		return "."
	}
	return ": " + strings.Join(parts, ", ") + "."
}
