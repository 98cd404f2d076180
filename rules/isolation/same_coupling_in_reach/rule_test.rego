package rules.isolation.same_coupling_in_reach_test

import data.rules.isolation.same_coupling_in_reach

# Acid and hypochlorite fill points of the same standard, size and gender, as in the CSB case study of
# January 2018 (published).
_point(more) := object.union(
	{"id": "tank.fill", "vessel": "hypochlorite tank", "target": false, "product": "chlorine"},
	more,
)

_found := {
	"subject": "tank.fill",
	"point": "tank.fill",
	"vessel": "hypochlorite tank",
	"outcome": "chlorine",
}

_cases := {
	"not padlocked": {
		"line": {"hazard_in_reach": true},
		"given": [_point({"hazardous": true, "coupling": "same", "keyed": false, "padlocked": false})],
		"want": {_found},
	},
	"padlock unknown": {
		"line": {"hazard_in_reach": true},
		"given": [_point({"hazardous": true, "coupling": "same", "keyed": false})],
		"want": {_found},
	},
	"no hazard in reach": {
		"line": {"hazard_in_reach": false},
		"given": [_point({"hazardous": true, "coupling": "same", "keyed": false, "padlocked": false})],
		"want": set(),
	},
	"product not named": {
		"line": {"hazard_in_reach": true},
		"given": [
			_point({
				"hazardous": true,
				"coupling": "same",
				"keyed": false,
				"padlocked": false,
				"product": "",
			}),
		],
		"want": {object.union(_found, {"outcome": "a dangerous reaction"})},
	},
	"padlocked, judged elsewhere": {
		"line": {"hazard_in_reach": true},
		"given": [_point({"hazardous": true, "coupling": "same", "keyed": false, "padlocked": true})],
		"want": set(),
	},
	"twin, keyed": {
		"line": {"hazard_in_reach": true},
		"given": [_point({"hazardous": true, "coupling": "same", "keyed": true, "padlocked": false})],
		"want": set(),
	},
	"twin, another coupling": {
		"line": {"hazard_in_reach": true},
		"given": [_point({"hazardous": true, "coupling": "different", "keyed": false, "padlocked": false})],
		"want": set(),
	},
	"harmless": {
		"line": {"hazard_in_reach": true},
		"given": [_point({"hazardous": false, "coupling": "same", "keyed": false, "padlocked": false})],
		"want": set(),
	},
	"reaction unknown": {
		"line": {"hazard_in_reach": true},
		"given": [_point({"coupling": "same", "keyed": false, "padlocked": false})],
		"want": set(),
	},
	"coupling unknown": {
		"line": {"hazard_in_reach": true},
		"given": [_point({"hazardous": true, "keyed": false, "padlocked": false})],
		"want": set(),
	},
	"the point meant": {
		"line": {"hazard_in_reach": true},
		"given": [
			_point({
				"hazardous": true,
				"coupling": "same",
				"keyed": false,
				"padlocked": false,
				"target": true,
			}),
		],
		"want": set(),
	},
	"the second of two": {
		"line": {"hazard_in_reach": true},
		"given": [
			_point({"hazardous": true, "coupling": "same", "keyed": true, "padlocked": false}),
			_point({
				"hazardous": true,
				"coupling": "same",
				"keyed": false,
				"padlocked": false,
				"id": "tank.top",
			}),
		],
		"want": {object.union(_found, {"subject": "tank.top", "point": "tank.top"})},
	},
	"both of two": {
		"line": {"hazard_in_reach": true},
		"given": [
			_point({"hazardous": true, "coupling": "same", "keyed": false, "padlocked": false}),
			_point({
				"hazardous": true,
				"coupling": "same",
				"keyed": false,
				"padlocked": false,
				"id": "tank.top",
			}),
		],
		"want": {_found, object.union(_found, {"subject": "tank.top", "point": "tank.top"})},
	},
	"nothing to judge": {
		"line": {"hazard_in_reach": true},
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := same_coupling_in_reach.report with input as {"line": tc.line, "points": tc.given}
	got == tc.want
}
