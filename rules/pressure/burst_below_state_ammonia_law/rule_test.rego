package rules.pressure.burst_below_state_ammonia_law_test

import data.rules.pressure.burst_below_state_ammonia_law

# WAC 296-307-40023 and 296-826-40010, public copies (published): at least 1750 psig.
_it(more) := object.union({"id": "H1", "carries_ammonia": true}, more)

_found(more) := object.union({"subject": "H1", "part": "H1", "law": "WAC 296-307-40023", "have_kpa": 12064, "need_kpa": 12065}, more)

_law := {"regimes": ["WAC 296-307-40023"]}

_cases := {
	"one below": {
		"line": _law,
		"given": [_it({"burst_kpa": 12064})],
		"want": {_found({})},
	},
	"at the limit": {
		"line": _law,
		"given": [_it({"burst_kpa": 12065})],
		"want": set(),
	},
	"above": {
		"line": _law,
		"given": [_it({"burst_kpa": 12066})],
		"want": set(),
	},
	"unknown": {
		"line": _law,
		"given": [_it({})],
		"want": set(),
	},
	"another law": {
		"line": {"regimes": ["ADR"]},
		"given": [_it({"burst_kpa": 12064})],
		"want": set(),
	},
	"no law": {
		"line": {"regimes": []},
		"given": [_it({"burst_kpa": 12064})],
		"want": set(),
	},
	"two hoses, one short": {
		"line": _law,
		"given": [_it({"burst_kpa": 12065}), _it({"burst_kpa": 12063, "id": "H2"})],
		"want": {_found({"subject": "H2", "part": "H2", "have_kpa": 12063})},
	},
	"under WAC 296-826-40010": {
		"line": {"regimes": ["ADR", "WAC 296-826-40010"]},
		"given": [_it({"burst_kpa": 12064})],
		"want": {_found({"law": "WAC 296-826-40010"})},
	},
	"out of scope": {
		"line": _law,
		"given": [_it({"burst_kpa": 12064, "carries_ammonia": false})],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := burst_below_state_ammonia_law.report with input as {"line": tc.line, "hoses": tc.given}
	got == tc.want
}
