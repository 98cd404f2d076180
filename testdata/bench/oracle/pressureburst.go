package oracle

// burstTimes finds a hose that bursts below so many times the highest pressure it meets, after one kPa for the roundings
// of both. Without any pressure that is known there is nothing to compare with.
func (l *line) burstTimes(h *Hose, times int64, pressures ...*int64) {
	if !l.knows(h.ID, has("hoses.burst_kpa", h.BurstKPa)) {
		return
	}
	for _, c := range l.Capacities {
		if c.Hose && c.Part == h.ID {
			pressures = append(pressures, c.DemandKPa)
		}
	}
	var top *int64
	for _, p := range pressures {
		if p != nil && (top == nil || *p > *top) {
			top = p
		}
	}
	if top != nil && *h.BurstKPa+1 <= times*(*top-1) {
		l.findPart(h.ID, num("have_kpa", *h.BurstKPa), num("need_kpa", times**top))
	}
}

func burstBelowGasShipLaw(l *line) {
	for _, h := range l.Hoses {
		if l.under("46 CFR 38.15-5") {
			l.burstTimes(h, 5)
		}
	}
}

func burstBelowMarineLaw(l *line) {
	for _, h := range l.Hoses {
		if l.under("33 CFR 154.500") {
			l.burstTimes(h, 4)
		}
	}
}

// tankers are what the tankers of the line are rated for.
func (l *line) tankers() (rated []*int64) {
	for _, v := range l.Vessels {
		if v.Kind == "tanker" {
			rated = append(rated, v.RatedKPa)
		}
	}
	return rated
}

func burstBelowRoadGasLaw(l *line) {
	for _, h := range l.Hoses {
		if l.under("49 CFR 178.337-9") {
			l.burstTimes(h, 4, l.tankers()...)
		}
	}
}

// burstBelowRoadTankLaw: four times the tanker, and 100 psig at least.
func burstBelowRoadTankLaw(l *line) {
	for _, h := range l.Hoses {
		if !l.under("49 CFR 178.345-9") {
			continue
		}
		least := int64(689)
		for _, rated := range l.tankers() {
			if rated != nil {
				least = max(least, 4**rated)
			}
		}
		l.burstBelow(h, least)
	}
}

// fiveTimes finds a hose that bursts below five times its working pressure.
func (l *line) fiveTimes(h *Hose) {
	if l.knows(h.ID, has("hoses.burst_ratio_permille", h.RatioPermille)) && *h.RatioPermille < 5000 {
		l.findPart(h.ID, num("have_ratio_permille", *h.RatioPermille), num("need_ratio_permille", 5000))
	}
}

func burstRatioBelowChemicalCargoLaw(l *line) {
	for _, h := range l.Hoses {
		if l.under("46 CFR 153.940") {
			l.fiveTimes(h)
		}
	}
}

func burstRatioBelowStateAmmoniaLaw(l *line) {
	for _, h := range l.Hoses {
		if h.Ammonia && l.under("8 CCR 510") {
			l.fiveTimes(h)
		}
	}
}

func burstRatioBelowWaterfrontGasLaw(l *line) {
	for _, h := range l.Hoses {
		if h.LiquefiedGas && l.under("33 CFR 127.1102") {
			l.fiveTimes(h)
		}
	}
}

// burstRatioBelowStandard asks for what the standard of the hose wants, or else for what its medium does.
func burstRatioBelowStandard(l *line) {
	for _, h := range l.Hoses {
		l.knows(h.ID, has("hoses.burst_ratio_permille", h.RatioPermille), has("hoses.rated_kpa", h.RatedKPa))
		if least := ratioOf(h); below(h.RatioPermille, least) {
			l.findPart(h.ID, num("have_ratio_permille", *h.RatioPermille), num("need_ratio_permille", least), word("medium", h.Medium))
		}
	}
}

// ratioOf is in thousandths. Water has a lower one where its pressure is known to be low: 150 psig.
func ratioOf(h *Hose) int64 {
	switch {
	case h.ClassRatio != nil:
		return *h.ClassRatio
	case h.Medium == "water" && below(h.RatedKPa, 1035):
		return 3000
	case h.Medium == "liquefied-gas":
		return 5000
	case h.Medium == "steam":
		return 10000
	}
	return 4000
}

func proofTestBelowWorkingPressure(l *line) {
	for _, h := range l.Hoses {
		if l.knows(h.ID, has("hoses.rated_kpa", h.RatedKPa)) && below(h.TestedAtKPa, *h.RatedKPa) {
			l.findPart(h.ID, num("have_kpa", *h.TestedAtKPa), num("need_kpa", *h.RatedKPa))
		}
	}
}
