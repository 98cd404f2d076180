package rules.inspection.lpg_joints_tested_too_low_test

import data.rules.inspection.lpg_joints_tested_too_low

# 29 CFR 1910.110(b)(9)(v), CFR 2015 annual edition (published): tight at 500 psig = 3447.4 kPa or more.
_it(more) := object.union({"id": "H1", "carries_lpg": true}, more)

_found(more) := object.union({"subject": "H1", "part": "H1", "have_kpa": 3446, "need_kpa": 3447}, more)

_law := {"regimes": ["29 CFR 1910.110"]}

_cases := {
	"behind a regulator, judged elsewhere": {
		"line": _law,
		"given": [_it({"test_pressure_kpa": 3446, "low_side": true})],
		"want": set(),
	},
	"one below": {
		"line": _law,
		"given": [_it({"test_pressure_kpa": 3446})],
		"want": {_found({})},
	},
	"at the limit": {
		"line": _law,
		"given": [_it({"test_pressure_kpa": 3447})],
		"want": set(),
	},
	"above": {
		"line": _law,
		"given": [_it({"test_pressure_kpa": 3448})],
		"want": set(),
	},
	"unknown": {
		"line": _law,
		"given": [_it({})],
		"want": set(),
	},
	"another law": {
		"line": {"regimes": ["ADR"]},
		"given": [_it({"test_pressure_kpa": 3446})],
		"want": set(),
	},
	"no law": {
		"line": {"regimes": []},
		"given": [_it({"test_pressure_kpa": 3446})],
		"want": set(),
	},
	"two hoses, one short": {
		"line": _law,
		"given": [_it({"test_pressure_kpa": 3447}), _it({"test_pressure_kpa": 3445, "id": "H2"})],
		"want": {_found({"subject": "H2", "part": "H2", "have_kpa": 3445})},
	},
	"one law of two": {
		"line": {"regimes": ["ADR", "29 CFR 1910.110"]},
		"given": [_it({"test_pressure_kpa": 3446})],
		"want": {_found({})},
	},
	"out of scope": {
		"line": _law,
		"given": [_it({"test_pressure_kpa": 3446, "carries_lpg": false})],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := lpg_joints_tested_too_low.report with input as {"line": tc.line, "hoses": tc.given}
	got == tc.want
}
