package oracle

func ammoniaHoseCarriesLPG(l *line) {
	for _, h := range l.Hoses {
		if h.LPG && yes(h.MarkedAmmonia) && no(h.MarkedLPG) {
			l.findPart(h.ID)
		}
	}
}

func hoseNotForAmmonia(l *line) {
	for _, h := range l.Hoses {
		if h.Ammonia && l.knows(h.ID, has("hoses.marked_ammonia", h.MarkedAmmonia)) && no(h.MarkedAmmonia) {
			l.findPart(h.ID)
		}
	}
}

// lpgHoseNotListed is about hose under the pressure of the container.
func lpgHoseNotListed(l *line) {
	for _, h := range l.Hoses {
		if h.LPG && !h.LowSide && l.under("29 CFR 1910.110") && l.knows(h.ID, has("hoses.listed", h.Listed)) && no(h.Listed) {
			l.findPart(h.ID)
		}
	}
}
