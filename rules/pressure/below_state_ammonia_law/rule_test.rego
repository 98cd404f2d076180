package rules.pressure.below_state_ammonia_law_test

import data.rules.pressure.below_state_ammonia_law

# California Code of Regulations title 8 section 510 and WAC 296-307-40023 and 296-826-40010, public copies
# (published): at least 350 psi.
_it(more) := object.union({"id": "H1", "carries_ammonia": true}, more)

_found(more) := object.union({"subject": "H1", "part": "H1", "law": "8 CCR 510", "have_kpa": 2412, "need_kpa": 2413}, more)

_law := {"regimes": ["8 CCR 510"]}

_cases := {
	"one below": {
		"line": _law,
		"given": [_it({"rated_kpa": 2412})],
		"want": {_found({})},
	},
	"at the limit": {
		"line": _law,
		"given": [_it({"rated_kpa": 2413})],
		"want": set(),
	},
	"above": {
		"line": _law,
		"given": [_it({"rated_kpa": 2414})],
		"want": set(),
	},
	"unknown": {
		"line": _law,
		"given": [_it({})],
		"want": set(),
	},
	"another law": {
		"line": {"regimes": ["ADR"]},
		"given": [_it({"rated_kpa": 2412})],
		"want": set(),
	},
	"no law": {
		"line": {"regimes": []},
		"given": [_it({"rated_kpa": 2412})],
		"want": set(),
	},
	"two hoses, one short": {
		"line": _law,
		"given": [_it({"rated_kpa": 2413}), _it({"rated_kpa": 2411, "id": "H2"})],
		"want": {_found({"subject": "H2", "part": "H2", "have_kpa": 2411})},
	},
	"under WAC 296-307-40023": {
		"line": {"regimes": ["ADR", "WAC 296-307-40023"]},
		"given": [_it({"rated_kpa": 2412})],
		"want": {_found({"law": "WAC 296-307-40023"})},
	},
	"under WAC 296-826-40010": {
		"line": {"regimes": ["ADR", "WAC 296-826-40010"]},
		"given": [_it({"rated_kpa": 2412})],
		"want": {_found({"law": "WAC 296-826-40010"})},
	},
	"out of scope": {
		"line": _law,
		"given": [_it({"rated_kpa": 2412, "carries_ammonia": false})],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := below_state_ammonia_law.report with input as {"line": tc.line, "hoses": tc.given}
	got == tc.want
}
