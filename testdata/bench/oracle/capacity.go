package oracle

// capacity finds what holds too little by its own measure.
func (l *line) capacity(c *Capacity, tooLittle func(have, need int64) bool, more ...figure) {
	if l.knows(c.ID, has("capacities.rated_kpa", c.RatedKPa), has("capacities.demand_kpa", c.DemandKPa)) &&
		tooLittle(*c.RatedKPa, *c.DemandKPa) {
		l.findAt(c.ID, c.Part, c.Case, append([]figure{num("have_kpa", *c.RatedKPa), num("need_kpa", *c.DemandKPa)}, more...)...)
	}
}

// notAboveDemandByMarineLaw wants more than the demand, not as much.
func notAboveDemandByMarineLaw(l *line) {
	for _, c := range l.Capacities {
		if c.Hose && l.under("33 CFR 154.500") {
			l.capacity(c, func(have, need int64) bool { return have <= need })
		}
	}
}

func ratingBelowDemand(l *line) {
	for _, c := range l.Capacities {
		if !c.Accumulates {
			l.capacity(c, func(have, need int64) bool { return have < need }, word("what", c.What))
		}
	}
}

// vesselAccumulatesBeyondCode: a tenth over the rating while the relief device blows.
func vesselAccumulatesBeyondCode(l *line) {
	for _, c := range l.Capacities {
		if c.Accumulates {
			l.capacity(c, func(have, need int64) bool { return have*110 < need*100 })
		}
	}
}
