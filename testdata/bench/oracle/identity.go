package oracle

var identity = []rule{
	{"identity/hose_not_the_assigned_one", stop, hoseNotTheAssignedOne},
	{"identity/hose_without_identity", condition, hoseWithoutIdentity},
	{"identity/labels_too_alike", condition, labelsTooAlike},
	{"identity/other_fluid_takes_same_coupling", note, otherFluidTakesSameCoupling},
	{"identity/point_holds_another_fluid", stop, pointHoldsAnotherFluid},
}

func hoseNotTheAssignedOne(l *line) {
	for _, h := range l.Hoses {
		if h.AssignedStated && l.knows(h.ID, has("hoses.tag_matches", h.TagMatches)) && no(h.TagMatches) {
			l.findPart(h.ID)
		}
	}
}

func hoseWithoutIdentity(l *line) {
	if !l.under("29 CFR 1910.119", "33 CFR 154.500", "40 CFR 68.73", "49 CFR 180.416") {
		return
	}
	for _, h := range l.Hoses {
		if !h.AssignedStated {
			l.findPart(h.ID)
		}
	}
}

// findPoint reports a receiving point.
func (l *line) findPoint(p *Point, more ...figure) {
	l.find(p.ID, append(append([]figure(nil), more...), word("point", p.ID), word("vessel", p.Vessel))...)
}

// otherFluidTakesSameCoupling: a padlock that nobody has stated is not counted.
func otherFluidTakesSameCoupling(l *line) {
	for _, p := range l.Points {
		if !p.Target && !p.Keyed && no(p.SameFluid) && no(p.Hazardous) && p.Coupling == "same" && !yes(p.Padlocked) {
			l.findPoint(p)
		}
	}
}

func pointHoldsAnotherFluid(l *line) {
	for _, p := range l.Points {
		if p.Target && l.knows(p.ID, has("points.same_fluid", p.SameFluid)) && no(p.SameFluid) {
			l.findPoint(p)
		}
	}
}
