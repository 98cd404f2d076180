package sheet

import "testing"

func TestKeys(t *testing.T) {
	checkFaults(t, []faultCase{
		{"unknown key", "size: DN 25\n", "siez: DN 25\n", []string{
			"17:9: runs.main.parts[0].siez: unknown key; did you mean size? " + hoseTakes,
		}},
		{"unknown key, nothing near", "size: DN 25\n", "colour: red\n", []string{
			"17:9: runs.main.parts[0].colour: unknown key; " + hoseTakes,
		}},
		{"unknown key of an end", "bung: {size: DN 25}", "bung: {siz: DN 25}", []string{
			"7:14: vessels.drum.points.bung.siz: unknown key; did you mean size?",
		}},
		{"unknown key at the top", "line: T-1\n", "line: T-1\ntitel: x\n", []string{
			"2:1: titel: unknown key; did you mean title?",
		}},
		{"unknown top key, nothing near", "line: T-1\n", "line: T-1\nzzz: x\n", []string{
			"2:1: zzz: unknown key; " + sheetTakes,
		}},
		{"misspelt required key is one fault", "kind: hose", "knid: hose", []string{
			"16:9: runs.main.parts[0].knid: unknown key; did you mean kind?",
		}},
		{"misspelt required key at the top", "line: T-1", "lien: T-1", []string{
			"1:1: lien: unknown key; did you mean line?",
		}},
		{"key of another kind", "kind: hose\n        size: DN 25", "kind: valve\n        bend: 1 m", []string{
			"17:9: runs.main.parts[0].bend: belongs to a hose, not to a valve; a valve takes id, kind, name, material, wetted, size, rated, evidence, lowest, highest, bonded, inlet, outlet, flow_coefficient, closing, acts_on, oxygen_clean",
		}},
		{"key of no excess-flow valve", "kind: hose\n        size: DN 25", "kind: excess-flow\n        bend: 1 m", []string{
			"17:9: runs.main.parts[0].bend: belongs to a hose, not to an excess-flow; an excess-flow takes id, kind, name, material, wetted, size, " +
				"rated, evidence, lowest, highest, bonded, inlet, outlet, closing, acts_on, closing_flow, broken_flow, bypass, oxygen_clean",
		}},
		{"key of several other kinds", "kind: hose\n        size: DN 25", "kind: hose\n        closing: 1 s", []string{
			"17:9: runs.main.parts[0].closing: belongs to a valve, check-valve, excess-flow, breakaway, coupling or nozzle, not to a hose; " + hoseTakes,
		}},
		{"misspelt collection is one fault", "vessels:", "vesels:", []string{
			"4:1: vesels: unknown key; did you mean vessels?",
		}},
		{"misspelt point is one fault", "    points:", "    pionts:", []string{
			"6:5: vessels.drum.pionts: unknown key; did you mean points?",
		}},
		{"comma in braces", "tank: {}", "tank: {relief: {set: 1 bar(g), kdr: 0,7}}", []string{
			`8:39: vessels.tank.relief.kdr: "0" is not above 0 and at most 1; write the certified coefficient, like 0.7`,
			"8:41: vessels.tank.relief.7: unknown key; the keys here are set, area, kdr, vacuum",
		}},
		{"key twice", "size: DN 25\n", "size: DN 25\n        size: DN 40\n", []string{
			"18:9: runs.main.parts[0].size: written twice, on lines 17 and 18; keep the one that is true",
		}},
		{"name twice", "  tank: {}\n", "  tank: {}\n  drum: {}\n", []string{
			"9:3: vessels.drum: written twice, on lines 5 and 9; keep the one that is true",
		}},
	})
}
