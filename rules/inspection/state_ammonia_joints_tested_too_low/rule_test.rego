package rules.inspection.state_ammonia_joints_tested_too_low_test

import data.rules.inspection.state_ammonia_joints_tested_too_low

# California Code of Regulations title 8 section 510, public copy (published): 2 times, so 700 psi at 350.
_it(more) := object.union({"id": "H1", "rated_kpa": 1000, "carries_ammonia": true}, more)

_found(more) := object.union({"subject": "H1", "part": "H1", "test_kpa": 1999, "rated_kpa": 1000}, more)

_law := {"regimes": ["8 CCR 510"]}

_cases := {
	"one below": {
		"line": _law,
		"given": [_it({"test_pressure_kpa": 1999})],
		"want": {_found({})},
	},
	"exactly that much": {
		"line": _law,
		"given": [_it({"test_pressure_kpa": 2000})],
		"want": set(),
	},
	"above": {
		"line": _law,
		"given": [_it({"test_pressure_kpa": 2001})],
		"want": set(),
	},
	"test pressure unknown": {
		"line": _law,
		"given": [_it({})],
		"want": set(),
	},
	"far below": {
		"line": _law,
		"given": [_it({"test_pressure_kpa": 500})],
		"want": {_found({"test_kpa": 500})},
	},
	"another law": {
		"line": {"regimes": ["ADR"]},
		"given": [_it({"test_pressure_kpa": 1999})],
		"want": set(),
	},
	"no law": {
		"line": {"regimes": []},
		"given": [_it({"test_pressure_kpa": 1999})],
		"want": set(),
	},
	"two hoses, one short": {
		"line": _law,
		"given": [_it({"test_pressure_kpa": 2000}), _it({"test_pressure_kpa": 1998, "id": "H2"})],
		"want": {_found({"subject": "H2", "part": "H2", "test_kpa": 1998})},
	},
	"one law of two": {
		"line": {"regimes": ["ADR", "8 CCR 510"]},
		"given": [_it({"test_pressure_kpa": 1999})],
		"want": {_found({})},
	},
	"out of scope": {
		"line": _law,
		"given": [_it({"test_pressure_kpa": 1999, "carries_ammonia": false})],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := state_ammonia_joints_tested_too_low.report with input as {"line": tc.line, "hoses": tc.given}
	got == tc.want
}
