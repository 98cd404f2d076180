package batch

import "lineworthy/check/facts"

// Edges of ends, clamps, bolts and gaskets. Where too little is the offence, n counts down.

func jointEdge(f func(j *facts.Joint, n int64)) func(*facts.Facts, int64) {
	return func(to *facts.Facts, n int64) {
		to.Line.Regimes = []string{"33 CFR 156.130"}
		j := facts.Joint{ID: "J1", BoltsWant: true, ClassBolt: true, AtHose: true}
		f(&j, n)
		to.Joints = []facts.Joint{j}
	}
}

func boltEdges() []edge {
	law := func(holes, most int64) edge {
		return edge{"connection/bolts_below_marine_law", jointEdge(func(j *facts.Joint, n int64) {
			j.Bolts, j.Holes = facts.Know(most-n), facts.Know(holes)
		}), most - max(4, (holes+1)/2) + 1}
	}
	left := edge{"connection/bolts_missing", jointEdge(func(j *facts.Joint, n int64) {
		j.Bolts, j.Holes, j.AtHose = facts.Know(7), facts.Know(8), n < 1
	}), 1}
	return []edge{law(4, 4), law(8, 8), law(9, 9), law(12, 12), left}
}

func tailEdges() []edge {
	tail := func(hose, from, step int64) func(*facts.Facts, int64) {
		return func(f *facts.Facts, n int64) {
			f.Tails = []facts.Tail{{ID: "H1", HoseUM: facts.Know(hose), TailUM: facts.Know(from + step*n)}}
		}
	}
	return []edge{
		{"connection/hose_tail_differs", tail(1000, 1000, -1), 61},
		{"connection/hose_tail_differs", tail(940, 940, 1), 61},
		{"connection/hose_tail_nearly_fits", tail(1000, 1000, -1), 1},
		{"connection/hose_tail_nearly_fits", tail(1000, 0, 1), 940},
		{"connection/hose_tail_nearly_fits", tail(940, 2000, -1), 1000},
	}
}

func endEdges() []edge {
	excess := func(most, duty int64) func(*facts.Facts, int64) {
		return func(f *facts.Facts, n int64) {
			f.ExcessFlow = []facts.Excess{{ID: "X1", Credited: true, CloseMLPS: facts.Know(most - n), DutyMLPS: facts.Know(duty)}}
		}
	}
	seal := func(hot bool) func(*facts.Facts, int64) {
		return func(f *facts.Facts, n int64) {
			s := facts.Seal{ID: "S1", PShare: facts.Know(n), TShare: facts.Know(900)}
			if hot {
				s.PShare, s.TShare = s.TShare, s.PShare
			}
			f.Seals = []facts.Seal{s}
		}
	}
	return []edge{
		{"isolation/excess_flow_closes_in_service", excess(300, 200), 1},
		{"isolation/excess_flow_closes_in_service", excess(302, 201), 1},
		{"seal/hot_and_high_together", seal(false), 501},
		{"seal/hot_and_high_together", seal(true), 501},
	}
}

// lowSideEdges are hoses that break the law, once behind a regulator, where it does not reach, and once not.
func lowSideEdges() (out []edge) {
	for _, rule := range []string{"inspection/ammonia_assembly_tested_too_low", "inspection/lpg_joints_tested_too_low",
		"pressure/below_ammonia_law", "pressure/burst_below_ammonia_law", "pressure/burst_below_lpg_law"} {
		out = append(out, edge{rule, func(f *facts.Facts, n int64) {
			f.Line.Regimes = []string{"29 CFR 1910.110", "29 CFR 1910.111"}
			f.Hoses = []facts.Hose{{ID: "H1", Medium: "gas", Ammonia: true, LPG: true, LowSide: n < 1,
				RatedKPa: facts.Know(1), BurstKPa: facts.Know(1), TestedAtKPa: facts.Know(1)}}
		}, 1})
	}
	return out
}
