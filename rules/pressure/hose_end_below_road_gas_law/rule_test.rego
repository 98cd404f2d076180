package rules.pressure.hose_end_below_road_gas_law_test

import data.rules.pressure.hose_end_below_road_gas_law

# 49 CFR 178.337-9(b)(3), CFR 2015 annual edition (published): at least 120 percent of the hose design pressure.
_it(more) := object.union({"id": "H1 inlet", "part": "H1", "what": "end"}, more)

_found(more) := object.union({"subject": "H1 inlet", "part": "H1", "end_kpa": 1199, "hose_kpa": 1000}, more)

_law := {"regimes": ["49 CFR 178.337-9"]}

_cases := {
	"one below": {
		"line": _law,
		"given": [_it({"rated_kpa": 1199})],
		"more": {"hoses": [{"id": "H1", "rated_kpa": 1000}]},
		"want": {_found({})},
	},
	"at the limit": {
		"line": _law,
		"given": [_it({"rated_kpa": 1200})],
		"more": {"hoses": [{"id": "H1", "rated_kpa": 1000}]},
		"want": set(),
	},
	"above": {
		"line": _law,
		"given": [_it({"rated_kpa": 1201})],
		"more": {"hoses": [{"id": "H1", "rated_kpa": 1000}]},
		"want": set(),
	},
	"unknown": {
		"line": _law,
		"given": [_it({})],
		"more": {"hoses": [{"id": "H1", "rated_kpa": 1000}]},
		"want": set(),
	},
	"far below": {
		"line": _law,
		"given": [_it({"rated_kpa": 600})],
		"more": {"hoses": [{"id": "H1", "rated_kpa": 1000}]},
		"want": {_found({"end_kpa": 600})},
	},
	"same as the hose": {
		"line": _law,
		"given": [_it({"rated_kpa": 1000})],
		"more": {"hoses": [{"id": "H1", "rated_kpa": 1000}]},
		"want": {_found({"end_kpa": 1000})},
	},
	"hose unknown": {
		"line": _law,
		"given": [_it({"rated_kpa": 1199})],
		"more": {"hoses": [{"id": "H1"}]},
		"want": set(),
	},
	"end of a valve": {
		"line": _law,
		"given": [_it({"rated_kpa": 1199, "part": "V1"})],
		"more": {"hoses": [{"id": "H1", "rated_kpa": 1000}]},
		"want": set(),
	},
	"not an end": {
		"line": _law,
		"given": [_it({"rated_kpa": 1199, "what": "hose"})],
		"more": {"hoses": [{"id": "H1", "rated_kpa": 1000}]},
		"want": set(),
	},
	"another law": {
		"line": {"regimes": ["ADR"]},
		"given": [_it({"rated_kpa": 1199})],
		"more": {"hoses": [{"id": "H1", "rated_kpa": 1000}]},
		"want": set(),
	},
	"both ends": {
		"line": _law,
		"given": [_it({"rated_kpa": 1199}), _it({"id": "H1 outlet", "rated_kpa": 1100})],
		"more": {"hoses": [{"id": "H1", "rated_kpa": 1000}]},
		"want": {_found({}), _found({"subject": "H1 outlet", "end_kpa": 1100})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := hose_end_below_road_gas_law.report with input as object.union(tc.more, {"line": tc.line, "capacities": tc.given})
	got == tc.want
}
