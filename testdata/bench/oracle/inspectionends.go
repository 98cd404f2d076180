package oracle

func chemicalCargoTestNotWithLiquid(l *line) {
	if !l.under("46 CFR 153.940") {
		return
	}
	for _, h := range l.Hoses {
		if l.knows(h.ID, said("hoses.test_kind", h.TestKind)) && h.TestKind != "hydrostatic" {
			l.findPart(h.ID, word("kind", h.TestKind))
		}
	}
}

// visualTakenForPressureTest: a test of which the kind is not stated is taken for a test.
func visualTakenForPressureTest(l *line) {
	for _, h := range l.Hoses {
		if h.TestKind == "visual" {
			l.findPart(h.ID)
		}
	}
}

// stopNotWorked finds that the emergency stop was last worked more days ago than are allowed.
func (l *line) stopNotWorked(longest int64) {
	days := l.Line.StopDays
	if l.knows(lineSubject, has("line.days_since_stop_test", days)) && *days > longest {
		l.find(lineSubject, num("have_days", *days), num("need_days", longest))
	}
}

// roadStopNotWorkedMonthly: from the first day of a month to the last of the next are 61 days at most.
func roadStopNotWorkedMonthly(l *line) {
	if l.under("49 CFR 180.416") {
		l.stopNotWorked(61)
	}
}

// waterfrontStopTestOverdue: two months have 62 days at most.
func waterfrontStopTestOverdue(l *line) {
	if l.under("33 CFR 127.1102", "33 CFR 127.1407") {
		l.stopNotWorked(62)
	}
}
