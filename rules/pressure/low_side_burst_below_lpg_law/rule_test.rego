package rules.pressure.low_side_burst_below_lpg_law_test

import data.rules.pressure.low_side_burst_below_lpg_law

# 29 CFR 1910.110 (b)(9)(vi), CFR 2015 annual edition (published): five times the relief setting, 125
# psig = 861.8 kPa at least.
_it(more) := object.union({"id": "H1", "carries_lpg": true, "low_side": true, "low_side_relief_kpa": 200}, more)

_found(more) := object.union({"subject": "H1", "part": "H1", "have_kpa": 999, "need_kpa": 1000}, more)

_cases := {
	"one below five times": {
		"line": {"regimes": ["29 CFR 1910.110"]},
		"given": [_it({"burst_kpa": 999})],
		"want": {_found({})},
	},
	"at five times": {
		"line": {"regimes": ["29 CFR 1910.110"]},
		"given": [_it({"burst_kpa": 1000})],
		"want": set(),
	},
	"above": {
		"line": {"regimes": ["29 CFR 1910.110"]},
		"given": [_it({"burst_kpa": 1001})],
		"want": set(),
	},
	"low setting, one below 125 psig": {
		"line": {"regimes": ["29 CFR 1910.110"]},
		"given": [_it({"burst_kpa": 860, "low_side_relief_kpa": 100})],
		"want": {_found({"have_kpa": 860, "need_kpa": 861})},
	},
	"low setting, at 125 psig": {
		"line": {"regimes": ["29 CFR 1910.110"]},
		"given": [_it({"burst_kpa": 861, "low_side_relief_kpa": 100})],
		"want": set(),
	},
	"burst unknown": {
		"line": {"regimes": ["29 CFR 1910.110"]},
		"given": [_it({})],
		"want": set(),
	},
	"container side": {
		"line": {"regimes": ["29 CFR 1910.110"]},
		"given": [_it({"burst_kpa": 999, "low_side": false})],
		"want": set(),
	},
	"another fluid": {
		"line": {"regimes": ["29 CFR 1910.110"]},
		"given": [_it({"burst_kpa": 999, "carries_lpg": false})],
		"want": set(),
	},
	"another law": {
		"line": {"regimes": []},
		"given": [_it({"burst_kpa": 999})],
		"want": set(),
	},
	"the second of two": {
		"line": {"regimes": ["29 CFR 1910.110"]},
		"given": [_it({"burst_kpa": 5000}), _it({"burst_kpa": 999, "id": "H2"})],
		"want": {_found({"subject": "H2", "part": "H2"})},
	},
	"nothing to judge": {
		"line": {"regimes": ["29 CFR 1910.110"]},
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := low_side_burst_below_lpg_law.report with input as {"line": tc.line, "hoses": tc.given}
	got == tc.want
}
