package rules.pressure.burst_below_marine_law_test

import data.rules.pressure.burst_below_marine_law

# 33 CFR 154.500(a), CFR 2015 annual edition (published): at least four times; no fixed figure of 600 psi in
# this edition.
_it(more) := object.union({"id": "H1"}, more)

_found(more) := object.union({"subject": "H1", "part": "H1", "have_kpa": 3999, "need_kpa": 4004}, more)

_law := {"regimes": ["33 CFR 154.500"]}

_cases := {
	"one below": {
		"line": _law,
		"given": [_it({"burst_kpa": 3999})],
		"more": {"capacities": [{"id": "c0", "part": "H1", "is_hose": true, "demand_kpa": 1001}]},
		"want": {_found({})},
	},
	"at the limit, rounding counted": {
		"line": _law,
		"given": [_it({"burst_kpa": 4000})],
		"more": {"capacities": [{"id": "c0", "part": "H1", "is_hose": true, "demand_kpa": 1001}]},
		"want": set(),
	},
	"above": {
		"line": _law,
		"given": [_it({"burst_kpa": 4005})],
		"more": {"capacities": [{"id": "c0", "part": "H1", "is_hose": true, "demand_kpa": 1001}]},
		"want": set(),
	},
	"burst unknown": {
		"line": _law,
		"given": [_it({})],
		"more": {"capacities": [{"id": "c0", "part": "H1", "is_hose": true, "demand_kpa": 1001}]},
		"want": set(),
	},
	"pressure unknown": {
		"line": _law,
		"given": [_it({"burst_kpa": 3999})],
		"more": {"capacities": [{"id": "c", "part": "H1", "is_hose": true}]},
		"want": set(),
	},
	"the highest of two cases counts": {
		"line": _law,
		"given": [_it({"burst_kpa": 3999})],
		"more": {"capacities": [{"id": "c0", "part": "H1", "is_hose": true, "demand_kpa": 500}, {"id": "c1", "part": "H1", "is_hose": true, "demand_kpa": 1001}]},
		"want": {_found({})},
	},
	"pressure at another hose": {
		"line": _law,
		"given": [_it({"burst_kpa": 3999})],
		"more": {"capacities": [{"id": "c", "part": "H2", "is_hose": true, "demand_kpa": 1001}]},
		"want": set(),
	},
	"pressure at a fitting of the same name": {
		"line": _law,
		"given": [_it({"burst_kpa": 3999})],
		"more": {"capacities": [{"id": "c", "part": "H1", "is_hose": false, "demand_kpa": 1001}]},
		"want": set(),
	},
	"another law": {
		"line": {"regimes": ["ADR"]},
		"given": [_it({"burst_kpa": 3999})],
		"more": {"capacities": [{"id": "c0", "part": "H1", "is_hose": true, "demand_kpa": 1001}]},
		"want": set(),
	},
	"one law of two": {
		"line": {"regimes": ["ADR", "33 CFR 154.500"]},
		"given": [_it({"burst_kpa": 3999})],
		"more": {"capacities": [{"id": "c0", "part": "H1", "is_hose": true, "demand_kpa": 1001}]},
		"want": {_found({})},
	},
	"two hoses, one short": {
		"line": _law,
		"given": [_it({"burst_kpa": 3999}), _it({"id": "H2", "burst_kpa": 3999})],
		"more": {"capacities": [{"id": "c0", "part": "H1", "is_hose": true, "demand_kpa": 1001}]},
		"want": {_found({})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := burst_below_marine_law.report with input as object.union(tc.more, {"line": tc.line, "hoses": tc.given})
	got == tc.want
}
