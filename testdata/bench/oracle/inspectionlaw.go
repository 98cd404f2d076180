package oracle

import (
	"slices"
	"strings"
)

// proofTestMayHaveDamaged: more than two fifths of the burst pressure.
func proofTestMayHaveDamaged(l *line) {
	if !l.under("46 CFR 38.15-5", "46 CFR 154.562") {
		return
	}
	for _, h := range l.Hoses {
		if l.knows(h.ID, has("hoses.test_pressure_kpa", h.TestedAtKPa), has("hoses.burst_kpa", h.BurstKPa)) &&
			5**h.TestedAtKPa > 2**h.BurstKPa {
			l.findPart(h.ID, num("burst_kpa", *h.BurstKPa), num("test_kpa", *h.TestedAtKPa))
		}
	}
}

// testShare finds a test pressure below times/by of the rating, after one kPa for the roundings of both.
func (l *line) testShare(h *Hose, times, by int64, law ...figure) {
	if l.knows(h.ID, has("hoses.rated_kpa", h.RatedKPa), has("hoses.test_pressure_kpa", h.TestedAtKPa)) &&
		by*(*h.TestedAtKPa+1) <= times**h.RatedKPa {
		l.findPart(h.ID, append([]figure{num("rated_kpa", *h.RatedKPa), num("test_kpa", *h.TestedAtKPa)}, law...)...)
	}
}

func stateAmmoniaJointsTestedTooLow(l *line) {
	for _, h := range l.Hoses {
		if h.Ammonia && l.under("8 CCR 510") {
			l.testShare(h, 2, 1)
		}
	}
}

func testBelowChemicalCargoLaw(l *line) {
	for _, h := range l.Hoses {
		if l.under("46 CFR 153.940") {
			l.testShare(h, 1, 1)
		}
	}
}

func testBelowGasCarrierLaw(l *line) {
	for _, h := range l.Hoses {
		if l.under("46 CFR 154.562") {
			l.testShare(h, 3, 2)
		}
	}
}

func testBelowGasShipLaw(l *line) {
	for _, h := range l.Hoses {
		if l.under("46 CFR 38.15-5") {
			l.testShare(h, 2, 1)
		}
	}
}

// testBelowMarineLaw names every law that is broken.
func testBelowMarineLaw(l *line) {
	for _, law := range []string{"33 CFR 154.500", "33 CFR 156.170", "46 CFR 151.04-5"} {
		for _, h := range l.Hoses {
			if l.under(law) {
				l.testShare(h, 3, 2, word("law", law))
			}
		}
	}
}

func testBelowWaterfrontGasLaw(l *line) {
	for _, law := range []string{"33 CFR 127.1102", "33 CFR 127.1407"} {
		for _, h := range l.Hoses {
			if l.under(law) {
				l.testShare(h, 11, 10, word("law", law))
			}
		}
	}
}

// legalDays are how old a pressure test may be: a year, two years, or fifteen months.
var legalDays = map[string]int64{
	"33 CFR 127.1102": 454, "33 CFR 127.1407": 454, "33 CFR 154.500": 365, "33 CFR 156.170": 365, "46 CFR 151.04-5": 730,
	"49 CFR 180.416": 365,
}

// testOlderThanLawAllows names those of the laws that are the strictest.
func testOlderThanLawAllows(l *line) {
	var laws []string
	longest := int64(0)
	for _, r := range l.Line.Regimes {
		days, ok := legalDays[r]
		switch {
		case !ok || laws != nil && days > longest:
		case laws == nil || days < longest:
			laws, longest = []string{r}, days
		default:
			laws = append(laws, r)
		}
	}
	if laws == nil {
		return
	}
	slices.Sort(laws)
	laws = slices.Compact(laws)
	for _, h := range l.Hoses {
		if l.knows(h.ID, has("hoses.days_since_test", h.TestedDays)) && *h.TestedDays > longest {
			l.findPart(h.ID, num("have_days", *h.TestedDays), num("need_days", longest), word("law", strings.Join(laws, ", ")))
		}
	}
}
