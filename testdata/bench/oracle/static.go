package oracle

import "slices"

var static = []rule{
	{"static/accumulator_in_plain_hose", note, accumulatorInPlainHose},
	{"static/hose_not_conductive", stop, hoseNotConductive},
	{"static/isolated_conductor_at_open_point", stop, isolatedConductorAtOpenPoint},
	{"static/isolated_conductor_in_closed_line", note, isolatedConductorInClosedLine},
	{"static/rate_not_stated", condition, chargeRateNotStated},
	{"static/resistance_above_grade", stop, resistanceAboveGrade},
	{"static/resistance_record_too_old", condition, resistanceRecordTooOld},
	{"static/second_insulating_length", stop, secondInsulatingLength},
	{"static/splash_filling", stop, splashFilling},
	{"static/starts_too_fast", condition, startsTooFast},
	{"static/too_little_relaxation", condition, tooLittleRelaxation},
	{"static/vapour_hose_resistance_above_law", stop, vapourHoseResistanceAboveLaw},
	{"static/velocity_above_limit", stop, velocityAboveLimit},
	{"static/vessel_not_bonded", condition, vesselNotBonded},
	{"static/vessel_not_bonded_by_law", stop, vesselNotBondedByLaw},
}

func (l *line) grade(h *Hose) need { return said("hoses.electrical_grade", h.Grade) }

func accumulatorInPlainHose(l *line) {
	for _, h := range l.Hoses {
		if h.Flammable && yes(h.Accumulator) && (h.Grade == "M" || h.Grade == "Ohm") {
			l.findPart(h.ID, word("grade", h.Grade))
		}
	}
}

// hoseNotConductive allows the one insulating length that is wanted between ship and shore.
func hoseNotConductive(l *line) {
	ship := l.under("33 CFR 154.2101", "33 CFR 154.500")
	for _, h := range l.Hoses {
		if h.Flammable && l.knows(h.ID, l.grade(h)) && (h.Grade == "none" || h.Grade == "discontinuous" && !ship) {
			l.findPart(h.ID, word("grade", h.Grade))
		}
	}
}

func secondInsulatingLength(l *line) {
	if !l.under("33 CFR 154.2101") {
		return
	}
	for _, h := range l.Hoses {
		if !l.knows(h.ID, l.grade(h)) || h.Grade != "discontinuous" {
			continue
		}
		if slices.ContainsFunc(l.Hoses, func(o *Hose) bool { return o.ID != h.ID && o.Run == h.Run && o.Grade == "discontinuous" }) {
			l.findPart(h.ID, word("run", h.Run))
		}
	}
}

// isolated finds metal that is not earthed on a line that carries what burns.
func (l *line) isolated(atOpenPoint bool) {
	for _, p := range l.Parts {
		if p.Flammable && p.AtOpenPoint == atOpenPoint &&
			l.knows(p.ID, has("parts.conductor", p.Conductor), has("parts.bonded", p.Bonded)) && yes(p.Conductor) && no(p.Bonded) {
			l.findPart(p.ID)
		}
	}
}

func isolatedConductorAtOpenPoint(l *line)  { l.isolated(true) }
func isolatedConductorInClosedLine(l *line) { l.isolated(false) }

// gradeOhms are the most that a grade may have from end to end.
var gradeOhms = map[string]int64{"M": 100, "M/T": 100, "Ohm": 1_000_000, "Ohm/T": 1_000_000}

func resistanceAboveGrade(l *line) {
	for _, h := range l.Hoses {
		if !h.Flammable || !l.knows(h.ID, l.grade(h), has("hoses.resistance_ohm", h.ResistanceOhm)) {
			continue
		}
		if most, ok := gradeOhms[h.Grade]; ok && *h.ResistanceOhm > most {
			l.findPart(h.ID, num("have_ohm", *h.ResistanceOhm), num("need_ohm", most), word("grade", h.Grade))
		}
	}
}

// vapourHoseResistanceAboveLaw is not for the insulating length.
func vapourHoseResistanceAboveLaw(l *line) {
	for _, h := range l.Hoses {
		if h.Gas && h.Flammable && l.under("33 CFR 154.2101") &&
			l.knows(h.ID, l.grade(h), has("hoses.resistance_ohm", h.ResistanceOhm)) &&
			h.Grade != "discontinuous" && *h.ResistanceOhm > 10000 {
			l.findPart(h.ID, num("have_ohm", *h.ResistanceOhm), num("need_ohm", 10000))
		}
	}
}

func resistanceRecordTooOld(l *line) {
	for _, h := range l.Hoses {
		if h.Flammable {
			l.daysPast(h, "hoses.days_since_resistance_test", h.ResistanceDays, 365)
		}
	}
}
