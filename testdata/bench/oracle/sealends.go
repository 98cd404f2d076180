package oracle

// hotAndHighTogether: past half of both limits, where no limit of the two together is known.
func hotAndHighTogether(l *line) {
	for _, s := range l.Seals {
		if !s.Both && above(s.PShare, 500) && above(s.TShare, 500) {
			l.find(s.ID, num("pressure_permille", *s.PShare), num("temperature_permille", *s.TShare), word("seal", s.ID))
		}
	}
}

func pressureTimesTemperatureAboveLimit(l *line) {
	for _, s := range l.Seals {
		if s.Both && l.knows(s.ID, has("seals.pressure_times_temperature_kpac", s.HaveBoth),
			has("seals.pressure_times_temperature_limit_kpac", s.MostBoth)) && *s.HaveBoth > *s.MostBoth {
			l.find(s.ID, num("have_kpac", *s.HaveBoth), num("need_kpac", *s.MostBoth), word("seal", s.ID))
		}
	}
}
