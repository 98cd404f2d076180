package inspect

import (
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

// stated is a pressure of a plate that the sheet has too. Of two that differ the lower counts.
func stated(of sheet.Of[units.Pressure], key, label string, to *sheet.Of[units.Pressure]) []Field {
	if !of.Set {
		return nil
	}
	f := leaf(key, Read, label, to, units.ParsePressure)
	lower := f.put
	f.doubt = func(text string) string {
		if p, err := units.ParsePressure(text); err != nil || gauge(p) <= gauge(of.V) || f.same(text) {
			return ""
		}
		return text + " is more than the " + of.Text + " of the sheet, which counts: it is misread, or it is another part than the one judged; look again, or put the sheet right"
	}
	f.put = func(text string) error {
		if f.doubt(text) != "" {
			return nil
		}
		return lower(text)
	}
	return []Field{f}
}

// made takes no younger hose than that of the sheet: its age is what the verdict counts on.
func made(p *sheet.Part) Field {
	f := leaf("made", Read, "date it was made", &p.Made, units.ParseDate)
	was, put := p.Made, f.put
	f.doubt = func(text string) string {
		if d, err := units.ParseDate(text); err != nil || f.same(text) || d.Days <= latest(was.V) {
			return ""
		}
		return text + " is later than the " + was.Text + " of the sheet, which counts: it is misread, or it is another hose than the one judged; look again, or put the sheet right"
	}
	f.put = func(text string) error {
		if f.doubt(text) != "" {
			return nil
		}
		return put(text)
	}
	return f
}

// latest is the last day the date can mean.
func latest(d units.Date) int {
	if d.MonthOnly {
		return d.AddMonths(1).Days - 1
	}
	return d.Days
}

// exactly rejects what is not as the sheet says, by why.
func exactly(f Field, why, mend string) Field {
	f.mend, f.unlike = mend, mustBe(f, why)
	return f
}

func mustBe(f Field, why string) func(string) string {
	return func(text string) string {
		if f.Expect == "" || f.same(text) {
			return ""
		}
		return f.Key + " reads " + text + ", and the sheet says " + f.Expect + ": " + why
	}
}

// off rejects a bond that the sheet has and the line has not, where something can burn.
func off(f Field, fuel bool) Field {
	f.mend = "Connect it, measure it, and look again before anything flows."
	f.unlike = func(text string) string {
		if on, err := yes(text); !fuel || err != nil || on || f.Expect == "" || !f.same("yes") {
			return ""
		}
		return "the connection to earth that the sheet has is not there, on a line that carries what can burn"
	}
	return f
}
