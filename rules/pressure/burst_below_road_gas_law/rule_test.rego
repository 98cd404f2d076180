package rules.pressure.burst_below_road_gas_law_test

import data.rules.pressure.burst_below_road_gas_law

# 49 CFR 178.337-9(b)(1), CFR 2015 annual edition (published): 4 times the greater of tank design pressure and
# any higher pressure in service.
_it(more) := object.union({"id": "H1"}, more)

_found(more) := object.union({"subject": "H1", "part": "H1", "have_kpa": 3999, "need_kpa": 4004}, more)

_law := {"regimes": ["49 CFR 178.337-9"]}

_cases := {
	"one below": {
		"line": _law,
		"given": [_it({"burst_kpa": 3999})],
		"more": {"capacities": [{"id": "c", "part": "H1", "is_hose": true, "demand_kpa": 1001}], "vessels": [{"id": "T", "kind": "tanker", "rated_kpa": 900}]},
		"want": {_found({})},
	},
	"at the limit": {
		"line": _law,
		"given": [_it({"burst_kpa": 4000})],
		"more": {"capacities": [{"id": "c", "part": "H1", "is_hose": true, "demand_kpa": 1001}], "vessels": [{"id": "T", "kind": "tanker", "rated_kpa": 900}]},
		"want": set(),
	},
	"above": {
		"line": _law,
		"given": [_it({"burst_kpa": 4010})],
		"more": {"capacities": [{"id": "c", "part": "H1", "is_hose": true, "demand_kpa": 1001}], "vessels": [{"id": "T", "kind": "tanker", "rated_kpa": 900}]},
		"want": set(),
	},
	"burst unknown": {
		"line": _law,
		"given": [_it({})],
		"more": {"capacities": [{"id": "c", "part": "H1", "is_hose": true, "demand_kpa": 1001}], "vessels": [{"id": "T", "kind": "tanker", "rated_kpa": 900}]},
		"want": set(),
	},
	"the tank is stronger than the line is hard": {
		"line": _law,
		"given": [_it({"burst_kpa": 3999})],
		"more": {"capacities": [{"id": "c", "part": "H1", "is_hose": true, "demand_kpa": 900}], "vessels": [{"id": "T", "kind": "tanker", "rated_kpa": 1001}]},
		"want": {_found({})},
	},
	"tank unknown": {
		"line": _law,
		"given": [_it({"burst_kpa": 3999})],
		"more": {"capacities": [{"id": "c", "part": "H1", "is_hose": true, "demand_kpa": 1001}], "vessels": [{"id": "T", "kind": "tanker"}]},
		"want": {_found({})},
	},
	"line unknown, tank weak": {
		"line": _law,
		"given": [_it({"burst_kpa": 3999})],
		"more": {"capacities": [{"id": "c", "part": "H1", "is_hose": true}], "vessels": [{"id": "T", "kind": "tanker", "rated_kpa": 900}]},
		"want": set(),
	},
	"another vessel is no road tank": {
		"line": _law,
		"given": [_it({"burst_kpa": 3999})],
		"more": {"capacities": [], "vessels": [{"id": "T", "kind": "tank", "rated_kpa": 1001}]},
		"want": set(),
	},
	"pressure at another hose": {
		"line": _law,
		"given": [_it({"burst_kpa": 3999})],
		"more": {"capacities": [{"id": "c", "part": "H2", "is_hose": true, "demand_kpa": 1001}], "vessels": []},
		"want": set(),
	},
	"pressure at a fitting": {
		"line": _law,
		"given": [_it({"burst_kpa": 3999})],
		"more": {"capacities": [{"id": "c", "part": "H1", "is_hose": false, "demand_kpa": 1001}], "vessels": []},
		"want": set(),
	},
	"another law": {
		"line": {"regimes": ["ADR"]},
		"given": [_it({"burst_kpa": 3999})],
		"more": {"capacities": [{"id": "c", "part": "H1", "is_hose": true, "demand_kpa": 1001}], "vessels": [{"id": "T", "kind": "tanker", "rated_kpa": 900}]},
		"want": set(),
	},
	"two hoses, one short": {
		"line": _law,
		"given": [_it({"burst_kpa": 5000}), _it({"id": "H2", "burst_kpa": 3500})],
		"more": {"capacities": [{"id": "c", "part": "H1", "is_hose": true, "demand_kpa": 1001}], "vessels": [{"id": "T", "kind": "tanker", "rated_kpa": 1001}]},
		"want": {_found({"subject": "H2", "part": "H2", "have_kpa": 3500, "need_kpa": 4004})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := burst_below_road_gas_law.report with input as object.union(tc.more, {"line": tc.line, "hoses": tc.given})
	got == tc.want
}
