package rules.pressure.ammonia_gauge_below_law_test

import data.rules.pressure.ammonia_gauge_below_law

# 29 CFR 1910.111(b)(12)(v)(c) and (c)(2)(iii), CFR 2015 annual edition (published): 0 to 400 psi = 2757.9 kPa.
_it(more) := object.union({"id": "G1"}, more)

_found(more) := object.union({"subject": "G1", "part": "G1", "have_kpa": 2756, "need_kpa": 2757}, more)

_law := {"regimes": ["29 CFR 1910.111"]}

_cases := {
	"one below": {
		"line": _law,
		"given": [_it({"full_scale_kpa": 2756})],
		"want": {_found({})},
	},
	"at the limit": {
		"line": _law,
		"given": [_it({"full_scale_kpa": 2757})],
		"want": set(),
	},
	"above": {
		"line": _law,
		"given": [_it({"full_scale_kpa": 2758})],
		"want": set(),
	},
	"unknown": {
		"line": _law,
		"given": [_it({})],
		"want": set(),
	},
	"another law": {
		"line": {"regimes": ["ADR"]},
		"given": [_it({"full_scale_kpa": 2756})],
		"want": set(),
	},
	"two, one short": {
		"line": _law,
		"given": [_it({"full_scale_kpa": 4000}), _it({"id": "G2", "full_scale_kpa": 1000})],
		"want": {_found({"subject": "G2", "part": "G2", "have_kpa": 1000})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := ammonia_gauge_below_law.report with input as {"line": tc.line, "gauges": tc.given}
	got == tc.want
}
