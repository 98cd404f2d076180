package oracle

var pressure = []rule{
	{"pressure/ammonia_container_below_law", stop, ammoniaContainerBelowLaw},
	{"pressure/ammonia_gauge_below_law", condition, ammoniaGaugeBelowLaw},
	{"pressure/ammonia_pump_below_law", stop, ammoniaPumpBelowLaw},
	{"pressure/below_ammonia_law", stop, belowAmmoniaLaw},
	{"pressure/below_chemical_cargo_law", stop, belowChemicalCargoLaw},
	{"pressure/below_gas_carrier_law", stop, belowGasCarrierLaw},
	{"pressure/below_oil_cargo_law", stop, belowOilCargoLaw},
	{"pressure/below_state_ammonia_law", stop, belowStateAmmoniaLaw},
	{"pressure/below_waterfront_gas_law", stop, belowWaterfrontGasLaw},
	{"pressure/burst_below_ammonia_law", stop, burstBelowAmmoniaLaw},
	{"pressure/burst_below_chemical_cargo_law", stop, burstBelowChemicalCargoLaw},
	{"pressure/burst_below_gas_ship_law", stop, burstBelowGasShipLaw},
	{"pressure/burst_below_lpg_law", stop, burstBelowLPGLaw},
	{"pressure/burst_below_marine_law", stop, burstBelowMarineLaw},
	{"pressure/burst_below_road_gas_law", stop, burstBelowRoadGasLaw},
	{"pressure/burst_below_road_tank_law", stop, burstBelowRoadTankLaw},
	{"pressure/burst_below_state_ammonia_law", stop, burstBelowStateAmmoniaLaw},
	{"pressure/burst_ratio_below_chemical_cargo_law", stop, burstRatioBelowChemicalCargoLaw},
	{"pressure/burst_ratio_below_standard", stop, burstRatioBelowStandard},
	{"pressure/burst_ratio_below_state_ammonia_law", stop, burstRatioBelowStateAmmoniaLaw},
	{"pressure/burst_ratio_below_waterfront_gas_law", stop, burstRatioBelowWaterfrontGasLaw},
	{"pressure/discharge_mark_not_stated", condition, dischargeMarkNotStated},
	{"pressure/gas_test_distance_not_stated", condition, gasTestDistanceNotStated},
	{"pressure/gas_test_too_near", stop, gasTestTooNear},
	{"pressure/hose_end_below_road_gas_law", stop, hoseEndBelowRoadGasLaw},
	{"pressure/low_side_burst_below_ammonia_law", stop, lowSideBurstBelowAmmoniaLaw},
	{"pressure/low_side_burst_below_lpg_law", stop, lowSideBurstBelowLPGLaw},
	{"pressure/lpg_fitting_below_law", stop, lpgFittingBelowLaw},
	{"pressure/not_above_demand_by_marine_law", stop, notAboveDemandByMarineLaw},
	{"pressure/pad_above_discharge_mark", stop, padAboveDischargeMark},
	{"pressure/proof_test_below_working_pressure", condition, proofTestBelowWorkingPressure},
	{"pressure/rating_below_demand", stop, ratingBelowDemand},
	{"pressure/regulator_inlet_below_source", stop, regulatorInletBelowSource},
	{"pressure/regulator_set_above_source", note, regulatorSetAboveSource},
	{"pressure/tank_above_test_pressure", stop, tankAboveTestPressure},
	{"pressure/test_above_part", stop, testAbovePart},
	{"pressure/test_below_working", condition, testBelowWorking},
	{"pressure/test_with_air_on_flammable", stop, testWithAirOnFlammable},
	{"pressure/vacuum_beyond_hose", stop, vacuumBeyondHose},
	{"pressure/vacuum_beyond_vessel", stop, vacuumBeyondVessel},
	{"pressure/vapour_hose_below_marine_law", stop, vapourHoseBelowMarineLaw},
	{"pressure/vapour_hose_burst_below_marine_law", stop, vapourHoseBurstBelowMarineLaw},
	{"pressure/vessel_accumulates_beyond_code", stop, vesselAccumulatesBeyondCode},
}

// ammoniaContainerBelowLaw: 250 psig for what holds the liquid under pressure.
func ammoniaContainerBelowLaw(l *line) {
	if !l.under("29 CFR 1910.111") {
		return
	}
	for _, v := range l.Vessels {
		if v.Liquid && l.knows(v.ID, has("vessels.rated_kpa", v.RatedKPa)) && *v.RatedKPa < 1723 &&
			(v.Kind == "pressure-vessel" || v.Kind == "tank" || v.Kind == "tanker") {
			l.find(v.ID, num("have_kpa", *v.RatedKPa), num("need_kpa", 1723), word("vessel", v.ID))
		}
	}
}

// ammoniaGaugeBelowLaw: 400 psi.
func ammoniaGaugeBelowLaw(l *line) {
	for _, g := range l.Gauges {
		if l.under("29 CFR 1910.111") && l.knows(g.ID, has("gauges.full_scale_kpa", g.FullKPa)) && *g.FullKPa < 2757 {
			l.findPart(g.ID, num("have_kpa", *g.FullKPa), num("need_kpa", 2757))
		}
	}
}

// ammoniaPumpBelowLaw: 250 psig.
func ammoniaPumpBelowLaw(l *line) {
	for _, c := range l.Capacities {
		if c.What == "body" && l.under("29 CFR 1910.111") && l.knows(c.ID, has("capacities.rated_kpa", c.RatedKPa)) &&
			*c.RatedKPa < 1723 && l.isKind(c.Part, "pump") {
			l.findAt(c.ID, c.Part, "", num("have_kpa", *c.RatedKPa), num("need_kpa", 1723))
		}
	}
}

// dischargeMarkNotStated: a light container whose mark nobody has stated may not hold the pad.
func dischargeMarkNotStated(l *line) {
	for _, v := range l.Vessels {
		if v.Padded && (v.Kind == "ibc" || v.Kind == "tote") && v.DischargeKPa == nil {
			l.findPart(v.ID)
		}
	}
}

// hoseEndBelowRoadGasLaw: 120 per cent of the hose, after one kPa for roundings.
func hoseEndBelowRoadGasLaw(l *line) {
	for _, c := range l.Capacities {
		if c.What != "end" || !l.under("49 CFR 178.337-9") || !l.knows(c.ID, has("capacities.rated_kpa", c.RatedKPa)) {
			continue
		}
		for _, h := range l.Hoses {
			if h.ID == c.Part && h.RatedKPa != nil && 5*(*c.RatedKPa+1) <= 6**h.RatedKPa {
				l.findAt(c.ID, c.Part, "", num("end_kpa", *c.RatedKPa), num("hose_kpa", *h.RatedKPa))
			}
		}
	}
}

// lpgFittingBelowLaw: 125 psig, or 250 psig where the run is operated above 125.
func lpgFittingBelowLaw(l *line) {
	for _, c := range l.Capacities {
		if c.What != "body" || !l.under("29 CFR 1910.110") || !l.knows(c.ID, has("capacities.rated_kpa", c.RatedKPa)) {
			continue
		}
		at := l.place(c.Part)
		if at < 0 || !l.carriesLPG(l.Parts[at].Run) {
			continue
		}
		if least := l.lpgFitting(l.Parts[at].Run); *c.RatedKPa < least {
			l.findAt(c.ID, c.Part, "", num("have_kpa", *c.RatedKPa), num("need_kpa", least))
		}
	}
}

func (l *line) carriesLPG(run string) bool {
	for _, h := range l.Hoses {
		if h.Run == run && h.LPG {
			return true
		}
	}
	return false
}

func (l *line) lpgFitting(run string) int64 {
	for _, k := range l.Cases {
		if k.Run == run && (k.Case == "duty" || k.Case == "vapour-pressure") && above(k.KPa, 862) {
			return 1723
		}
	}
	return 861
}

func padAboveDischargeMark(l *line) {
	for _, v := range l.Vessels {
		if v.Padded && l.knows(v.ID, has("vessels.pad_kpa", v.PadKPa)) && below(v.DischargeKPa, *v.PadKPa) {
			l.findPart(v.ID, num("have_kpa", *v.DischargeKPa), num("need_kpa", *v.PadKPa))
		}
	}
}

// tankAboveTestPressure gives one kPa for roundings.
func tankAboveTestPressure(l *line) {
	for _, v := range l.Vessels {
		if v.Padded && l.under("49 CFR 178.345-9") && l.knows(v.ID, has("vessels.pad_kpa", v.PadKPa),
			has("vessels.test_pressure_kpa", v.TestKPa)) && *v.PadKPa > *v.TestKPa+1 {
			l.findPart(v.ID, num("have_kpa", *v.TestKPa), num("need_kpa", *v.PadKPa))
		}
	}
}

func regulatorInletBelowSource(l *line) {
	for _, r := range l.Regulators {
		if l.knows(r.ID, has("regulators.source_kpa", r.SourceKPa), has("regulators.inlet_rated_kpa", r.InletRatedKPa)) &&
			*r.InletRatedKPa < *r.SourceKPa {
			l.findPart(r.ID, num("have_kpa", *r.InletRatedKPa), num("need_kpa", *r.SourceKPa))
		}
	}
}

func regulatorSetAboveSource(l *line) {
	for _, r := range l.Regulators {
		if r.SourceKPa != nil && above(r.SetKPa, *r.SourceKPa) {
			l.findPart(r.ID, num("set_kpa", *r.SetKPa), num("source_kpa", *r.SourceKPa))
		}
	}
}
