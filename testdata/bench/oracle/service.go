package oracle

import (
	"slices"
	"strings"
)

var service = []rule{
	{"service/acetylene_above_15_psig", stop, acetyleneAbove15Psig},
	{"service/air_blows_out_flammable", stop, airBlowsOutFlammable},
	{"service/air_pad_on_flammable", stop, airPadOnFlammable},
	{"service/air_test_on_flammable", condition, airTestOnFlammable},
	{"service/ammonia_hose_carries_lpg", stop, ammoniaHoseCarriesLPG},
	{"service/chlorine_pad_above_75_percent", stop, chlorinePadAbove75Percent},
	{"service/hose_not_for_ammonia", stop, hoseNotForAmmonia},
	{"service/kept_out_by_class", stop, keptOutByClass},
	{"service/lpg_hose_not_listed", stop, lpgHoseNotListed},
	{"service/oily_gas_on_oxygen", stop, oilyGasOnOxygen},
	{"service/outside_hose_class", stop, outsideHoseClass},
	{"service/oxide_hose_not_named_by_maker", stop, oxideHoseNotNamedByMaker},
	{"service/oxygen_cylinder_without_regulator", stop, oxygenCylinderWithoutRegulator},
	{"service/oxygen_depletion_in_room", stop, oxygenDepletionInRoom},
	{"service/oxygen_low_in_room", condition, oxygenLowInRoom},
	{"service/oxygen_not_clean", stop, oxygenNotClean},
	{"service/pad_gas_forbidden", stop, padGasForbidden},
	{"service/passive_shutoff_acts_on_separation_only", note, passiveShutoffActsOnSeparationOnly},
	{"service/restraint_too_weak", stop, restraintTooWeak},
	{"service/whip_not_restrained", condition, whipNotRestrained},
}

func acetyleneAbove15Psig(l *line) {
	for _, f := range l.Fluids {
		if f.Fluid == "acetylene" && l.knows(f.ID, has("fluids.duty_kpa", f.DutyKPa)) && *f.DutyKPa > 104 {
			l.find(f.ID, num("have_kpa", *f.DutyKPa), num("need_kpa", 104), word("name", f.Name))
		}
	}
}

// airOn finds air in one role on a line that carries what burns.
func (l *line) airOn(role string) {
	for _, f := range l.Fluids {
		if f.Role == role && f.Air && l.Line.Flammable {
			l.find(f.ID, word("name", f.Name))
		}
	}
}

func airBlowsOutFlammable(l *line) { l.airOn("flush") }
func airTestOnFlammable(l *line)   { l.airOn("test") }

func airPadOnFlammable(l *line) {
	for _, m := range l.Meetings {
		if m.Where == "pad" && m.AirPad {
			l.find(m.ID, word("a", m.A), word("b", m.B))
		}
	}
}

// padGasForbidden leaves air to the rule before.
func padGasForbidden(l *line) {
	for _, m := range l.Meetings {
		if m.Where == "pad" && m.Forbidden && !m.AirPad {
			l.find(m.ID, word("a", m.A), word("b", m.B), word("why", m.Why))
		}
	}
}

func chlorinePadAbove75Percent(l *line) {
	for _, v := range l.Vessels {
		if v.Padded && v.Chlorine && l.under("46 CFR 151.50-31") && l.knows(v.ID, has("vessels.supply_kpa", v.SupplyKPa),
			has("vessels.rated_kpa", v.RatedKPa)) && 100**v.SupplyKPa > 75**v.RatedKPa {
			l.findPart(v.ID, num("rated_kpa", *v.RatedKPa), num("supply_kpa", *v.SupplyKPa))
		}
	}
}

// names are the words for a service, with the fluid itself among them.
func (s *Service) names() []string { return append([]string{"fluid:" + s.FluidID}, s.Words...) }

// among are the names that stand in a list, each once, sorted.
func (s *Service) among(list []string) []string {
	var out []string
	for _, w := range s.names() {
		if slices.Contains(list, w) {
			out = append(out, w)
		}
	}
	slices.Sort(out)
	return slices.Compact(out)
}

func keptOutByClass(l *line) {
	for _, s := range l.Services {
		if s.Ammonia || !l.knows(s.ID, has("services.class_known", s.ClassKnown)) || no(s.ClassKnown) {
			continue
		}
		if out := s.among(s.NotFor); len(out) > 0 {
			l.findAt(s.ID, s.Hose, "", word("excluded", strings.Join(out, ", ")), word("fluid", s.Fluid))
		}
	}
}

// outsideHoseClass lets the maker name what the class does not.
func outsideHoseClass(l *line) {
	for _, s := range l.Services {
		if !s.Ammonia && s.ForStated && l.knows(s.ID, has("services.class_known", s.ClassKnown)) && yes(s.ClassKnown) &&
			len(s.among(s.OnlyFor)) == 0 && len(s.among(s.NotFor)) == 0 && !yes(s.Named) {
			l.findAt(s.ID, s.Hose, "", word("fluid", s.Fluid))
		}
	}
}

func oxideHoseNotNamedByMaker(l *line) {
	for _, s := range l.Services {
		if (s.FluidID == "ethylene-oxide" || s.FluidID == "propylene-oxide") &&
			l.knows(s.ID, has("services.maker_names_it", s.Named)) && no(s.Named) {
			l.findAt(s.ID, s.Hose, "", word("fluid", s.Fluid))
		}
	}
}

func oilyGasOnOxygen(l *line) {
	for _, f := range l.Fluids {
		if helperGas(f) && no(f.OilFree) && l.meetsOxygen() {
			l.find(f.ID, word("name", f.Name))
		}
	}
}

func oxygenCylinderWithoutRegulator(l *line) {
	if !l.under("29 CFR 1910.253") {
		return
	}
	cylinder := slices.ContainsFunc(l.Fluids, func(f *Fluid) bool { return f.Fluid == "oxygen" && f.Form == "compressed-gas" })
	if cylinder && !slices.ContainsFunc(l.Parts, func(p *Part) bool { return p.Kind == "regulator" && p.Oxygen }) {
		l.find(lineSubject)
	}
}
