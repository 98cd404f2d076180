package oracle

var record = []rule{
	{"record/alloy_on_paper_only", condition, alloyOnPaperOnly},
	{"record/change_ends_before_it_was_authorised", condition, changeEndsBeforeItWasAuthorised},
	{"record/change_record_incomplete", stop, changeRecordIncomplete},
	{"record/change_without_review", stop, changeWithoutReview},
	{"record/change_without_training", stop, changeWithoutTraining},
	{"record/date_before_hose_was_made", stop, dateBeforeHoseWasMade},
	{"record/date_in_the_future", stop, dateInTheFuture},
	{"record/discharge_limit_not_stated", condition, dischargeLimitNotStated},
	{"record/hose_edition_not_stated", condition, hoseEditionNotStated},
	{"record/in_kind_hose_without_identity", condition, inKindHoseWithoutIdentity},
	{"record/oil_in_gas_on_oxygen_not_stated", condition, oilInGasOnOxygenNotStated},
	{"record/regime_without_rules", condition, regimeWithoutRules},
	{"record/temporary_change_past_its_end", stop, temporaryChangePastItsEnd},
	{"record/test_pressure_not_recorded", condition, testPressureNotRecorded},
	{"record/value_not_confirmed", condition, valueNotConfirmed},
}

func alloyOnPaperOnly(l *line) {
	for _, h := range l.Hoses {
		if h.AlloyOnPaper {
			l.findPart(h.ID)
		}
	}
}

func changeEndsBeforeItWasAuthorised(l *line) {
	x := &l.Line
	if x.Changed && x.ChangeTemporary && x.ChangeReviewed != nil && below(x.ChangeUntil, *x.ChangeReviewed) {
		l.find(lineSubject, num("authorised_day", *x.ChangeReviewed), num("until_day", *x.ChangeUntil))
	}
}

// changeWithoutReview: a change without a date, or with one to come, is one that nobody has authorised.
func changeWithoutReview(l *line) {
	x := &l.Line
	if !x.Changed || !l.knows(lineSubject, has("line.change_in_kind", x.ChangeInKind)) || yes(x.ChangeInKind) {
		return
	}
	switch {
	case !x.ChangeRecord:
		l.find(lineSubject, word("gap", "no change record is named"))
	case x.ChangeReviewed == nil || *x.ChangeReviewed > x.AsOfDay:
		l.find(lineSubject, word("gap", "its record shows no authorisation up to this day"))
	}
}

func temporaryChangePastItsEnd(l *line) {
	x := &l.Line
	if x.Changed && x.ChangeTemporary && l.knows(lineSubject, has("line.change_until_day", x.ChangeUntil)) &&
		*x.ChangeUntil < x.AsOfDay {
		l.find(lineSubject, num("judged_day", x.AsOfDay), num("until_day", *x.ChangeUntil))
	}
}

// happening is something that was done to a hose, in words, and how many days ago.
type happening struct {
	what string
	days *int64
}

func happenings(h *Hose) [3]happening {
	return [...]happening{{"visual inspection", h.InspectedDays}, {"resistance measurement", h.ResistanceDays}, {"pressure test", h.TestedDays}}
}

// dateBeforeHoseWasMade allows a month, because many hoses show month and year only.
func dateBeforeHoseWasMade(l *line) {
	for _, h := range l.Hoses {
		if h.AgeDays == nil {
			continue
		}
		for _, x := range happenings(h) {
			if above(x.days, *h.AgeDays+31) {
				l.findPart(h.ID, word("what", x.what))
			}
		}
	}
}

func dateInTheFuture(l *line) {
	for _, h := range l.Hoses {
		if below(h.AgeDays, 0) {
			l.findPart(h.ID, word("what", "manufacture"))
		}
		for _, x := range happenings(h) {
			if below(x.days, 0) {
				l.findPart(h.ID, word("what", x.what))
			}
		}
	}
}

// dischargeLimitNotStated keeps a missing mark from being read as a strong container.
func dischargeLimitNotStated(l *line) {
	for _, v := range l.Vessels {
		if v.Padded && (v.Kind == "ibc" || v.Kind == "tote") && v.DischargeKPa == nil {
			l.find(v.ID, word("vessel", v.ID))
		}
	}
}
