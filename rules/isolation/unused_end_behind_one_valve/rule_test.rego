package rules.isolation.unused_end_behind_one_valve_test

import data.rules.isolation.unused_end_behind_one_valve

# 40 CFR 60.482-6 (recalled: open-ended lines carry a cap, blind flange, plug or second valve).
_it(more) := object.union({"id": "DT/spare", "under_pressure": true, "holds_hazard": true}, more)

_found(more) := object.union({"subject": "DT/spare", "point": "DT/spare"}, more)

_cases := {
	"faulty": {
		"given": [_it({"form": "valve"})],
		"want": {_found({})},
	},
	"closed by cap": {
		"given": [_it({"form": "cap"})],
		"want": set(),
	},
	"closed by plug": {
		"given": [_it({"form": "plug"})],
		"want": set(),
	},
	"closed by blind-flange": {
		"given": [_it({"form": "blind-flange"})],
		"want": set(),
	},
	"closed by dust-cap": {
		"given": [_it({"form": "dust-cap"})],
		"want": set(),
	},
	"closed by piped": {
		"given": [_it({"form": "piped"})],
		"want": set(),
	},
	"closed by none": {
		"given": [_it({"form": "none"})],
		"want": set(),
	},
	"unknown": {
		"given": [_it({})],
		"want": set(),
	},
	"no pressure": {
		"given": [_it({"form": "valve", "under_pressure": false})],
		"want": set(),
	},
	"the second of two": {
		"given": [_it({"form": "plug"}), _it({"form": "valve", "id": "DT/top"})],
		"want": {_found({"subject": "DT/top", "point": "DT/top"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
	"harmless": {
		"given": [_it({"form": "valve", "holds_hazard": false})],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := unused_end_behind_one_valve.report with input as {"closures": tc.given}
	got == tc.want
}
