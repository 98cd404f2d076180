package oracle

import "slices"

var connection = []rule{
	{"connection/adapter_between_cylinder_outlets", stop, adapterBetweenCylinderOutlets},
	{"connection/bolts_below_marine_law", stop, boltsBelowMarineLaw},
	{"connection/bolts_missing", stop, boltsMissing},
	{"connection/clamp_does_not_fit", stop, clampDoesNotFit},
	{"connection/class_differs", stop, classDiffers},
	{"connection/does_not_join", stop, doesNotJoin},
	{"connection/facing_differs", stop, facingDiffers},
	{"connection/gas_not_assigned_to_outlet", stop, gasNotAssignedToOutlet},
	{"connection/gender_clash", stop, genderClash},
	{"connection/hand_differs", stop, handDiffers},
	{"connection/hose_end_only_banded", stop, hoseEndOnlyBanded},
	{"connection/hose_tail_differs", stop, hoseTailDiffers},
	{"connection/hose_tail_nearly_fits", stop, hoseTailNearlyFits},
	{"connection/levers_not_locked", condition, leversNotLocked},
	{"connection/look_alike_joins", stop, lookAlikeJoins},
	{"connection/lower_class_governs", note, lowerClassGoverns},
	{"connection/marine_hose_end_not_accepted", stop, marineHoseEndNotAccepted},
	{"connection/outlet_number_differs", stop, outletNumberDiffers},
	{"connection/service_excluded", stop, serviceExcluded},
	{"connection/size_differs", stop, sizeOfEndsDiffers},
}

func adapterBetweenCylinderOutlets(l *line) {
	for _, p := range l.Parts {
		if p.Kind != "coupling" && p.Kind != "fitting" {
			continue
		}
		outlets := 0
		for _, j := range l.Joints {
			if j.Cylinder && (j.A == p.ID || j.B == p.ID) {
				outlets++
			}
		}
		if outlets > 1 {
			l.findPart(p.ID)
		}
	}
}

// findJoint reports a joint with its two ends.
func (l *line) findJoint(j *Joint, more ...figure) {
	l.find(j.ID, append([]figure{word("a", j.A), word("b", j.B)}, more...)...)
}

// ends finds joints of two parts for which one comparison came out badly. No comparison, no verdict.
func (l *line) ends(fact string, compared func(*Joint) string, bad string) {
	for _, j := range l.Joints {
		if j.Open {
			continue
		}
		if how := compared(j); l.knows(j.ID, said(fact, how)) && how == bad {
			l.findJoint(j)
		}
	}
}

func classDiffers(l *line) {
	l.ends("joints.class", func(j *Joint) string { return j.Class }, "differs")
}

func lowerClassGoverns(l *line) {
	l.ends("joints.class", func(j *Joint) string { return j.Class }, "drilling-same")
}

func doesNotJoin(l *line) { l.ends("joints.mate", func(j *Joint) string { return j.Mate }, "no-fit") }

func facingDiffers(l *line) {
	l.ends("joints.facing", func(j *Joint) string { return j.Facing }, "differs")
}

func genderClash(l *line) { l.ends("joints.gender", func(j *Joint) string { return j.Gender }, "same") }

func handDiffers(l *line) { l.ends("joints.hand", func(j *Joint) string { return j.Hand }, "differs") }

func sizeOfEndsDiffers(l *line) {
	l.ends("joints.size", func(j *Joint) string { return j.Size }, "differs")
}

func lookAlikeJoins(l *line) {
	for _, j := range l.Joints {
		if !j.Open && l.knows(j.ID, said("joints.mate", j.Mate)) && j.Mate == "stop" {
			l.findJoint(j, word("why", j.Why))
		}
	}
}

func gasNotAssignedToOutlet(l *line) {
	for _, j := range l.Joints {
		if !j.Open && j.Cylinder && l.knows(j.ID, has("joints.gas_listed", j.GasListed)) && no(j.GasListed) {
			l.findJoint(j)
		}
	}
}

func outletNumberDiffers(l *line) {
	for _, j := range l.Joints {
		if !j.Open && j.Cylinder && l.knows(j.ID, said("joints.outlet_number", j.Number)) && j.Number == "differs" {
			l.findJoint(j)
		}
	}
}

// hoseEndOnlyBanded: an end of which the sheet says nothing is taken for one made up to the class of the hose.
func hoseEndOnlyBanded(l *line) {
	for _, h := range l.Hoses {
		if h.BandBarred && slices.Contains([]string{"band", "worm-drive", "none"}, h.Retention) {
			l.findPart(h.ID, word("carries", h.BandBarredBy), word("retention", h.Retention))
		}
	}
}

func leversNotLocked(l *line) {
	for _, j := range l.Joints {
		if !j.Open && j.NeedsLock && l.knows(j.ID, has("joints.locked", j.Locked)) && no(j.Locked) {
			l.findJoint(j)
		}
	}
}

// marineEnds are full threads, flanges to US classes, and the one quick coupling that is named.
var marineEnds = []string{"astm-f1122", "flange-asme-b16-5", "thread-g", "thread-npsm", "thread-npt", "thread-nptf", "thread-r"}

// marineHoseEndNotAccepted looks at hoses only, but at both of their ends.
func marineHoseEndNotAccepted(l *line) {
	if !l.under("33 CFR 154.500") {
		return
	}
	for _, j := range l.Joints {
		if j.Open || !l.knows(j.ID, said("joints.family_a", j.FamilyA), said("joints.family_b", j.FamilyB)) {
			continue
		}
		for _, h := range l.Hoses {
			if h.ID == j.A && !slices.Contains(marineEnds, j.FamilyA) {
				l.findAt(j.ID, h.ID, "", word("end", j.FamilyA))
			}
			if h.ID == j.B && !slices.Contains(marineEnds, j.FamilyB) {
				l.findAt(j.ID, h.ID, "", word("end", j.FamilyB))
			}
		}
	}
}

func serviceExcluded(l *line) {
	for _, j := range l.Joints {
		if j.Open {
			continue
		}
		for _, s := range j.Excluded {
			l.findJoint(j, word("service", s))
		}
	}
}
