package oracle

var relief = []rule{
	{"relief/accumulates_above_hose", stop, accumulatesAboveHose},
	{"relief/can_be_shut_off", stop, canBeShutOff},
	{"relief/gas_test_without_relief", condition, gasTestWithoutRelief},
	{"relief/isolation_not_stated", note, isolationNotStated},
	{"relief/lpg_window_above_hose", condition, lpgWindowAboveHose},
	{"relief/on_zone_a_cylinder", stop, onZoneACylinder},
	{"relief/opens_in_test", stop, opensInTest},
	{"relief/set_above_weakest_part", stop, setAboveWeakestPart},
	{"relief/set_aside_for_test", note, setAsideForTest},
	{"relief/test_liquid_warms", condition, testLiquidWarms},
	{"relief/test_overdue", stop, reliefTestOverdue},
	{"relief/test_relief_too_high", condition, testReliefTooHigh},
}

// settings says whether both pressures of a device are known.
func (l *line) settings(r *Relief) bool {
	return l.knows(r.ID, has("reliefs.set_kpa", r.SetKPa), has("reliefs.weakest_kpa", r.WeakestKPa))
}

// inWindow says whether the law on LP-gas itself wants a device set that high.
func (l *line) inWindow(r *Relief) bool {
	return r.LPGLiquid && *r.SetKPa <= lpgReliefMostKPa && l.under("29 CFR 1910.110")
}

// accumulatesAboveHose: a device lets the pressure rise by a tenth over its setting, and a hose has no such reserve. It
// is silent where the setting alone is too high.
func accumulatesAboveHose(l *line) {
	for _, r := range l.Reliefs {
		if !r.WeakestIsHose || !l.settings(r) || l.inWindow(r) {
			continue
		}
		set, rated := *r.SetKPa, *r.WeakestKPa
		if set <= rated+1 && (set-1)*110 > (rated+1)*100 {
			l.findPart(r.ID, num("rated_kpa", rated), num("set_kpa", set), word("weakest", r.Weakest))
		}
	}
}

func canBeShutOff(l *line) {
	for _, r := range l.Reliefs {
		if r.IsolableStated && l.knows(r.ID, has("reliefs.isolatable", r.Isolable)) && yes(r.Isolable) {
			l.findPart(r.ID)
		}
	}
}

func isolationNotStated(l *line) {
	for _, r := range l.Reliefs {
		if !r.IsolableStated && !r.OnVessel {
			l.findPart(r.ID)
		}
	}
}

// setTooHigh gives one kPa for roundings.
func (l *line) setTooHigh(r *Relief) {
	if *r.SetKPa > *r.WeakestKPa+1 {
		l.findPart(r.ID, num("have_kpa", *r.WeakestKPa), num("need_kpa", *r.SetKPa), word("weakest", r.Weakest))
	}
}

func lpgWindowAboveHose(l *line) {
	for _, r := range l.Reliefs {
		if r.LPGLiquid && l.under("29 CFR 1910.110") && l.settings(r) {
			l.setTooHigh(r)
		}
	}
}

func setAboveWeakestPart(l *line) {
	for _, r := range l.Reliefs {
		if l.settings(r) && !l.inWindow(r) {
			l.setTooHigh(r)
		}
	}
}

func onZoneACylinder(l *line) {
	for _, r := range l.Reliefs {
		if r.ZoneA {
			l.findPart(r.ID)
		}
	}
}

func reliefTestOverdue(l *line) {
	for _, r := range l.Reliefs {
		if !r.OnVessel && l.knows(r.ID, has("reliefs.days_since_test", r.TestedDays), has("reliefs.test_interval_days", r.IntervalDays)) &&
			*r.TestedDays > *r.IntervalDays {
			l.findPart(r.ID, num("have_days", *r.TestedDays), num("need_days", *r.IntervalDays))
		}
	}
}
