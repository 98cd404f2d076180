package oracle

// lowSideBurst finds a hose behind a regulator that bursts below five times its relief device, or below 125 psig.
func (l *line) lowSideBurst(h *Hose) {
	if l.knows(h.ID, has("hoses.burst_kpa", h.BurstKPa), has("hoses.low_side_relief_kpa", h.LowReliefKPa)) {
		l.burstBelow(h, max(861, 5**h.LowReliefKPa))
	}
}

func lowSideBurstBelowAmmoniaLaw(l *line) {
	for _, h := range l.Hoses {
		if h.Ammonia && h.LowSide && l.under("29 CFR 1910.111") {
			l.lowSideBurst(h)
		}
	}
}

func lowSideBurstBelowLPGLaw(l *line) {
	for _, h := range l.Hoses {
		if h.LPG && h.LowSide && l.under("29 CFR 1910.110") {
			l.lowSideBurst(h)
		}
	}
}
