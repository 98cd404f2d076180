package inspect

import (
	"regexp"
	"slices"
	"strings"

	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

// stated is a pressure of a plate that the sheet has too. Of two that differ the lower counts.
func stated(of sheet.Of[units.Pressure], key, label string, to *sheet.Of[units.Pressure]) []Field {
	if !of.Set {
		return nil
	}
	return []Field{another(leaf(key, Read, label, to, units.ParsePressure), func(text string) bool {
		p, err := units.ParsePressure(text)
		return err == nil && gauge(p) > gauge(of.V)
	})}
}

// made is the date of a hose. Of two that differ the earlier counts.
func made(p *sheet.Part) Field {
	was := p.Made.V
	return another(leaf("made", Read, "date it was made", &p.Made, units.ParseDate), func(text string) bool {
		d, err := units.ParseDate(text)
		return err == nil && d.Days > was.Days
	})
}

// another doubts a plate that is not as the sheet says: it is misread, or another part stands there than the one judged. What
// is better than the sheet does not count, or a slip of the pen would clear what the sheet fails.
func another(f Field, better func(text string) bool) Field {
	put := f.put
	f.doubt = func(text string) string {
		if f.same(text) {
			return ""
		}
		return f.Key + " reads " + text + ", and the sheet says " + f.Expect + ": it is misread, or it is not the part judged. The worse of the two counts; look again, or put the sheet right"
	}
	f.put = func(text string) error {
		if better(text) {
			return nil
		}
		return put(text)
	}
	return f
}

// printed doubts a hose that lacks a mark with a number which the sheet has: standard, size, pressure. Of marks without one the
// sheet gives the sort, such as maker; and a year is asked for by itself.
func printed(f Field) Field {
	f.doubt = func(text string) string {
		on := marks(text)
		for _, m := range strings.Split(f.Expect, ",") {
			word := strings.ToLower(tight(m))
			if strings.ContainsAny(word, "0123456789") && !year.MatchString(word) && !slices.Contains(on, word) {
				return "marks lack " + strings.TrimSpace(m) + ", which the sheet has: it is misread, or it is not the hose judged; look again, or put the sheet right"
			}
		}
		return ""
	}
	return f
}

var year = regexp.MustCompile(`^(19|20)[0-9]{2}(-[0-9]{2})*$`)

func marks(text string) []string { return strings.Split(strings.ToLower(tight(text)), ",") }

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
	if !fuel {
		return f
	}
	return lost(f, "the connection to earth that the sheet has is not there, on a line that carries what can burn", "Connect it, measure it, and look again before anything flows.")
}

// lost rejects what the sheet says yes to and the reading no.
func lost(f Field, says, mend string) Field {
	f.mend = mend
	f.unlike = func(text string) string {
		if there, err := yes(text); err != nil || there || !f.same("yes") {
			return ""
		}
		return says
	}
	return f
}
