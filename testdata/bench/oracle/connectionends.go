package oracle

// boltsByLaw: at a hose the marine law leaves every other hole of a class flange open.
func (l *line) boltsByLaw(j *Joint) bool {
	return l.under("33 CFR 156.130") && j.ClassBolt && j.AtHose
}

func (l *line) boltsKnown(j *Joint) bool {
	return l.knows(j.ID, has("joints.bolts", j.Bolts), has("joints.bolt_holes", j.Holes))
}

// boltsBelowMarineLaw: half of the holes, and four at least.
func boltsBelowMarineLaw(l *line) {
	for _, j := range l.Joints {
		if j.BoltsWant && l.boltsByLaw(j) && l.boltsKnown(j) && (*j.Bolts < 4 || 2**j.Bolts < *j.Holes) {
			l.find(j.ID, num("bolts_count", *j.Bolts), num("holes_count", *j.Holes), word("a", j.A), word("b", j.B))
		}
	}
}

// boltsMissing asks for the count also where the law before speaks.
func boltsMissing(l *line) {
	for _, j := range l.Joints {
		if j.BoltsWant && l.boltsKnown(j) && !l.boltsByLaw(j) && *j.Bolts < *j.Holes {
			l.find(j.ID, num("have_count", *j.Bolts), num("need_count", *j.Holes), word("a", j.A), word("b", j.B))
		}
	}
}

func clampDoesNotFit(l *line) {
	for _, t := range l.Tails {
		if t.Clamped && l.knows(t.ID, has("tails.outside_um", t.OutsideUM), has("tails.clamp_least_um", t.ClampLeast),
			has("tails.clamp_most_um", t.ClampMost)) && (*t.OutsideUM < *t.ClampLeast || *t.OutsideUM > *t.ClampMost) {
			l.findPart(t.ID, num("least_um", *t.ClampLeast), num("most_um", *t.ClampMost), num("outside_um", *t.OutsideUM))
		}
	}
}

func (l *line) findTail(t *Tail) {
	l.findPart(t.ID, num("have_um", *t.TailUM), num("need_um", *t.HoseUM))
}

// apart says whether the tail and the hose, both known, are more than 6 per cent of the larger apart.
func (t *Tail) apart() bool {
	small, large := min(*t.TailUM, *t.HoseUM), max(*t.TailUM, *t.HoseUM)
	return 100*small < 94*large
}

// hoseTailDiffers leaves it to hoseTailNearlyFits to ask for what is not known.
func hoseTailDiffers(l *line) {
	for _, t := range l.Tails {
		if t.TailUM != nil && t.HoseUM != nil && t.apart() {
			l.findTail(t)
		}
	}
}

func hoseTailNearlyFits(l *line) {
	for _, t := range l.Tails {
		if l.knows(t.ID, has("tails.tail_um", t.TailUM), has("tails.hose_um", t.HoseUM)) && *t.TailUM != *t.HoseUM && !t.apart() {
			l.findTail(t)
		}
	}
}
