package oracle

func burstMarkedAgainstMarineLaw(l *line) {
	if !l.under("33 CFR 154.500") {
		return
	}
	for _, h := range l.Hoses {
		if l.knows(h.ID, has("hoses.marked_burst_or_test", h.MarkedBurst)) && yes(h.MarkedBurst) {
			l.findPart(h.ID)
		}
	}
}

func roadTankPhaseNotMarked(l *line) {
	if !l.under("49 CFR 178.337-9") {
		return
	}
	for _, v := range l.Vessels {
		if v.RoadTank && l.knows(v.ID, has("vessels.phase_marked", v.PhaseMarked)) && no(v.PhaseMarked) {
			l.find(v.ID, word("vessel", v.ID))
		}
	}
}
