package inspect

import (
	"fmt"
	"strings"

	"lineworthy/check/resolve"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

// Who says when a thing is out of use. Federal law is the 2015 edition, published: check the current code.
const (
	roadHose = "49 CFR 180.416(g)(1) (2015 edition, published), written for road tanks of liquefied gas"
	roadPipe = "49 CFR 180.416(g)(2) (2015 edition, published), written for road tanks of liquefied gas"
	grades   = "ISO 2928:2021, electrical properties (published); EN 12115 for the grades through the wall (restated)"
	practice = "practice, no source"

	// These stand with dates, which belong to one item.
	intervalOf = "The interval is the sheet's; the date on the thing itself decides"
	lifeOf     = "The life is the sheet's; the date on the hose itself decides"
)

// mostOhm are the limits of the electrical grades from end to end.
var mostOhm = map[string]units.Resistance{"M": 100, "M/T": 100, "Ohm": 1e6, "Ohm/T": 1e6}

func ohms(r units.Resistance) string {
	if r >= 1e6 {
		return r.Format("Mohm")
	}
	return r.String()
}

func limitText(grade string) string {
	most, ok := mostOhm[grade]
	if !ok {
		return ", grade " + grade + " has no limit"
	}
	return fmt.Sprintf("; grade %s: at most %s", grade, ohms(most))
}

func hoseRejects(p *resolve.Part) []Reject {
	out := []Reject{
		{"cover worn or cut so far that the reinforcement shows; kinked or flattened for good; soft spots, bulges or a loose cover; couplings damaged, slipped or worn; bolts loose or missing", roadHose},
		{"identity not the one the line is approved with, marks not to be read, test overdue", practice},
	}
	if p.Hose != nil && p.Hose.Standard == "ISO 10380" {
		out = append(out, Reject{"braid of a metal hose damaged", roadPipe})
	}
	if most, ok := mostOhm[p.Sheet.Grade.V]; ok {
		out = append(out, Reject{fmt.Sprintf("more than %s from end to end", ohms(most)), grades})
	}
	return append(append(out, due(p.Sheet)...), old(p.Sheet)...)
}

// old says from which day a hose is past its service life.
func old(p *sheet.Part) []Reject {
	if !p.Made.Set || !p.Life.Set {
		return nil
	}
	return []Reject{{"older than " + p.Life.Text + "; by the date of the sheet its life ends on " + p.Made.V.AddMonths(p.Life.V).String(), lifeOf}}
}

// due says from which day the test is overdue.
func due(p *sheet.Part) []Reject {
	if !p.Tested.Set || !p.TestEvery.Set {
		return nil
	}
	return []Reject{{"the last test is more than " + p.TestEvery.Text + " ago; by the date of the sheet it falls due on " + p.Tested.V.AddMonths(p.TestEvery.V).String(), intervalOf}}
}

func partRejects(p *sheet.Part) []Reject {
	out := []Reject{{"visible leak; bolts loose, missing or badly corroded; a stop valve that does not move; severe corrosion", roadPipe}}
	if p.Kind.V == "relief" {
		out = append(out, Reject{"seal broken, outlet blocked, set pressure not the one of the sheet", practice})
	}
	if p.Kind.V == "gauge" {
		out = append(out, Reject{"does not stand at zero with the line open; glass broken", practice})
	}
	return append(out, due(p)...)
}

var vesselRejects = []Reject{{"dents, cracks, leaks or severe corrosion; plate missing or of another vessel; label of another fluid; vent blocked", practice}}

func jointRejects(j *resolve.Joint) []Reject {
	out := []Reject{{"seal missing, cut, hard, swollen or of another kind; faces scored; threads damaged; ends of different standards forced together", practice}}
	for _, e := range []*resolve.End{j.A, j.B} {
		if e.Sheet != nil && strings.HasPrefix(e.Sheet.Standard.V, "flange") {
			return append(out, Reject{"bolts loose, missing or badly corroded", roadPipe})
		}
	}
	return out
}
