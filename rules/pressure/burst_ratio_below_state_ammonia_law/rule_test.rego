package rules.pressure.burst_ratio_below_state_ammonia_law_test

import data.rules.pressure.burst_ratio_below_state_ammonia_law

# California Code of Regulations title 8 section 510, public copy (published): safety factor of at least 5.
_it(more) := object.union({"id": "H1", "carries_ammonia": true}, more)

_found(more) := object.union({"subject": "H1", "part": "H1", "have_ratio_permille": 4999, "need_ratio_permille": 5000}, more)

_law := {"regimes": ["8 CCR 510"]}

_cases := {
	"one below": {
		"line": _law,
		"given": [_it({"burst_ratio_permille": 4999})],
		"want": {_found({})},
	},
	"at the limit": {
		"line": _law,
		"given": [_it({"burst_ratio_permille": 5000})],
		"want": set(),
	},
	"above": {
		"line": _law,
		"given": [_it({"burst_ratio_permille": 5001})],
		"want": set(),
	},
	"unknown": {
		"line": _law,
		"given": [_it({})],
		"want": set(),
	},
	"another law": {
		"line": {"regimes": ["ADR"]},
		"given": [_it({"burst_ratio_permille": 4999})],
		"want": set(),
	},
	"no law": {
		"line": {"regimes": []},
		"given": [_it({"burst_ratio_permille": 4999})],
		"want": set(),
	},
	"two hoses, one short": {
		"line": _law,
		"given": [_it({"burst_ratio_permille": 5000}), _it({"burst_ratio_permille": 4998, "id": "H2"})],
		"want": {_found({"subject": "H2", "part": "H2", "have_ratio_permille": 4998})},
	},
	"one law of two": {
		"line": {"regimes": ["ADR", "8 CCR 510"]},
		"given": [_it({"burst_ratio_permille": 4999})],
		"want": {_found({})},
	},
	"out of scope": {
		"line": _law,
		"given": [_it({"burst_ratio_permille": 4999, "carries_ammonia": false})],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := burst_ratio_below_state_ammonia_law.report with input as {"line": tc.line, "hoses": tc.given}
	got == tc.want
}
