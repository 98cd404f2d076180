package oracle

func vacuumBeyondHose(l *line) {
	for _, h := range l.Hoses {
		if h.VacuumLikely && l.knows(h.ID, has("hoses.vacuum_need_kpa", h.VacuumNeedKPa),
			has("hoses.vacuum_have_kpa", h.VacuumHaveKPa)) && *h.VacuumHaveKPa < *h.VacuumNeedKPa {
			l.findPart(h.ID, num("have_kpa", *h.VacuumHaveKPa), num("need_kpa", *h.VacuumNeedKPa), word("cause", h.VacuumCause))
		}
	}
}

func vacuumBeyondVessel(l *line) {
	for _, v := range l.Vessels {
		if v.VacuumLikely && l.knows(v.ID, has("vessels.vacuum_need_kpa", v.VacuumNeedKPa),
			has("vessels.vacuum_have_kpa", v.VacuumHaveKPa)) && *v.VacuumHaveKPa < *v.VacuumNeedKPa {
			l.findPart(v.ID, num("have_kpa", *v.VacuumHaveKPa), num("need_kpa", *v.VacuumNeedKPa), word("cause", v.VacuumCause))
		}
	}
}
