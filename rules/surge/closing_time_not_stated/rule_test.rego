package rules.surge.closing_time_not_stated_test

import data.rules.surge.closing_time_not_stated

# A stop at once is the upper bound of any closing (Joukowsky, recalled).
_surge(more) := object.union({"id": "V3", "run": "liquid", "closing_stated": false, "weakest": "H1"}, more)

_found := {"subject": "V3", "part": "V3"}

_cases := {
	"one past the rating": {
		"given": [_surge({"peak_kpa": 1601, "weakest_kpa": 1600})],
		"want": {_found},
	},
	"at the rating, where the time does not matter": {
		"given": [_surge({"peak_kpa": 1600, "weakest_kpa": 1600})],
		"want": set(),
	},
	"below the rating": {
		"given": [_surge({"peak_kpa": 1599, "weakest_kpa": 1600})],
		"want": set(),
	},
	"peak unknown": {
		"given": [_surge({"weakest_kpa": 1600})],
		"want": {_found},
	},
	"rating unknown": {
		"given": [_surge({"peak_kpa": 100})],
		"want": {_found},
	},
	"twin, stated": {
		"given": [_surge({"peak_kpa": 1601, "weakest_kpa": 1600, "closing_stated": true})],
		"want": set(),
	},
	"the second of two": {
		"given": [_surge({"closing_stated": true}), _surge({"id": "V4"})],
		"want": {object.union(_found, {"subject": "V4", "part": "V4"})},
	},
	"both of two": {
		"given": [_surge({}), _surge({"id": "V4"})],
		"want": {_found, object.union(_found, {"subject": "V4", "part": "V4"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := closing_time_not_stated.report with input as {"surges": tc.given}
	got == tc.want
}
