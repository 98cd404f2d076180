package check_test

import "testing"

// TestEndTraps: faults at ends, bolts, labels and excess-flow valves, on whole lines and put right on the same line.
func TestEndTraps(t *testing.T) {
	line := func(name string, oldNew ...string) string { return variant(t, name, oldNew...) }
	spare := func(closed string) string {
		return line("toluene-yard-corrected", "    points:\n      gas:\n", "    points:\n      spare: {standard: thread-g, size: 1/2 in, material: S31603, closed_by: "+closed+"}\n      gas:\n")
	}
	excess := func(flows string) string {
		return line("ammonia-lpg-hose-corrected", "        acts_on: separation\n", "        acts_on: flow\n"+flows)
	}
	bolts := func(count string) string {
		return line("toluene-yard-corrected", "        facing: B1\n", "        facing: B1\n        bolts: "+count+"\n")
	}
	other := func(label string) string {
		return line("acid-into-hypochlorite-corrected", "standard: tank-truck-en-14420-6", "standard: cam-groove-en-14420-7",
			"marked: sulfuric acid 30 %", "marked: bulk tank 41", "marked: sodium hypochlorite", "marked: "+label)
	}
	tail := func(size string) string {
		return line("acetone-pump", "        kind: hose\n", "        kind: hose\n        tail: "+size+"\n")
	}
	tryTraps(t, []trap{
		{"dust cap on a vessel that is padded", "practice, no source", "isolation/dust_cap_under_pressure", spare("dust-cap"), spare("plug")},
		{"spare point left open", "practice, no source", "isolation/open_end_under_pressure", spare("none"), spare("cap")},
		{"valve that can never close", "29 CFR 1910.111(b)(6)(iii) (published)", "isolation/excess_flow_never_closes",
			excess("        closing_flow: 20 m3/h\n        broken_flow: 18 m3/h\n"), excess("        closing_flow: 12 m3/h\n        broken_flow: 18 m3/h\n")},
		{"valve that closes in use", "practice, no source", "isolation/excess_flow_closes_in_service",
			excess("        closing_flow: 6 m3/h\n        broken_flow: 18 m3/h\n"), excess("        closing_flow: 8 m3/h\n        broken_flow: 18 m3/h\n")},
		{"three bolts of four", "all bolts on land (practice)", "connection/bolts_missing", bolts("3"), bolts("4")},
		{"50 in 51", "ISO 1307 (restated)", "connection/hose_tail_nearly_fits", tail("2 in"), tail("DN 50")},
		{"two labels a digit apart", "practice, no source", "identity/labels_too_alike", other("bulk tank 47"), other("sodium hypochlorite")},
	})
}
