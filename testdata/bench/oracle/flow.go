package oracle

import "math"

var flow = []rule{
	{"flow/flashes_in_line", condition, flashesInLine},
	{"flow/gas_blows_past_vent", condition, gasBlowsPastVent},
	{"flow/gas_runs_out", condition, gasRunsOut},
	{"flow/gauge_outside_its_middle", condition, gaugeOutsideItsMiddle},
	{"flow/leaves_no_ullage", condition, leavesNoUllage},
	{"flow/overfills_receiver", stop, overfillsReceiver},
	{"flow/pressure_does_not_reach", condition, pressureDoesNotReach},
	{"flow/rate_not_stated", note, flowRateNotStated},
	{"flow/vent_not_sized_for_gas", condition, ventNotSizedForGas},
}

func flashesInLine(l *line) {
	for _, f := range l.Flows {
		if f.Stated && below(f.FlashKPa, 1) {
			l.find(f.ID, word("run", f.ID))
		}
	}
}

func gasBlowsPastVent(l *line) {
	for _, f := range l.Flows {
		if f.GasFollows && f.VentSaid &&
			l.knows(f.ID, has("flows.gas_follows_mlps", f.FollowsMLPS), has("flows.vent_mlps", f.VentMLPS)) && *f.VentMLPS < *f.FollowsMLPS {
			l.find(f.ID, num("have_mlps", *f.VentMLPS), num("need_mlps", *f.FollowsMLPS), word("run", f.ID))
		}
	}
}

func ventNotSizedForGas(l *line) {
	for _, f := range l.Flows {
		if f.GasFollows && !f.VentSaid {
			l.find(f.ID, word("run", f.ID))
		}
	}
}

func gasRunsOut(l *line) {
	for _, f := range l.Flows {
		if f.CylindersSaid && l.knows(f.ID, has("flows.cylinders_needed_permille", f.CylindersPermille)) &&
			*f.CylindersPermille > 1000 {
			l.find(f.ID, num("have_ratio_permille", *f.CylindersPermille), num("need_ratio_permille", 1000), word("run", f.ID))
		}
	}
}

// gaugeOutsideItsMiddle: between a quarter and three quarters of the range.
func gaugeOutsideItsMiddle(l *line) {
	for _, g := range l.Gauges {
		if !l.knows(g.ID, has("gauges.duty_share_permille", g.SharePermille)) {
			continue
		}
		if share := *g.SharePermille; share < 250 {
			l.findPart(g.ID, num("have_permille", share), num("need_permille", 250), word("side", "below"))
		} else if share > 750 {
			l.findPart(g.ID, num("have_permille", share), num("need_permille", 750), word("side", "above"))
		}
	}
}

// receivers finds those that end up fuller than one limit, and no fuller than another.
func (l *line) receivers(over, upTo int64) {
	for _, v := range l.Vessels {
		if v.Target && v.QuantitySaid && l.knows(v.ID, has("vessels.after_permille", v.AfterPermille)) &&
			*v.AfterPermille > over && *v.AfterPermille <= upTo {
			l.findPart(v.ID, num("have_permille", *v.AfterPermille), num("need_permille", over))
		}
	}
}

func leavesNoUllage(l *line)    { l.receivers(950, 1000) }
func overfillsReceiver(l *line) { l.receivers(1000, math.MaxInt64) }

func pressureDoesNotReach(l *line) {
	for _, f := range l.Flows {
		if f.Stated && f.DropKPa != nil && below(f.DriveKPa, *f.DropKPa) {
			l.find(f.ID, num("have_kpa", *f.DriveKPa), num("need_kpa", *f.DropKPa), word("run", f.ID))
		}
	}
}

func flowRateNotStated(l *line) {
	for _, f := range l.Flows {
		if !f.Stated {
			l.find(f.ID, word("run", f.ID))
		}
	}
}
