package facts

import (
	"regexp"
	"slices"
	"strings"

	"lineworthy/check/measure"
	"lineworthy/check/resolve"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

var (
	pressureFigure  = regexp.MustCompile(`(?i)\d+\s*(psi|bar|kpa|mpa|kgf)`)
	pressureMark    = regexp.MustCompile(`(?i)\d\s*(psi|bar|kpa|mpa|kgf)`)
	yearMark        = regexp.MustCompile(`\b(19|20)\d\d\b`)
	standardMark    = regexp.MustCompile(`(?i)^\s*(astm|bs|din|en|gb|iso|jis|nf|sae|ul)\b`) // its numbers are no years of making
	temperatureMark = regexp.MustCompile(`(?i)-?\d+\s*°\s*[cf]`)
	notFor          = regexp.MustCompile(`(?i)\b(not?|never|except|without)\b`)
)

// marks reads what is printed on the hose. A list that is written is taken as complete.
func (b *builder) marks(p *resolve.Part, h *Hose) {
	s := p.Sheet
	h.MarksStated = s.Marks != nil
	if !h.MarksStated {
		return
	}
	all := words(s.Marks)
	text := strings.ToLower(strings.Join(all, " | "))
	h.MarkedAmmonia = Yes(marked(all, "ammonia"))
	h.MarkedLPG = Yes(marked(all, "lpg", "lp-gas", "lp gas"))
	h.MarkedPressure = Yes(hasPressure(text))
	h.MarkedYear = Yes(slices.ContainsFunc(all, isYear))
	h.MarkedTested = Yes(slices.ContainsFunc(all, func(m string) bool { return says(m, "test") && yearMark.MatchString(m) }))
	h.MarkedTemps = Yes(strings.Count(text, "°") > 1 && len(temperatureMark.FindAllString(text, 2)) == 2)
	h.MarkedBurst = Yes(slices.ContainsFunc(all, func(m string) bool { return says(m, "burst", "test", "proof") && pressureMark.MatchString(m) }))
	h.MarkedMaker = Yes(strings.Contains(text, "maker"))
}

// marked says whether one of the marks names the service; one that says "not for" it does not.
func marked(marks []string, names ...string) bool {
	return slices.ContainsFunc(marks, func(mark string) bool {
		low := strings.ToLower(mark)
		return slices.ContainsFunc(names, func(name string) bool { return strings.Contains(low, name) }) && !notFor.MatchString(mark)
	})
}

// hasPressure says whether a text in small letters holds a pressure: a figure, perhaps a space, and a unit. Every hose
// has a mark to look through, and a pattern took ten times as long.
func hasPressure(text string) bool {
	for _, unit := range []string{"psi", "bar", "kpa", "mpa", "kgf"} {
		for rest := text; ; {
			before, after, found := strings.Cut(rest, unit)
			if !found {
				break
			}
			before = strings.TrimRight(before, " \t\n\f\r")
			if n := len(before); n > 0 && before[n-1] >= '0' && before[n-1] <= '9' {
				return true
			}
			rest = after
		}
	}
	return false
}

// says looks for a word in a mark without a pattern: most marks have none of them, and patterns are slow.
func says(mark string, words ...string) bool {
	low := strings.ToLower(mark)
	return slices.ContainsFunc(words, func(word string) bool { return strings.Contains(low, word) })
}

// isYear says whether the mark holds a year of making: not the edition of a standard, nor a pressure of 2000 psi,
// nor the day of a test.
func isYear(mark string) bool {
	if !strings.Contains(mark, "19") && !strings.Contains(mark, "20") {
		return false // most marks, and patterns are slow
	}
	if len(mark) == 4 && strings.Trim(mark, "0123456789") == "" {
		return mark[:2] == "19" || mark[:2] == "20" // a year and nothing else, as most hoses have it
	}
	left := mark
	if hasPressure(strings.ToLower(mark)) {
		left = pressureFigure.ReplaceAllString(mark, "")
	}
	return yearMark.MatchString(left) && !standardMark.MatchString(mark) && !says(mark, "test")
}

func words(list []sheet.Of[string]) []string {
	out := []string{}
	for _, w := range list {
		out = append(out, w.V)
	}
	return out
}

// dates turns the days of tests into spans up to the day the verdict is for.
func (b *builder) dates(p *resolve.Part, h *Hose) {
	s := p.Sheet
	since := func(o sheet.Of[units.Date]) Int {
		if !o.Set {
			return Int{}
		}
		return Know(int64(b.l.AsOf.DaysSince(o.V)))
	}
	h.TestedDays, h.InspectedDays, h.AgeDays, h.ResistanceDays = since(s.Tested), since(s.Inspected), since(s.Made), since(s.ResistTest)
	h.IntervalDays = b.interval(p)
	b.life(p, h)
}

// interval is the shorter of the class's test interval and the one stated, in days from the last test.
func (b *builder) interval(p *resolve.Part) Int {
	months := units.Months(0)
	if p.Hose != nil && p.Hose.TestMonths != nil {
		months = units.Months(p.Hose.TestMonths.Value)
	}
	if e := p.Sheet.TestEvery; e.Set && (months == 0 || e.V < months) {
		months = e.V
	}
	if months == 0 || !p.Sheet.Tested.Set {
		return Int{}
	}
	from := p.Sheet.Tested.V
	return Know(int64(from.AddMonths(months).DaysSince(from)))
}

// life is the shorter of the class's service life and the one stated.
func (b *builder) life(p *resolve.Part, h *Hose) {
	months := units.Months(0)
	if p.Hose != nil && p.Hose.LifeYears != nil {
		months = units.Months(p.Hose.LifeYears.Value * 12)
	}
	if e := p.Sheet.Life; e.Set && (months == 0 || e.V < months) {
		months = e.V
	}
	h.LifeStated = months > 0
	if h.LifeStated && p.Sheet.Made.Set {
		from := p.Sheet.Made.V
		h.LifeDays = Know(int64(from.AddMonths(months).DaysSince(from)))
	}
}

// condition reads the visual inspection, the electrical grade and the bend.
func (b *builder) condition(p *resolve.Part, h *Hose) {
	s := p.Sheet
	if len(s.Condition) > 0 {
		h.ConditionKnown = Yes(true)
	}
	for _, w := range words(s.Condition) {
		if w != "sound" && w != "cover-pricked" {
			h.Defects = append(h.Defects, w)
		}
	}
	h.Grade = s.Grade.V
	if h.Grade == "" && p.Hose != nil && p.Hose.Electrical != nil && len(p.Hose.Electrical.Values) == 1 {
		h.Grade = p.Hose.Electrical.Values[0]
	}
	if s.Resistance.Set {
		h.ResistanceOhm = b.keep(units.RoundUp(float64(s.Resistance.V)))
	}
	if radius, ok := bend(s); ok {
		h.BendMM = b.keep(units.MillimetreDown(radius))
	}
	h.LeastBendMM = b.leastBend(p)
}

// straight stands for the radius of a hose laid without a bend.
const straight units.Length = 1000

// bend is the tightest of what is measured and what follows from how the hose is laid: a U of the spacing of its ends, an
// offset as a beam held at both ends, which bends hardest at the fittings (plane geometry).
func bend(s *sheet.Part) (units.Length, bool) {
	radius, known := s.Bend.V, s.Bend.Set
	laid, ok := units.Length(0), false
	switch l := s.Lay; {
	case l == nil:
	case l.Form.V == "straight":
		laid, ok = straight, true
	case l.Form.V == "u" && l.Spacing.Set:
		laid, ok = measure.UBendRadius(l.Spacing.V), true
	case l.Form.V == "offset" && l.Offset.Set && l.Span.Set:
		laid, ok = measure.BeamRadius(l.Span.V, l.Offset.V), true
	}
	if ok && (!known || laid < radius) {
		return laid, true
	}
	return radius, known
}

// leastBend is the class's smallest bend radius for the size, else the one the maker states; of both the larger, unless
// a document stands behind the maker's figure.
func (b *builder) leastBend(p *resolve.Part) Int {
	s := p.Sheet
	class, known := 0.0, false
	if p.Hose != nil && s.Size.Set {
		class, known = sized(p.Hose.Bend, s.Size.V)
	}
	if s.LeastBend.Set && (!known || s.Evidence.Set || float64(s.LeastBend.V)*1000 > class) {
		b.rests(p.ID+" least bend", "smallest bend radius of "+p.ID+", "+s.LeastBend.Text, stated(s.Evidence.V), p.ID)
		return b.keep(units.MillimetreUp(s.LeastBend.V))
	}
	if !known {
		return Int{}
	}
	b.rests(p.Hose.ID+" bend", "smallest bend radius of "+p.Hose.Name, p.Hose.Bend.Origin, p.ID)
	return b.keep(units.RoundUp(class))
}
