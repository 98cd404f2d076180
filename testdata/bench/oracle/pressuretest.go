package oracle

// inTest is the case that a pressure test is.
const inTest = "pressure-test"

func gasTestDistanceNotStated(l *line) {
	for _, t := range l.Tests {
		if t.Gas && !t.DistanceSaid && l.knows(t.ID, has("tests.keep_off_mm", t.KeepOffMM)) {
			l.findAt(t.ID, "", inTest, num("keep_off_mm", *t.KeepOffMM))
		}
	}
}

func gasTestTooNear(l *line) {
	for _, t := range l.Tests {
		if t.Gas && t.DistanceSaid && l.knows(t.ID, has("tests.distance_mm", t.DistanceMM), has("tests.keep_off_mm", t.KeepOffMM)) &&
			*t.DistanceMM < *t.KeepOffMM {
			l.findAt(t.ID, "", inTest, num("have_mm", *t.DistanceMM), num("need_mm", *t.KeepOffMM))
		}
	}
}

// mostInTest is how far a test may go, in thousandths of the rating: half as much again with a liquid and a third with
// a gas on what is made for it, a hose only with a liquid, and the rating on all else. A hose that is proof tested at
// less stays below that.
func mostInTest(i *TestItem) int64 {
	most := int64(1000)
	switch i.What {
	case "body", "end":
		most = 1500
		if i.Gas {
			most = 1330
		}
	case "hose":
		if !i.Gas {
			most = 1500
		}
	}
	if i.Proof != nil {
		most = min(most, *i.Proof)
	}
	return most
}

// testAbovePart leaves out a relief device, which opens instead.
func testAbovePart(l *line) {
	for _, i := range l.TestItems {
		if i.What == "relief" || !l.knows(i.ID, has("test_items.rated_kpa", i.RatedKPa),
			has("test_items.test_ratio_permille", i.Ratio)) || *i.Ratio <= mostInTest(i) {
			continue
		}
		medium := "liquid"
		if i.Gas {
			medium = "gas"
		}
		l.findAt(i.ID, i.Part, inTest, num("have_ratio_permille", mostInTest(i)), num("need_ratio_permille", *i.Ratio),
			num("rated_kpa", *i.RatedKPa), word("medium", medium), word("run", i.Run), word("what", i.What))
	}
}

func testBelowWorking(l *line) {
	for _, t := range l.Tests {
		if l.knows(t.ID, has("tests.test_kpa", t.TestKPa), has("tests.working_kpa", t.WorkingKPa)) && *t.TestKPa < *t.WorkingKPa {
			l.findAt(t.ID, "", inTest, num("have_kpa", *t.TestKPa), num("need_kpa", *t.WorkingKPa))
		}
	}
}

func testWithAirOnFlammable(l *line) {
	for _, t := range l.Tests {
		if t.Air && t.Flammable {
			l.findAt(t.ID, "", inTest, word("fluid", t.Fluid))
		}
	}
}
