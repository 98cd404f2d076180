package oracle

import (
	"slices"
	"strings"
)

var marking = []rule{
	{"marking/ammonia_marks_incomplete", stop, ammoniaMarksIncomplete},
	{"marking/burst_marked_against_marine_law", stop, burstMarkedAgainstMarineLaw},
	{"marking/chemical_cargo_marks_incomplete", stop, chemicalCargoMarksIncomplete},
	{"marking/gas_ship_pressure_not_marked", stop, gasShipPressureNotMarked},
	{"marking/lone_point_unmarked", condition, lonePointUnmarked},
	{"marking/lpg_mark_missing", stop, lpgMarkMissing},
	{"marking/marine_marks_incomplete", stop, marineMarksIncomplete},
	{"marking/marks_unreadable", stop, marksUnreadable},
	{"marking/point_unmarked_among_others", stop, pointUnmarkedAmongOthers},
	{"marking/road_hose_pressure_not_marked", stop, roadHosePressureNotMarked},
	{"marking/road_tank_phase_not_marked", stop, roadTankPhaseNotMarked},
	{"marking/waterfront_gas_pressure_not_marked", stop, waterfrontGasPressureNotMarked},
	{"marking/working_pressure_not_marked", condition, workingPressureNotMarked},
}

// mark is something that should be printed on a hose.
type mark struct {
	name    string
	missing bool // known not to be there
}

// findMarks reports the marks that are not there. A mark that is not known to be missing does not count.
func (l *line) findMarks(h *Hose, marks ...mark) {
	var missing []string
	for _, m := range marks {
		if m.missing {
			missing = append(missing, m.name)
		}
	}
	if missing != nil {
		slices.Sort(missing)
		l.findPart(h.ID, word("missing", strings.Join(missing, ", ")))
	}
}

// ammoniaMarksIncomplete leaves a hose that is not marked for ammonia at all to another rule.
func ammoniaMarksIncomplete(l *line) {
	for _, h := range l.Hoses {
		if !h.Ammonia || !l.under("29 CFR 1910.111") {
			continue
		}
		l.knows(h.ID, has("hoses.marked_ammonia", h.MarkedAmmonia), has("hoses.marked_pressure", h.MarkedPressure),
			has("hoses.marked_maker", h.MarkedMaker), has("hoses.marked_year", h.MarkedYear))
		if yes(h.MarkedAmmonia) {
			l.findMarks(h, mark{"maker", no(h.MarkedMaker)}, mark{"working pressure", no(h.MarkedPressure)}, mark{"year made", no(h.MarkedYear)})
		}
	}
}

func chemicalCargoMarksIncomplete(l *line) {
	for _, h := range l.Hoses {
		if l.under("46 CFR 153.940") {
			l.knows(h.ID, has("hoses.marked_pressure", h.MarkedPressure), has("hoses.marked_year", h.MarkedYear),
				has("hoses.marked_test_date", h.MarkedTested), has("hoses.marked_temperatures", h.MarkedTemps))
			l.findMarks(h, mark{"working pressure", no(h.MarkedPressure)}, mark{"year made", no(h.MarkedYear)},
				mark{"date of the last test", no(h.MarkedTested)}, mark{"highest and lowest temperature", no(h.MarkedTemps)})
		}
	}
}

// marineMarksIncomplete: the year may stand in the papers of a hose that has an identity.
func marineMarksIncomplete(l *line) {
	for _, h := range l.Hoses {
		if l.under("33 CFR 154.500") {
			l.knows(h.ID, has("hoses.marked_pressure", h.MarkedPressure), has("hoses.marked_year", h.MarkedYear))
			l.findMarks(h, mark{"working pressure", no(h.MarkedPressure)}, mark{"year made", no(h.MarkedYear) && !h.AssignedStated})
		}
	}
}

// pressureMark finds a hose whose working pressure is not on it.
func (l *line) pressureMark(h *Hose) {
	if l.knows(h.ID, has("hoses.marked_pressure", h.MarkedPressure)) && no(h.MarkedPressure) {
		l.findPart(h.ID)
	}
}

func gasShipPressureNotMarked(l *line) {
	for _, h := range l.Hoses {
		if l.under("46 CFR 38.15-5") {
			l.pressureMark(h)
		}
	}
}

func roadHosePressureNotMarked(l *line) {
	for _, h := range l.Hoses {
		if h.LiquefiedGas && l.under("49 CFR 180.416") {
			l.pressureMark(h)
		}
	}
}

func waterfrontGasPressureNotMarked(l *line) {
	for _, h := range l.Hoses {
		if h.LiquefiedGas && l.under("33 CFR 127.1102") {
			l.pressureMark(h)
		}
	}
}

// workingPressureNotMarked is for hoses of which no law speaks.
func workingPressureNotMarked(l *line) {
	anyHose := l.under("33 CFR 154.500", "46 CFR 153.940", "46 CFR 38.15-5")
	for _, h := range l.Hoses {
		if !h.MarksStated || !l.knows(h.ID, has("hoses.marked_pressure", h.MarkedPressure)) {
			continue
		}
		law := anyHose || h.Ammonia && l.under("29 CFR 1910.111") ||
			h.LiquefiedGas && l.under("33 CFR 127.1102", "49 CFR 180.416")
		if no(h.MarkedPressure) && !law {
			l.findPart(h.ID)
		}
	}
}

func lpgMarkMissing(l *line) {
	for _, h := range l.Hoses {
		if h.LPG && l.under("29 CFR 1910.110") && l.knows(h.ID, has("hoses.marked_lpg", h.MarkedLPG)) && no(h.MarkedLPG) {
			l.findPart(h.ID)
		}
	}
}

func marksUnreadable(l *line) {
	for _, h := range l.Hoses {
		if l.knows(h.ID, has("hoses.readable", h.Readable)) && no(h.Readable) {
			l.findPart(h.ID)
		}
	}
}

// lonePointUnmarked is the mild case: nothing else in reach, and nothing known to react.
func lonePointUnmarked(l *line) {
	for _, p := range l.Points {
		if p.Target && !p.Neighbours && l.knows(p.ID, has("points.marked", p.Marked)) && no(p.Marked) && !yes(p.Hazardous) {
			l.findPoint(p)
		}
	}
}

func pointUnmarkedAmongOthers(l *line) {
	for _, p := range l.Points {
		if l.knows(p.ID, has("points.marked", p.Marked)) && no(p.Marked) && (!p.Target || p.Neighbours || yes(p.Hazardous)) {
			l.findPoint(p)
		}
	}
}
