package oracle

var expansion = []rule{
	{"expansion/ammonia_section_without_relief", stop, ammoniaSectionWithoutRelief},
	{"expansion/filled_above_transport_degree", stop, filledAboveTransportDegree},
	{"expansion/lpg_relief_outside_window", stop, lpgReliefOutsideWindow},
	{"expansion/lpg_section_without_relief", stop, lpgSectionWithoutRelief},
	{"expansion/section_relief_above_weakest", stop, sectionReliefAboveWeakest},
	{"expansion/trapped_liquid_above_rating", stop, trappedLiquidAboveRating},
	{"expansion/trapped_liquid_relies_on_draining", condition, trappedLiquidReliesOnDraining},
	{"expansion/vessel_liquid_full_when_hot", stop, vesselLiquidFullWhenHot},
}

// The window of 29 CFR 1910.110(b)(10)(xii): 500 and 400 psig, rounded up.
const (
	lpgReliefMostKPa  = 3448
	lpgReliefLeastKPa = 2758
)

func ammoniaSectionWithoutRelief(l *line) {
	if !l.under("29 CFR 1910.111") {
		return
	}
	for _, s := range l.Sections {
		if s.Liquid && s.Ammonia && !s.Relieved {
			l.find(s.ID, word("from", s.From), word("to", s.To))
		}
	}
}

func lpgSectionWithoutRelief(l *line) {
	if !l.under("29 CFR 1910.110") {
		return
	}
	for _, s := range l.Sections {
		if s.Liquid && s.LPG && !s.Relieved {
			l.find(s.ID, word("from", s.From), word("to", s.To))
		}
	}
}

// filledAboveTransportDegree is about what is carried: a vessel on its foundation is not, one of unknown kind may be.
func filledAboveTransportDegree(l *line) {
	if !l.under("ADR") {
		return
	}
	for _, v := range l.Vessels {
		if !v.Source || !v.Liquid || !l.knows(v.ID, has("vessels.filled_permille", v.FilledPermille),
			has("vessels.fill_limit_permille", v.FillLimit)) {
			continue
		}
		fixed := v.Kind == "tank" || v.Kind == "pressure-vessel" || v.Kind == "process-vessel"
		if !fixed && *v.FilledPermille > *v.FillLimit {
			l.findPart(v.ID, num("have_permille", *v.FilledPermille), num("need_permille", *v.FillLimit))
		}
	}
}

// lpgReliefOutsideWindow: the lower end counts only where a cylinder of flammable liquid is joined on.
func lpgReliefOutsideWindow(l *line) {
	if !l.under("29 CFR 1910.110") {
		return
	}
	bottle := false
	for _, v := range l.Vessels {
		bottle = bottle || v.Kind == "cylinder" && v.Flammable && v.Liquid
	}
	for _, r := range l.Reliefs {
		if !r.LPGLiquid || !l.knows(r.ID, has("reliefs.set_kpa", r.SetKPa)) {
			continue
		}
		if *r.SetKPa > lpgReliefMostKPa {
			l.findPart(r.ID, num("have_kpa", *r.SetKPa), num("need_kpa", lpgReliefMostKPa), word("bound", "no more than"))
		}
		if bottle && *r.SetKPa < lpgReliefLeastKPa {
			l.findPart(r.ID, num("have_kpa", *r.SetKPa), num("need_kpa", lpgReliefLeastKPa), word("bound", "no less than"))
		}
	}
}

// sectionReliefAboveWeakest gives one kPa for roundings, and leaves LP-gas within the window of its law alone.
func sectionReliefAboveWeakest(l *line) {
	for _, s := range l.Sections {
		if !s.Liquid || !s.Relieved || !l.knows(s.ID, has("sections.relief_set_kpa", s.ReliefKPa),
			has("sections.weakest_kpa", s.WeakestKPa)) {
			continue
		}
		window := s.LPG && *s.ReliefKPa <= lpgReliefMostKPa && l.under("29 CFR 1910.110")
		if !window && *s.ReliefKPa > *s.WeakestKPa+1 {
			l.findShutIn(s, *s.ReliefKPa)
		}
	}
}

func (l *line) findShutIn(s *Section, kpa int64) {
	l.findAt(s.ID, s.Weakest, "shut-in-liquid", num("have_kpa", *s.WeakestKPa), num("need_kpa", kpa),
		word("from", s.From), word("to", s.To))
}

func trappedLiquidAboveRating(l *line) {
	for _, s := range l.Sections {
		if s.Liquid && !s.Relieved && !s.Drained && s.Warmed &&
			l.knows(s.ID, has("sections.blocked_kpa", s.BlockedKPa), has("sections.weakest_kpa", s.WeakestKPa)) &&
			*s.BlockedKPa > *s.WeakestKPa {
			l.findShutIn(s, *s.BlockedKPa)
		}
	}
}

// trappedLiquidReliesOnDraining is silent only where the section is known to hold by itself.
func trappedLiquidReliesOnDraining(l *line) {
	for _, s := range l.Sections {
		holds := s.BlockedKPa != nil && s.WeakestKPa != nil && *s.BlockedKPa <= *s.WeakestKPa
		if s.Liquid && !s.Relieved && s.Drained && s.Warmed && !holds {
			l.find(s.ID, word("from", s.From), word("to", s.To))
		}
	}
}

func vesselLiquidFullWhenHot(l *line) {
	for _, v := range l.Vessels {
		if v.Closed && v.Liquid && v.Source &&
			l.knows(v.ID, has("vessels.liquid_full_ck", v.FullCK), has("vessels.hottest_ck", v.HottestCK)) &&
			*v.FullCK <= *v.HottestCK {
			l.findPart(v.ID, num("have_ck", *v.FullCK), num("need_ck", *v.HottestCK))
		}
	}
}
