package oracle

func gasTestWithoutRelief(l *line) {
	for _, t := range l.Tests {
		if t.Gas && !t.ReliefStated {
			l.findAt(t.ID, "", inTest, word("fluid", t.Fluid))
		}
	}
}

// opensInTest: a device opens at its setting, not above it.
func opensInTest(l *line) {
	for _, i := range l.TestItems {
		if i.What == "relief" && l.knows(i.ID, has("test_items.rated_kpa", i.RatedKPa), has("test_items.test_kpa", i.TestKPa)) &&
			*i.TestKPa >= *i.RatedKPa {
			l.findAt(i.ID, i.Part, inTest, num("have_kpa", *i.RatedKPa), num("need_kpa", *i.TestKPa), word("run", i.Run))
		}
	}
}

func setAsideForTest(l *line) {
	for _, t := range l.Tests {
		if t.Isolated {
			l.findAt(t.ID, t.IsolatedWhat, "", word("run", t.ID))
		}
	}
}

// testLiquidWarms is about liquid that no device lets out.
func testLiquidWarms(l *line) {
	for _, t := range l.Tests {
		if !t.Gas && !t.ReliefStated && l.knows(t.ID, has("tests.test_kpa", t.TestKPa), has("tests.warmed_kpa", t.WarmedKPa)) &&
			*t.WarmedKPa > *t.TestKPa {
			l.findAt(t.ID, "", inTest, num("have_kpa", *t.TestKPa), num("need_kpa", *t.WarmedKPa))
		}
	}
}

// testReliefTooHigh does not need the pressure of a test with gas to know that 50 psi above it is too much.
func testReliefTooHigh(l *line) {
	for _, t := range l.Tests {
		if !t.ReliefStated {
			continue
		}
		l.knows(t.ID, has("tests.test_kpa", t.TestKPa), has("tests.relief_over_kpa", t.ReliefOver))
		share := int64(3)
		if t.Gas {
			share = 10
		}
		if over := t.ReliefOver; over != nil && (t.Gas && *over > 345 || below(t.TestKPa, share**over)) {
			l.findAt(t.ID, "", inTest, num("over_kpa", *over))
		}
	}
}
