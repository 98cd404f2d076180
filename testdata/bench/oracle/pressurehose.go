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
		if h.Ammonia && !h.LowSide && l.under("29 CFR 1910.111") {
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
		if h.Ammonia && !h.LowSide && l.under("29 CFR 1910.111") {
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
		if h.LPG && !h.LowSide && l.under("29 CFR 1910.110") {
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
