package inspect

import (
	"slices"
	"strings"

	"lineworthy/catalog"
	"lineworthy/check/facts"
	"lineworthy/check/report"
	"lineworthy/check/resolve"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

// Shown prints a gauge pressure in the units of the sheet.
type Shown interface {
	Pressure(units.GaugePressure) string
}

// List is the list for one line. It holds on to the sheet it was made from: Merge writes readings into it.
type List struct {
	Line, Title, Sheet, Sum string // Sum is the SHA-256 of the sheet
	AsOf                    string
	Verdict                 string // what the sheet alone is judged to be; see Judged
	Items                   []*Item
	Groups                  []Group
	Tests                   []LeakTest
	Holds                   []Hold
	Equipment               []Advice
	line                    *sheet.Line
	cat                     *catalog.Catalog
}

// Hold is a point beyond which nobody goes until it is passed.
type Hold struct{ ID, Text string }

// Advice is one thing to wear or to have at hand.
type Advice struct{ Text, Why string }

// New makes the list. The error is sheet.Problems when a name is not in the catalog.
func New(s *sheet.Line, cat *catalog.Catalog, asOf units.Date, f *facts.Facts, shown Shown) (*List, error) {
	line, err := resolve.Resolve(s, cat, resolve.Options{AsOf: asOf})
	if err != nil {
		return nil, err
	}
	l := &List{
		Line: s.ID.V, Title: s.Title.V, Sheet: s.File, Sum: s.Sum, AsOf: line.AsOf.String(), line: s, cat: cat, Verdict: "It does not say whether the line is fit: see lineworthy check.",
		Items: walk(line, f, cat), Equipment: equipment(line, f),
	}
	for _, r := range line.Runs {
		l.Tests = append(l.Tests, leakTest(r, f, shown))
	}
	l.Holds = holds(line, f)
	l.Groups = group(l.Items)
	return l, nil
}

// Judged notes what the rules say of the sheet, so that nobody walks off with the list of a line that must not be used.
func (l *List) Judged(v *report.Verdict) {
	word := string(v.Word)
	switch v.Word {
	case report.Unfit:
		word = "UNFIT, and not to be used,"
	case report.Unproven:
		word = "UNPROVEN, not shown to be safe to use,"
	}
	l.Verdict = "By its sheet the line is " + word + " on " + v.AsOf + ": " + v.Reason + " See lineworthy check."
}

// setAside are the parts and vessels that the sheet keeps out of pressure tests.
func setAside(l *resolve.Line) (out []string) {
	for _, r := range l.Runs {
		if t := r.Sheet.Test; t != nil {
			for _, name := range t.Isolated {
				out = append(out, name.V)
			}
		}
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// regulators are those with a set pressure, which no plate shows.
func regulators(l *resolve.Line) (out []string) {
	for _, r := range l.Runs {
		for _, p := range r.Parts {
			if p.Sheet.Kind.V == "regulator" && p.Sheet.Set.Set {
				out = append(out, p.ID+" set to "+p.Sheet.Set.Text)
			}
		}
	}
	return out
}

func holds(l *resolve.Line, f *facts.Facts) []Hold {
	out := []Hold{
		{"data-sheets", "The safety data sheets of every fluid are at hand and were read; protective equipment is worn."},
		{"items", "Every part, face and seal of this list was looked at, and nothing is rejected. No connection is made before."},
	}
	if f.Line.Flammable {
		out = append(out, Hold{"bonding", "Bonding is connected and measured: at most 10 ohm over metal all the way (practice, no source)."})
	}
	if set := regulators(l); len(set) > 0 {
		out = append(out, Hold{"regulators", "With the flow shut each regulator holds its pressure and does not creep: " + strings.Join(set, ", ") + "."})
	}
	if len(l.Nearby) > 0 {
		out = append(out, Hold{"right-point", "A second person read the label at the receiving point aloud, and it is the one of this sheet."})
	}
	if f.Line.RemoteStop.V || f.Line.AutomaticStop.V {
		out = append(out, Hold{"stop", "The stop of the sheet was tried today, and the flow can be ended with it."})
	}
	if aside := setAside(l); len(aside) > 0 {
		out = append(out, Hold{"after-test", "What was blanked off or taken out for the pressure test is back, and every blank is out: " + strings.Join(aside, ", ") + "."})
	}
	return append(out, Hold{"leak-test", "Every leak test of this list is passed. No product enters the line before."})
}
