package rules.pressure.burst_below_road_tank_law_test

import data.rules.pressure.burst_below_road_tank_law

# 49 CFR 178.345-9(b), CFR 2015 annual edition (published): the greater of 100 psig = 689.5 kPa and 4 times the
# tank pressure.
_it(more) := object.union({"id": "H1"}, more)

_found(more) := object.union({"subject": "H1", "part": "H1", "have_kpa": 688, "need_kpa": 689}, more)

_law := {"regimes": ["49 CFR 178.345-9"]}

_cases := {
	"one below 100 psig": {
		"line": _law,
		"given": [_it({"burst_kpa": 688})],
		"more": {"vessels": [{"id": "T", "kind": "tanker", "rated_kpa": 172}]},
		"want": {_found({})},
	},
	"at 100 psig": {
		"line": _law,
		"given": [_it({"burst_kpa": 689})],
		"more": {"vessels": [{"id": "T", "kind": "tanker", "rated_kpa": 172}]},
		"want": set(),
	},
	"above": {
		"line": _law,
		"given": [_it({"burst_kpa": 690})],
		"more": {"vessels": [{"id": "T", "kind": "tanker", "rated_kpa": 172}]},
		"want": set(),
	},
	"burst unknown": {
		"line": _law,
		"given": [_it({})],
		"more": {"vessels": [{"id": "T", "kind": "tanker", "rated_kpa": 172}]},
		"want": set(),
	},
	"one below four times the tank": {
		"line": _law,
		"given": [_it({"burst_kpa": 999})],
		"more": {"vessels": [{"id": "T", "kind": "tanker", "rated_kpa": 250}]},
		"want": {_found({"have_kpa": 999, "need_kpa": 1000})},
	},
	"at four times the tank": {
		"line": _law,
		"given": [_it({"burst_kpa": 1000})],
		"more": {"vessels": [{"id": "T", "kind": "tanker", "rated_kpa": 250}]},
		"want": set(),
	},
	"the receiving tank is no road tank": {
		"line": _law,
		"given": [_it({"burst_kpa": 700})],
		"more": {"vessels": [{"id": "T", "kind": "tank", "rated_kpa": 250}]},
		"want": set(),
	},
	"tank unknown": {
		"line": _law,
		"given": [_it({"burst_kpa": 700})],
		"more": {"vessels": [{"id": "T", "kind": "tanker"}]},
		"want": set(),
	},
	"another law": {
		"line": {"regimes": ["ADR"]},
		"given": [_it({"burst_kpa": 688})],
		"more": {"vessels": [{"id": "T", "kind": "tanker", "rated_kpa": 172}]},
		"want": set(),
	},
	"two hoses, one short": {
		"line": _law,
		"given": [_it({"burst_kpa": 900}), _it({"id": "H2", "burst_kpa": 600})],
		"more": {"vessels": [{"id": "T", "kind": "tanker", "rated_kpa": 172}]},
		"want": {_found({"subject": "H2", "part": "H2", "have_kpa": 600})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := burst_below_road_tank_law.report with input as object.union(tc.more, {"line": tc.line, "hoses": tc.given})
	got == tc.want
}
