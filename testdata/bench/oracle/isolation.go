package oracle

import "slices"

var isolation = []rule{
	{"isolation/air_hose_without_flow_limit", stop, airHoseWithoutFlowLimit},
	{"isolation/ammonia_hose_break_not_contained", stop, ammoniaHoseBreakNotContained},
	{"isolation/ammonia_hose_without_end_valve", condition, ammoniaHoseWithoutEndValve},
	{"isolation/ammonia_transfer_unattended", stop, ammoniaTransferUnattended},
	{"isolation/dust_cap_under_pressure", stop, dustCapUnderPressure},
	{"isolation/excess_flow_bypass_above_law", stop, excessFlowBypassAboveLaw},
	{"isolation/excess_flow_closes_in_service", condition, excessFlowClosesInService},
	{"isolation/excess_flow_never_closes", stop, excessFlowNeverCloses},
	{"isolation/flammable_liquefied_gas_without_stop", condition, flammableLiquefiedGasWithoutStop},
	{"isolation/fluids_react_dangerously", stop, fluidsReactDangerously},
	{"isolation/mine_hose_not_restrained", stop, mineHoseNotRestrained},
	{"isolation/no_remote_or_automatic_stop", stop, noRemoteOrAutomaticStop},
	{"isolation/no_valve_before_hose", note, noValveBeforeHose},
	{"isolation/open_end_under_pressure", stop, openEndUnderPressure},
	{"isolation/oxyfuel_outlet_without_backflow_check", stop, oxyfuelOutletWithoutBackflowCheck},
	{"isolation/road_gas_without_passive_shutoff", stop, roadGasWithoutPassiveShutoff},
	{"isolation/same_coupling_behind_padlock", condition, sameCouplingBehindPadlock},
	{"isolation/same_coupling_in_reach", stop, sameCouplingInReach},
	{"isolation/toxic_flow_without_stop", condition, toxicFlowWithoutStop},
	{"isolation/unattended", condition, unattended},
	{"isolation/unused_end_behind_one_valve", note, unusedEndBehindOneValve},
}

// lineSubject is what findings on the line as a whole are about.
const lineSubject = "line"

// hasKind says whether any of the parts is of one of the kinds.
func hasKind(parts []*Part, kinds ...string) bool {
	return slices.ContainsFunc(parts, func(p *Part) bool { return slices.Contains(kinds, p.Kind) })
}

// hasKindIn is hasKind for the parts of one run.
func hasKindIn(parts []*Part, run string, kinds ...string) bool {
	return slices.ContainsFunc(parts, func(p *Part) bool { return p.Run == run && slices.Contains(kinds, p.Kind) })
}

// airHoseWithoutFlowLimit: bores over 1/2 in, rounded up.
func airHoseWithoutFlowLimit(l *line) {
	if !l.under("29 CFR 1926.302") {
		return
	}
	air := slices.ContainsFunc(l.Fluids, func(f *Fluid) bool { return f.Air })
	for _, r := range l.Releases {
		if l.knows(r.ID, has("releases.bore_mm", r.BoreMM)) && air && *r.BoreMM > 13 && !hasKindIn(l.Parts, r.ID, "excess-flow") {
			l.find(r.ID, num("have_mm", *r.BoreMM), num("need_mm", 13), word("run", r.ID))
		}
	}
}

// mineHoseNotRestrained: bores of 3/4 in and more.
func mineHoseNotRestrained(l *line) {
	if !l.under("30 CFR 56.13021") {
		return
	}
	for _, r := range l.Releases {
		if !r.Restrained && l.knows(r.ID, has("releases.bore_mm", r.BoreMM)) && *r.BoreMM >= 19 &&
			!hasKindIn(l.Parts, r.ID, "excess-flow") {
			l.find(r.ID, num("bore_mm", *r.BoreMM), word("run", r.ID))
		}
	}
}

func ammoniaHoseBreakNotContained(l *line) {
	if l.under("29 CFR 1910.111") && !l.Line.PassiveShutoff && l.knows(lineSubject, has("line.remote_stop", l.Line.RemoteStop)) &&
		no(l.Line.RemoteStop) && !hasKind(l.Parts, "breakaway", "check-valve", "excess-flow") {
		l.find(lineSubject)
	}
}

// ammoniaHoseWithoutEndValve looks at what follows the hose in its run.
func ammoniaHoseWithoutEndValve(l *line) {
	for _, h := range l.Hoses {
		if !h.Ammonia || !l.under("29 CFR 1910.111") {
			continue
		}
		at := l.place(h.ID)
		if at >= 0 && !hasKindIn(l.Parts[at+1:], h.Run, "breakaway", "check-valve", "coupling", "excess-flow", "nozzle", "valve") {
			l.findPart(h.ID)
		}
	}
}

// noValveBeforeHose looks at what stands before the hose in its run.
func noValveBeforeHose(l *line) {
	for _, h := range l.Hoses {
		if !h.LiquefiedGas {
			continue
		}
		at := l.place(h.ID)
		if at >= 0 && !hasKindIn(l.Parts[:at], h.Run, "breakaway", "excess-flow", "regulator", "valve") {
			l.findPart(h.ID)
		}
	}
}

// place is where a part stands among all parts, -1 for nowhere.
func (l *line) place(id string) int {
	return slices.IndexFunc(l.Parts, func(p *Part) bool { return p.ID == id })
}
