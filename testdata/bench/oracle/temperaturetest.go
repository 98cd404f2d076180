package oracle

func coolAfterSteam(l *line) {
	for _, s := range l.Steams {
		if s.Cleaning {
			l.find(s.ID, word("run", s.Run))
		}
	}
}

// steamHotterThanStated gives one degree, because that is how temperatures are stated.
func steamHotterThanStated(l *line) {
	for _, s := range l.Steams {
		if l.knows(s.ID, has("steams.saturated_ck", s.SaturatedCK), has("steams.stated_ck", s.StatedCK),
			has("steams.pressure_kpa", s.KPa)) && *s.SaturatedCK-*s.StatedCK > 100 {
			l.findAt(s.ID, "", "steam-out", num("have_ck", *s.StatedCK), num("need_ck", *s.SaturatedCK),
				num("pressure_kpa", *s.KPa), word("run", s.Run))
		}
	}
}

func testLiquidFreezes(l *line) {
	for _, t := range l.Tests {
		if !t.Gas && l.knows(t.ID, has("tests.freezes_ck", t.FreezesCK), has("tests.coldest_ck", t.ColdestCK)) &&
			*t.ColdestCK <= *t.FreezesCK {
			l.findAt(t.ID, "", inTest, num("have_ck", *t.FreezesCK), num("need_ck", *t.ColdestCK), word("fluid", t.Fluid))
		}
	}
}

// wetAfter says whether a test leaves its liquid in the line.
func wetAfter(t *Test) bool { return !t.Gas && !t.Dried }

// testLiquidLeftInFrost looks at the place, not at the day of the test.
func testLiquidLeftInFrost(l *line) {
	for _, t := range l.Tests {
		if wetAfter(t) && l.knows(t.ID, has("tests.freezes_ck", t.FreezesCK), has("tests.place_ck", t.PlaceCK)) &&
			*t.PlaceCK <= *t.FreezesCK {
			l.find(t.ID, num("freezes_ck", *t.FreezesCK), num("place_ck", *t.PlaceCK), word("fluid", t.Fluid))
		}
	}
}
