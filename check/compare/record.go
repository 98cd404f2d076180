package compare

import (
	"fmt"
	"slices"
	"strings"

	"lineworthy/check/report"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

// Entry is one thing the change record must hold and what the comparison can say of it.
type Entry struct {
	Item  string       `json:"item"`
	Holds string       `json:"holds"`
	Done  bool         `json:"stated"` // the new sheet states it; what is stated must still be true
	Basis report.Basis `json:"basis"`
}

// Temporary is a change that ends.
type Temporary struct {
	Until    string `json:"until"`
	DaysLeft int    `json:"days_left"` // from the day the new sheet is judged for; below zero when it is over
	Says     string `json:"says"`
}

func temporary(l *sheet.Line, asOf string) *Temporary {
	on, err := units.ParseDate(asOf)
	if l.Change == nil || !l.Change.Until.Set || err != nil {
		return nil
	}
	until := l.Change.Until.V
	t := &Temporary{Until: until.String(), DaysLeft: until.DaysSince(on)}
	if t.DaysLeft < 0 {
		t.Says = fmt.Sprintf("The temporary change ended on %s, %s before %s. Take it back, or have it reviewed anew.", t.Until, count(-t.DaysLeft, "day", "days"), asOf)
		return t
	}
	t.Says = fmt.Sprintf("The change is temporary until %s, %s from %s. Set a date to take it back.", t.Until, count(t.DaysLeft, "day", "days"), asOf)
	return t
}

// record is the list of 29 CFR 1910.119(l)(2) to (5) and (i). Nothing is to be recorded where the design is as before.
func record(r *Review, l *sheet.Line) []Entry {
	if r.Kind.Answer == NoChange || r.Kind.Answer == InKind {
		return []Entry{}
	}
	c := l.Change
	if c == nil {
		c = &sheet.Change{}
	}
	return []Entry{
		{"Which change it is", or(join(c.Record.Text, c.What.Text), "no record is named: write change.record and change.what"), c.Record.Set, law("(l)(1)")},
		{"Technical basis", "to write; it must answer for: " + strings.Join(about(r), ", "), false, law("(l)(2)(i)")},
		{"Impact on safety and health", "to write; this comparison is a part of it: " + impact(r), false, law("(l)(2)(ii)")},
		{"Changes of operating procedures", procedures(r), false, law("(l)(2)(iii)")},
		{"Time period", or(c.Until.Text, "no end is stated, so it counts as permanent: write change.until for a temporary one"), c.Until.Set, law("(l)(2)(iv)")},
		{"Authorisation", authorised(c, r.New.AsOf), c.Authorised.Set, law("(l)(2)(v)")},
		{"Training", "to write: who works or maintains the line is told and trained before start-up", false, law("(l)(3)")},
		{"Process safety information", "to write: bring drawings, ratings, materials and relief basis up to date", false, law("(l)(4)")},
		{"Operating procedures", "to write: bring them up to date where they are affected", false, law("(l)(5)")},
		{"Pre-startup review", "to write: done before the fluid is let in, where the change alters the process safety information", false, law("(i)")},
	}
}

func authorised(c *sheet.Change, asOf string) string {
	switch {
	case !c.Authorised.Set:
		return "no date is stated: write change.authorised once it is given"
	case c.Authorised.V.String() > asOf:
		return c.Authorised.Text + ", which is after the day the line is judged for, " + asOf
	}
	return c.Authorised.Text
}

// about are the aspects of the design that differ.
func about(r *Review) []string {
	var out []string
	for _, c := range r.Changes {
		if c.Design && !slices.Contains(out, c.Aspect) {
			out = append(out, c.Aspect)
		}
	}
	return append(out, map[bool][]string{true: {"the values that stand on one sheet only"}}[len(out) == 0]...)
}

func impact(r *Review) string {
	n := map[string]int{}
	for _, m := range r.Findings {
		n[m.Way]++
	}
	return fmt.Sprintf("%s before, %s now; %s, %s", r.Old.Word, r.New.Word,
		count(n[Appears]+n[Worsens], "finding appears or worsens", "findings appear or worsen"), count(n[Clears]+n[Eases], "clears or eases", "clear or ease"))
}

// touching are the aspects that a procedure for the operators usually speaks of (practice).
var touching = []string{aRun, aFluid, aConnection, aSafeguard, aSetting, aRelief, aPart}

func procedures(r *Review) string {
	var hit []string
	for _, a := range about(r) {
		if slices.Contains(touching, a) {
			hit = append(hit, a)
		}
	}
	if len(hit) == 0 {
		return "to write, or to state that there are none"
	}
	return "to write; procedures usually speak of: " + strings.Join(hit, ", ")
}

func or(text, otherwise string) string {
	if text == "" {
		return otherwise
	}
	return text
}

func join(a, b string) string { return strings.Trim(a+", "+b, ", ") }
