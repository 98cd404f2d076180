package rules.isolation.same_coupling_behind_padlock_test

import data.rules.isolation.same_coupling_behind_padlock

# The cap of the hypochlorite point was unlocked in the CSB case study of January 2018 (published); a
# lock alone is the weaker means.
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
	"padlocked": {
		"line": {"hazard_in_reach": true},
		"given": [_point({"hazardous": true, "coupling": "same", "keyed": false, "padlocked": true})],
		"want": {_found},
	},
	"padlock unknown, judged elsewhere": {
		"line": {"hazard_in_reach": true},
		"given": [_point({"hazardous": true, "coupling": "same", "keyed": false})],
		"want": set(),
	},
	"no hazard in reach": {
		"line": {"hazard_in_reach": false},
		"given": [_point({"hazardous": true, "coupling": "same", "keyed": false, "padlocked": true})],
		"want": set(),
	},
	"no padlock, judged elsewhere": {
		"line": {"hazard_in_reach": true},
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
				"padlocked": true,
				"product": "",
			}),
		],
		"want": {object.union(_found, {"outcome": "a dangerous reaction"})},
	},
	"twin, keyed": {
		"line": {"hazard_in_reach": true},
		"given": [_point({"hazardous": true, "coupling": "same", "keyed": true, "padlocked": true})],
		"want": set(),
	},
	"twin, another coupling": {
		"line": {"hazard_in_reach": true},
		"given": [_point({"hazardous": true, "coupling": "different", "keyed": false, "padlocked": true})],
		"want": set(),
	},
	"harmless": {
		"line": {"hazard_in_reach": true},
		"given": [_point({"hazardous": false, "coupling": "same", "keyed": false, "padlocked": true})],
		"want": set(),
	},
	"reaction unknown": {
		"line": {"hazard_in_reach": true},
		"given": [_point({"coupling": "same", "keyed": false, "padlocked": true})],
		"want": set(),
	},
	"coupling unknown": {
		"line": {"hazard_in_reach": true},
		"given": [_point({"hazardous": true, "keyed": false, "padlocked": true})],
		"want": set(),
	},
	"the point meant": {
		"line": {"hazard_in_reach": true},
		"given": [
			_point({
				"hazardous": true,
				"coupling": "same",
				"keyed": false,
				"padlocked": true,
				"target": true,
			}),
		],
		"want": set(),
	},
	"the second of two": {
		"line": {"hazard_in_reach": true},
		"given": [
			_point({"hazardous": true, "coupling": "same", "keyed": true, "padlocked": true}),
			_point({
				"hazardous": true,
				"coupling": "same",
				"keyed": false,
				"padlocked": true,
				"id": "tank.top",
			}),
		],
		"want": {object.union(_found, {"subject": "tank.top", "point": "tank.top"})},
	},
	"both of two": {
		"line": {"hazard_in_reach": true},
		"given": [
			_point({"hazardous": true, "coupling": "same", "keyed": false, "padlocked": true}),
			_point({
				"hazardous": true,
				"coupling": "same",
				"keyed": false,
				"padlocked": true,
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
	got := same_coupling_behind_padlock.report with input as {"line": tc.line, "points": tc.given}
	got == tc.want
}
