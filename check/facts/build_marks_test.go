package facts_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"lineworthy/check/facts"
)

func replace(text, old, with string) string { return strings.ReplaceAll(text, old, with) }

func with(t *testing.T, lines ...string) facts.Hose {
	return hose(t, build(t, hoseHead, hoseHead+"        "+strings.Join(lines, "\n        ")+"\n"), "H1")
}

// TestMarks: a list that is written is complete. "Not for ammonia" is no ammonia mark, and the edition of a standard or a
// pressure is no year.
func TestMarks(t *testing.T) {
	for marks, want := range map[string][5]bool{ // ammonia, LPG, pressure, maker, year
		"ANHYDROUS AMMONIA, 350 psi, maker, 2024": {true, false, true, true, true},
		"LP-GAS":                       {false, true, false, false, false},
		"LP GAS, 24 bar":               {false, true, true, false, false},
		"NOT FOR AMMONIA":              {false, false, false, false, false},
		"not for LPG, ammonia":         {true, false, false, false, false},
		"EN 12115 2021":                {false, false, false, false, false},
		"ISO 1953":                     {false, false, false, false, false},
		"2000 psi":                     {false, false, true, false, false},
		"2000 psi 1Q 2021":             {false, false, true, false, true},
		"made 1999":                    {false, false, false, false, true},
		"PN 16":                        {false, false, false, false, false},
		"maker's name, 2.5 MPa, 06/24": {false, false, true, true, false},
	} {
		h := with(t, "marks: ["+marks+"]")
		got := [5]bool{h.MarkedAmmonia.V, h.MarkedLPG.V, h.MarkedPressure.V, h.MarkedMaker.V, h.MarkedYear.V}
		assert.Equal(t, want, got, marks)
		assert.True(t, h.MarksStated && h.MarkedAmmonia.Known)
	}
	assert.False(t, with(t).MarkedAmmonia.Known, "nobody said what is printed")
}

// TestDates counts from the day to the day; a month alone starts on its first day, the older reading.
func TestDates(t *testing.T) {
	h := with(t, "made: 2024-11", "tested: 2026-08-25", "inspected: 2026-11-25", "resistance_tested: 2026-11-24")
	assert.Equal(t, []facts.Int{facts.Know(754), facts.Know(92), facts.Know(0), facts.Know(1)}, []facts.Int{h.AgeDays, h.TestedDays, h.InspectedDays, h.ResistanceDays})
	assert.Equal(t, facts.Know(365), h.IntervalDays, "the 12 months of the class")
	assert.Equal(t, facts.Know(184), with(t, "tested: 2026-08-25", "test_interval: 6 months").IntervalDays, "the shorter counts")
	assert.Equal(t, facts.Know(365), with(t, "tested: 2026-08-25", "test_interval: 24 months").IntervalDays)
	assert.False(t, with(t).IntervalDays.Known)
	assert.Equal(t, facts.Know(-1), with(t, "tested: 2026-11-26").TestedDays, "a test in the future is not young, it is wrong")
	h = with(t, "made: 2024-01-01", "life: 2 years")
	assert.True(t, h.LifeStated)
	assert.Equal(t, facts.Know(731), h.LifeDays) // 2024 is a leap year
}

func TestIdentityAndCondition(t *testing.T) {
	h := with(t, "tag: h-1", "assigned: H-1", "readable: yes", "condition: [sound, kinked]", "electrical: Ohm", "resistance: 1.5 ohm", "bend: 299.9 mm", "least_bend: 300.1 mm")
	assert.Equal(t, facts.Yes(true), h.TagMatches)
	assert.Equal(t, []string{"kinked"}, h.Defects)
	assert.Equal(t, []facts.Int{facts.Know(2), facts.Know(299), facts.Know(301)}, []facts.Int{h.ResistanceOhm, h.BendMM, h.LeastBendMM})
	assert.Equal(t, facts.Yes(false), with(t, "tag: h-2", "assigned: H-1").TagMatches)
	h = with(t)
	assert.False(t, h.TagMatches.Known || h.Readable.Known || h.ConditionKnown.Known || h.BendMM.Known)
	assert.Empty(t, h.Grade)
	assert.Equal(t, facts.Know(275), h.LeastBendMM, "EN 12115 table 1, DN 50 (recalled)")
	assert.Equal(t, facts.Know(275), with(t, "least_bend: 200 mm").LeastBendMM, "a smaller figure needs a paper")
	assert.Equal(t, facts.Know(200), with(t, "least_bend: 200 mm", "evidence: e").LeastBendMM)
}

func TestServices(t *testing.T) {
	f := build(t, hoseHead, hoseHead+"        specified_for: [2-butanone, nitrogen]\n")
	for _, s := range f.Services {
		assert.Equal(t, facts.Yes(true), s.Named, "%s is named under another name", s.Fluid)
		assert.Contains(t, s.Words, "fluid:"+s.FluidID)
	}
	assert.Contains(t, f.Services[0].Words, "flammable")
	assert.False(t, build(t).Services[0].Named.Known)
	assert.False(t, build(t, hoseHead, "").Services[0].ClassKnown.Known)
}

func TestHoseCarries(t *testing.T) {
	medium := func(fluid string) string { return hose(t, build(t, butanon, "{fluid: "+fluid+"}"), "H1").Medium }
	assert.Equal(t, "gas", medium("butanone"), "the nitrogen behind the liquid is harder")
	assert.Equal(t, "liquefied-gas", medium("propane"))
	assert.Equal(t, "steam", medium("steam"))
	h := hose(t, build(t, butanon, "{fluid: butanone, conductivity: 10 pS/m}"), "H1")
	assert.Equal(t, facts.Yes(true), h.Accumulator)
	h = hose(t, build(t, butanon, "{fluid: butanone, conductivity: 50 pS/m}"), "H1")
	assert.Equal(t, facts.Yes(false), h.Accumulator)
	assert.True(t, hose(t, build(t, butanon, "{fluid: ammonia}"), "H1").Ammonia)
}

// TestLimits: what is printed narrows the class, and widens it only with a paper; seals and plastic ends have their own.
func TestLimits(t *testing.T) {
	span := func(f *facts.Facts, id string) [2]facts.Int {
		l := find(t, f.Limits, id, func(l facts.Limit) string { return l.ID })
		return [2]facts.Int{l.LowestCK, l.HighestCK}
	}
	at := func(lines ...string) [2]facts.Int {
		return span(build(t, hoseHead, hoseHead+strings.Join(append([]string{""}, lines...), "        ")), "H1 hose class")
	}
	class := [2]facts.Int{facts.Know(25315), facts.Know(33815)} // -20 to 65 °C, EN 12115 (published)
	assert.Equal(t, class, at())
	assert.Equal(t, class, at("lowest: -40 °C\n", "highest: 100 °C\n"))
	assert.Equal(t, [2]facts.Int{facts.Know(27315), facts.Know(32315)}, at("lowest: 0 °C\n", "highest: 50 °C\n"))
	assert.Equal(t, [2]facts.Int{facts.Know(23315), facts.Know(37315)}, at("lowest: -40 °C\n", "highest: 100 °C\n", "evidence: e\n"))
	f := build(t, hoseHead, "        size: DN 50\n")
	assert.Contains(t, why(f, "H1 hose class", "limits.highest_ck"), "not known")
	assert.Contains(t, why(f, "T1 stated", "limits.lowest_ck"), "not known")
	f = build(t, hoseEnd, replace(hoseEnd, "S31603", "PP"))
	span(f, "H1 outlet end PP")
	span(f, "H1.outlet to tank.fill seal 1 seal PTFE")
	l := find(t, build(t).Limits, "H1 hose class", func(l facts.Limit) string { return l.ID })
	assert.Equal(t, []facts.Int{facts.Know(31315), facts.Know(27315)}, []facts.Int{l.HottestCK, l.ColdestCK}, "the place is colder than the fluid")
}

// TestMarksOfTests: the day of a test is no year of making, and a burst or test pressure is told from the working pressure.
func TestMarksOfTests(t *testing.T) {
	for marks, want := range map[string][4]bool{ // year made, date of test, two temperatures, burst or test pressure
		"tested 2026-02":               {false, true, false, false},
		"2024, tested 2026-02":         {true, true, false, false},
		"tested":                       {false, false, false, false},
		"-20 °C, 65 °C":                {false, false, true, false},
		"-20 °C to 65 °C":              {false, false, true, false},
		"65 °C":                        {false, false, false, false},
		"working 10 bar":               {false, false, false, false},
		"burst 64 bar":                 {false, false, false, true},
		"TEST PRESSURE 225 psi":        {false, false, false, true},
		"burst, 64 bar":                {false, false, false, false},
		"proof 15 bar, tested 2025-11": {false, true, false, true},
	} {
		h := with(t, "marks: ["+marks+"]")
		got := [4]facts.Bool{h.MarkedYear, h.MarkedTested, h.MarkedTemps, h.MarkedBurst}
		for i, w := range want {
			assert.Equal(t, facts.Yes(w), got[i], "%s: %d", marks, i)
		}
	}
	assert.False(t, with(t).MarkedTested.Known)
}

// TestPhaseMarks: every point of the vessel says liquid or vapour, in either spelling.
func TestPhaseMarks(t *testing.T) {
	of := func(gas, liquid string) facts.Bool {
		f := build(t, "size: 1/2 in, gender: male}", "size: 1/2 in, gender: male"+gas+"}", `liquid: {standard: flange-asme-b16-5, size: NPS 2, class: "150", facing: RF`,
			`liquid: {standard: flange-asme-b16-5, size: NPS 2, class: "150", facing: RF`+liquid)
		return find(t, f.Vessels, "tote", func(v facts.Vessel) string { return v.ID }).PhaseMarked
	}
	assert.Equal(t, facts.Yes(true), of(", marked: VAPOR", ", marked: butanone liquid"))
	assert.Equal(t, facts.Yes(true), of(", marked: vapour", ", marked: liquid"))
	assert.Equal(t, facts.Yes(false), of(", marked: nitrogen", ", marked: liquid"))
	assert.Equal(t, facts.Yes(false), of(", marked: nitrogen", ""), "one that lacks it decides")
	assert.Equal(t, facts.Bool{}, of(", marked: vapour", ""))
}

// TestListed: a laboratory that is named lists the hose; none does not.
func TestListed(t *testing.T) {
	assert.Equal(t, facts.Yes(true), with(t, "listed: testing laboratory 4").Listed)
	assert.Equal(t, facts.Yes(false), with(t, "listed: none").Listed)
	assert.False(t, with(t).Listed.Known)
}

// TestChangeRecord: a change that nobody calls one in kind is none.
func TestChangeRecord(t *testing.T) {
	change := func(more string) facts.Line {
		return of(t, base+"change: {record: C-1, what: another hose"+more+"}\n").Line
	}
	assert.True(t, change("").ChangeNotInKind)
	assert.True(t, change(", in_kind: no").ChangeNotInKind)
	assert.False(t, change(", in_kind: yes").ChangeNotInKind)
	assert.False(t, build(t).Line.ChangeNotInKind)
	l := change(", basis: yes, effects: no, trained: no")
	assert.Equal(t, []facts.Bool{facts.Yes(true), facts.Yes(false), {}, facts.Yes(false)}, []facts.Bool{l.ChangeBasis, l.ChangeEffects, l.ChangeProcedure, l.ChangeTrained})
}

// TestStopTested: days from the day the stop was last worked.
func TestStopTested(t *testing.T) {
	assert.Equal(t, facts.Know(10), of(t, base+"safeguards: {stop_tested: 2026-11-15}\n").Line.StopDays)
	assert.False(t, build(t).Line.StopDays.Known)
}
