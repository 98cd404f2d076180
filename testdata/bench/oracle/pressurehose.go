package oracle

// figureBelow finds a hose of which one figure is below a legal one.
func (l *line) figureBelow(h *Hose, fact string, have *int64, least int64, more ...figure) {
	if l.knows(h.ID, has(fact, have)) && *have < least {
		l.findPart(h.ID, append([]figure{num("have_kpa", *have), num("need_kpa", least)}, more...)...)
	}
}

func (l *line) ratedBelow(h *Hose, least int64, more ...figure) {
	l.figureBelow(h, "hoses.rated_kpa", h.RatedKPa, least, more...)
}

func (l *line) burstBelow(h *Hose, least int64, more ...figure) {
	l.figureBelow(h, "hoses.burst_kpa", h.BurstKPa, least, more...)
}

func belowAmmoniaLaw(l *line) {
	for _, h := range l.Hoses {
		if h.Ammonia && l.under("29 CFR 1910.111") {
			l.ratedBelow(h, 2413) // 350 psig
		}
	}
}

func belowChemicalCargoLaw(l *line) {
	for _, h := range l.Hoses {
		if l.under("46 CFR 153.940") {
			l.ratedBelow(h, 1030)
		}
	}
}

func belowGasCarrierLaw(l *line) {
	for _, h := range l.Hoses {
		if l.under("46 CFR 154.560") {
			l.ratedBelow(h, 1034) // 150 psig
		}
	}
}

func belowOilCargoLaw(l *line) {
	for _, h := range l.Hoses {
		if l.under("46 CFR 32.50-30") {
			l.ratedBelow(h, 1034) // 150 psi
		}
	}
}

// belowStateAmmoniaLaw names every law that is broken.
func belowStateAmmoniaLaw(l *line) {
	for _, law := range []string{"8 CCR 510", "WAC 296-307-40023", "WAC 296-826-40010"} {
		for _, h := range l.Hoses {
			if h.Ammonia && l.under(law) {
				l.ratedBelow(h, 2413, word("law", law)) // 350 psi
			}
		}
	}
}

func belowWaterfrontGasLaw(l *line) {
	for _, h := range l.Hoses {
		if h.LiquefiedGas && l.under("33 CFR 127.1102") {
			l.ratedBelow(h, 1030)
		}
	}
}

func vapourHoseBelowMarineLaw(l *line) {
	for _, h := range l.Hoses {
		if h.Gas && l.under("33 CFR 154.2101") {
			l.ratedBelow(h, 34) // 5 psig
		}
	}
}

func vapourHoseBurstBelowMarineLaw(l *line) {
	for _, h := range l.Hoses {
		if h.Gas && l.under("33 CFR 154.2101") {
			l.burstBelow(h, 172) // 25 psig
		}
	}
}

func burstBelowAmmoniaLaw(l *line) {
	for _, h := range l.Hoses {
		if h.Ammonia && l.under("29 CFR 1910.111") {
			l.burstBelow(h, 12065) // 1750 psig
		}
	}
}

func burstBelowChemicalCargoLaw(l *line) {
	for _, h := range l.Hoses {
		if l.under("46 CFR 153.940") {
			l.burstBelow(h, 5152)
		}
	}
}

func burstBelowLPGLaw(l *line) {
	for _, h := range l.Hoses {
		if h.LPG && l.under("29 CFR 1910.110") {
			l.burstBelow(h, 8618) // 1250 psig
		}
	}
}

func burstBelowStateAmmoniaLaw(l *line) {
	for _, law := range []string{"WAC 296-307-40023", "WAC 296-826-40010"} {
		for _, h := range l.Hoses {
			if h.Ammonia && l.under(law) {
				l.burstBelow(h, 12065, word("law", law)) // 1750 psig
			}
		}
	}
}

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

func vacuumBeyondHose(l *line) {
	for _, h := range l.Hoses {
		if h.VacuumLikely && l.knows(h.ID, has("hoses.vacuum_need_kpa", h.VacuumNeedKPa),
			has("hoses.vacuum_have_kpa", h.VacuumHaveKPa)) && *h.VacuumHaveKPa < *h.VacuumNeedKPa {
			l.findPart(h.ID, num("have_kpa", *h.VacuumHaveKPa), num("need_kpa", *h.VacuumNeedKPa), word("cause", h.VacuumCause))
		}
	}
}
