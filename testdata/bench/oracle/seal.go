package oracle

var seal = []rule{
	{"seal/hot_and_high_together", condition, hotAndHighTogether},
	{"seal/kind_does_not_fit", stop, kindDoesNotFit},
	{"seal/missing", stop, sealMissing},
	{"seal/pressure_times_temperature_above_limit", stop, pressureTimesTemperatureAboveLimit},
	{"seal/size_differs", stop, sizeOfSealDiffers},
	{"seal/two_in_one_joint", stop, twoInOneJoint},
}

func kindDoesNotFit(l *line) {
	for _, s := range l.Seals {
		if l.knows(s.ID, said("seals.kind", s.Kind), has("seals.kind_fits", s.KindFits)) && no(s.KindFits) {
			l.find(s.ID, word("joint", s.Joint), word("kind", s.Kind))
		}
	}
}

func sizeOfSealDiffers(l *line) {
	for _, s := range l.Seals {
		if l.knows(s.ID, said("seals.size", s.Size)) && s.Size == "differs" {
			l.find(s.ID, word("joint", s.Joint))
		}
	}
}

func sealMissing(l *line) {
	for _, j := range l.Joints {
		if !j.Open && l.knows(j.ID, has("joints.needs_seal", j.NeedsSeal), has("joints.seal_count", j.SealCount)) &&
			yes(j.NeedsSeal) && *j.SealCount == 0 {
			l.findJoint(j)
		}
	}
}

func twoInOneJoint(l *line) {
	for _, j := range l.Joints {
		if !j.Open && l.knows(j.ID, has("joints.seal_count", j.SealCount)) && *j.SealCount > 1 {
			l.find(j.ID, num("have_count", *j.SealCount), num("need_count", 1), word("a", j.A), word("b", j.B))
		}
	}
}
