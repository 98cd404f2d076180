package oracle

import (
	"strings"
	"time"
)

var inspection = []rule{
	{"inspection/ammonia_assembly_tested_too_low", condition, ammoniaAssemblyTestedTooLow},
	{"inspection/ammonia_hose_past_legal_life", stop, ammoniaHosePastLegalLife},
	{"inspection/bend_too_tight", stop, bendTooTight},
	{"inspection/calendar_month_without_look", condition, calendarMonthWithoutLook},
	{"inspection/calendar_year_without_test", stop, calendarYearWithoutTest},
	{"inspection/chemical_cargo_test_not_with_liquid", stop, chemicalCargoTestNotWithLiquid},
	{"inspection/lpg_joints_tested_too_low", condition, lpgJointsTestedTooLow},
	{"inspection/monthly_inspection_missed", stop, monthlyInspectionMissed},
	{"inspection/not_inspected_within_a_year", condition, notInspectedWithinAYear},
	{"inspection/old_without_stated_life", note, oldWithoutStatedLife},
	{"inspection/oxyfuel_joints_tested_too_low", condition, oxyfuelJointsTestedTooLow},
	{"inspection/part_test_overdue", stop, partTestOverdue},
	{"inspection/past_service_life", stop, pastServiceLife},
	{"inspection/pressure_test_overdue", stop, pressureTestOverdue},
	{"inspection/proof_test_may_have_damaged", stop, proofTestMayHaveDamaged},
	{"inspection/rejected_condition", stop, rejectedCondition},
	{"inspection/road_stop_not_worked_monthly", stop, roadStopNotWorkedMonthly},
	{"inspection/state_ammonia_joints_tested_too_low", condition, stateAmmoniaJointsTestedTooLow},
	{"inspection/test_below_chemical_cargo_law", stop, testBelowChemicalCargoLaw},
	{"inspection/test_below_gas_carrier_law", stop, testBelowGasCarrierLaw},
	{"inspection/test_below_gas_ship_law", stop, testBelowGasShipLaw},
	{"inspection/test_below_marine_law", stop, testBelowMarineLaw},
	{"inspection/test_below_waterfront_gas_law", stop, testBelowWaterfrontGasLaw},
	{"inspection/test_older_than_law_allows", stop, testOlderThanLawAllows},
	{"inspection/visual_taken_for_pressure_test", stop, visualTakenForPressureTest},
	{"inspection/waterfront_stop_test_overdue", stop, waterfrontStopTestOverdue},
}

// testedTooLow finds a test pressure that is known and below what is wanted. One that is not known is no finding.
func (l *line) testedTooLow(h *Hose, least int64) {
	if below(h.TestedAtKPa, least) {
		l.findPart(h.ID, num("have_kpa", *h.TestedAtKPa), num("need_kpa", least))
	}
}

func ammoniaAssemblyTestedTooLow(l *line) {
	for _, h := range l.Hoses {
		if h.Ammonia && !h.LowSide && l.under("29 CFR 1910.111") {
			l.testedTooLow(h, 3447) // 500 psig
		}
	}
}

func lpgJointsTestedTooLow(l *line) {
	for _, h := range l.Hoses {
		if h.LPG && !h.LowSide && l.under("29 CFR 1910.110") {
			l.testedTooLow(h, 3447) // 500 psig
		}
	}
}

// oxyfuelJointsTestedTooLow: twice the highest duty pressure, and 300 psi at least.
func oxyfuelJointsTestedTooLow(l *line) {
	if !l.under("29 CFR 1910.253") {
		return
	}
	least := int64(2068)
	for _, f := range l.Fluids {
		if f.DutyKPa != nil {
			least = max(least, 2**f.DutyKPa)
		}
	}
	for _, h := range l.Hoses {
		l.testedTooLow(h, least)
	}
}

// daysPast finds a hose for which more days have gone by than are allowed.
func (l *line) daysPast(h *Hose, fact string, days *int64, longest int64) {
	if l.knows(h.ID, has(fact, days)) && *days > longest {
		l.findPart(h.ID, num("have_days", *days), num("need_days", longest))
	}
}

func ammoniaHosePastLegalLife(l *line) {
	for _, h := range l.Hoses {
		if h.Ammonia && l.under("OAC 901:5-3-08") {
			l.daysPast(h, "hoses.age_days", h.AgeDays, 1826) // five years
		}
	}
}

func monthlyInspectionMissed(l *line) {
	for _, h := range l.Hoses {
		if l.under("49 CFR 180.416") {
			l.daysPast(h, "hoses.days_since_inspection", h.InspectedDays, 61) // two months on end at most
		}
	}
}

func notInspectedWithinAYear(l *line) {
	for _, h := range l.Hoses {
		l.daysPast(h, "hoses.days_since_inspection", h.InspectedDays, 365)
	}
}

func oldWithoutStatedLife(l *line) {
	for _, h := range l.Hoses {
		if !h.LifeStated {
			l.daysPast(h, "hoses.age_days", h.AgeDays, 4383) // twelve years
		}
	}
}

func bendTooTight(l *line) {
	for _, h := range l.Hoses {
		if l.knows(h.ID, has("hoses.bend_mm", h.BendMM), has("hoses.least_bend_mm", h.LeastBendMM)) && *h.BendMM < *h.LeastBendMM {
			l.findPart(h.ID, num("have_mm", *h.BendMM), num("need_mm", *h.LeastBendMM))
		}
	}
}

func partTestOverdue(l *line) {
	for _, p := range l.Parts {
		if p.TestDated && l.knows(p.ID, has("parts.days_since_test", p.TestedDays), has("parts.test_interval_days", p.Interval)) &&
			*p.TestedDays > *p.Interval {
			l.findPart(p.ID, num("have_days", *p.TestedDays), num("need_days", *p.Interval))
		}
	}
}

func pastServiceLife(l *line) {
	for _, h := range l.Hoses {
		if h.LifeStated && l.knows(h.ID, has("hoses.age_days", h.AgeDays), has("hoses.life_days", h.LifeDays)) &&
			*h.AgeDays > *h.LifeDays {
			l.findPart(h.ID, num("have_days", *h.AgeDays), num("need_days", *h.LifeDays))
		}
	}
}

func pressureTestOverdue(l *line) {
	for _, h := range l.Hoses {
		if l.knows(h.ID, has("hoses.days_since_test", h.TestedDays), has("hoses.test_interval_days", h.IntervalDays)) &&
			*h.TestedDays > *h.IntervalDays {
			l.findPart(h.ID, num("have_days", *h.TestedDays), num("need_days", *h.IntervalDays))
		}
	}
}

// rejectedCondition: what was seen counts even if the sheet does not say that all was looked at.
func rejectedCondition(l *line) {
	for _, h := range l.Hoses {
		l.knows(h.ID, has("hoses.condition_stated", h.ConditionKnown))
		if len(h.Defects) > 0 {
			l.findPart(h.ID, word("defects", strings.Join(h.Defects, ", ")))
		}
	}
}

// dateOf is the day that many days since 1970-01-01.
func dateOf(day int64) time.Time { return time.Unix(day*86400, 0).UTC() }

func monthOf(day int64) int { return 12*dateOf(day).Year() + int(dateOf(day).Month()) }

// calendarMonthWithoutLook leaves what lies further back to monthlyInspectionMissed.
func calendarMonthWithoutLook(l *line) {
	if !l.under("49 CFR 180.416") {
		return
	}
	for _, h := range l.Hoses {
		if !l.knows(h.ID, has("hoses.days_since_inspection", h.InspectedDays)) || *h.InspectedDays >= 62 {
			continue
		}
		if looked := l.Line.AsOfDay - *h.InspectedDays; monthOf(l.Line.AsOfDay)-monthOf(looked) > 1 {
			l.findPart(h.ID, num("inspected_day", looked))
		}
	}
}

// calendarYearWithoutTest leaves what lies further back than fifteen months to testOlderThanLawAllows.
func calendarYearWithoutTest(l *line) {
	if !l.under("33 CFR 127.1102", "33 CFR 127.1407") {
		return
	}
	for _, h := range l.Hoses {
		if !l.knows(h.ID, has("hoses.days_since_test", h.TestedDays)) || *h.TestedDays >= 455 {
			continue
		}
		if tested := l.Line.AsOfDay - *h.TestedDays; dateOf(l.Line.AsOfDay).Year()-dateOf(tested).Year() > 1 {
			l.findPart(h.ID, num("tested_day", tested))
		}
	}
}
