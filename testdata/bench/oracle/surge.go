package oracle

var surge = []rule{
	{"surge/closing_peak_above_rating", stop, closingPeakAboveRating},
	{"surge/closing_time_not_stated", note, closingTimeNotStated},
}

func closingPeakAboveRating(l *line) {
	for _, s := range l.Surges {
		if l.knows(s.ID, has("surges.peak_kpa", s.PeakKPa), has("surges.weakest_kpa", s.WeakestKPa)) && *s.PeakKPa > *s.WeakestKPa {
			l.findAt(s.ID, s.Weakest, "surge", num("have_kpa", *s.WeakestKPa), num("need_kpa", *s.PeakKPa), word("device", s.ID))
		}
	}
}

// closingTimeNotStated is silent where the line is known to hold even if the device closes at once.
func closingTimeNotStated(l *line) {
	for _, s := range l.Surges {
		holds := s.PeakKPa != nil && s.WeakestKPa != nil && *s.PeakKPa <= *s.WeakestKPa
		if !s.ClosingStated && !holds {
			l.findPart(s.ID)
		}
	}
}
