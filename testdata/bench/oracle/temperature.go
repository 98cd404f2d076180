package oracle

var temperature = []rule{
	{"temperature/above_limit", stop, aboveLimit},
	{"temperature/below_limit", stop, belowLimit},
	{"temperature/cool_after_steam", condition, coolAfterSteam},
	{"temperature/seal_above_limit", stop, sealAboveLimit},
	{"temperature/seal_below_limit", stop, sealBelowLimit},
	{"temperature/steam_hotter_than_stated", stop, steamHotterThanStated},
	{"temperature/test_liquid_freezes", stop, testLiquidFreezes},
	{"temperature/test_liquid_left_in_frost", condition, testLiquidLeftInFrost},
	{"temperature/vented_cold_below_limit", condition, ventedColdBelowLimit},
}

func (l *line) findLimit(x *Limit, have, need int64) {
	l.findAt(x.ID, x.Part, "", num("have_ck", have), num("need_ck", need), word("what", x.What))
}

// tooHot finds seals, or all that is none, that get hotter than they may.
func (l *line) tooHot(seal bool) {
	for _, x := range l.Limits {
		if x.Seal == seal && l.knows(x.ID, has("limits.highest_ck", x.HighestCK), has("limits.hottest_ck", x.HottestCK)) &&
			*x.HottestCK > *x.HighestCK {
			l.findLimit(x, *x.HighestCK, *x.HottestCK)
		}
	}
}

func (l *line) tooCold(seal bool) {
	for _, x := range l.Limits {
		if x.Seal == seal && l.knows(x.ID, has("limits.lowest_ck", x.LowestCK), has("limits.coldest_ck", x.ColdestCK)) &&
			*x.ColdestCK < *x.LowestCK {
			l.findLimit(x, *x.LowestCK, *x.ColdestCK)
		}
	}
}

func aboveLimit(l *line)     { l.tooHot(false) }
func belowLimit(l *line)     { l.tooCold(false) }
func sealAboveLimit(l *line) { l.tooHot(true) }
func sealBelowLimit(l *line) { l.tooCold(true) }

// ventedColdBelowLimit: a liquefied gas that is let off chills what it leaves.
func ventedColdBelowLimit(l *line) {
	if !l.Line.LiquefiedGas {
		return
	}
	for _, x := range l.Limits {
		if l.knows(x.ID, has("limits.lowest_ck", x.LowestCK)) && below(x.VentedCK, *x.LowestCK) {
			l.findLimit(x, *x.LowestCK, *x.VentedCK)
		}
	}
}
