package rules.pressure.lpg_fitting_below_law_test

import data.rules.pressure.lpg_fitting_below_law

# 29 CFR 1910.110(b)(8)(v), CFR 2015 annual edition (published): 125 psig = 861.8 kPa; above it 250 psig =
# 1723.7 kPa.
_it(more) := object.union({"id": "V1 body", "part": "V1", "what": "body"}, more)

_found(more) := object.union({"subject": "V1 body", "part": "V1", "have_kpa": 860, "need_kpa": 861}, more)

_law := {"regimes": ["29 CFR 1910.110"]}

_cases := {
	"one below, low pressure": {
		"line": _law,
		"given": [_it({"rated_kpa": 860})],
		"more": {"parts": [{"id": "V1", "kind": "valve", "run": "liquid"}], "hoses": [{"id": "H1", "run": "liquid", "carries_lpg": true}], "cases": [{"id": "a", "run": "liquid", "case": "duty", "pressure_kpa": 862}]},
		"want": {_found({})},
	},
	"at the limit, low pressure": {
		"line": _law,
		"given": [_it({"rated_kpa": 861})],
		"more": {"parts": [{"id": "V1", "kind": "valve", "run": "liquid"}], "hoses": [{"id": "H1", "run": "liquid", "carries_lpg": true}], "cases": [{"id": "a", "run": "liquid", "case": "duty", "pressure_kpa": 862}]},
		"want": set(),
	},
	"unknown": {
		"line": _law,
		"given": [_it({})],
		"more": {"parts": [{"id": "V1", "kind": "valve", "run": "liquid"}], "hoses": [{"id": "H1", "run": "liquid", "carries_lpg": true}], "cases": [{"id": "a", "run": "liquid", "case": "duty", "pressure_kpa": 862}]},
		"want": set(),
	},
	"one below, high pressure": {
		"line": _law,
		"given": [_it({"rated_kpa": 1722})],
		"more": {"parts": [{"id": "V1", "kind": "valve", "run": "liquid"}], "hoses": [{"id": "H1", "run": "liquid", "carries_lpg": true}], "cases": [{"id": "a", "run": "liquid", "case": "duty", "pressure_kpa": 863}]},
		"want": {_found({"have_kpa": 1722, "need_kpa": 1723})},
	},
	"at the limit, high pressure": {
		"line": _law,
		"given": [_it({"rated_kpa": 1723})],
		"more": {"parts": [{"id": "V1", "kind": "valve", "run": "liquid"}], "hoses": [{"id": "H1", "run": "liquid", "carries_lpg": true}], "cases": [{"id": "a", "run": "liquid", "case": "duty", "pressure_kpa": 863}]},
		"want": set(),
	},
	"container pressure counts": {
		"line": _law,
		"given": [_it({"rated_kpa": 1000})],
		"more": {"parts": [{"id": "V1", "kind": "valve", "run": "liquid"}], "hoses": [{"id": "H1", "run": "liquid", "carries_lpg": true}], "cases": [{"id": "a", "run": "liquid", "case": "vapour-pressure", "pressure_kpa": 1500}]},
		"want": {_found({"have_kpa": 1000, "need_kpa": 1723})},
	},
	"a failed regulator is no operating pressure": {
		"line": _law,
		"given": [_it({"rated_kpa": 1000})],
		"more": {"parts": [{"id": "V1", "kind": "valve", "run": "liquid"}], "hoses": [{"id": "H1", "run": "liquid", "carries_lpg": true}], "cases": [{"id": "a", "run": "liquid", "case": "regulator-failed-open", "pressure_kpa": 1500}]},
		"want": set(),
	},
	"high pressure of another run": {
		"line": _law,
		"given": [_it({"rated_kpa": 1000})],
		"more": {"parts": [{"id": "V1", "kind": "valve", "run": "liquid"}], "hoses": [{"id": "H1", "run": "liquid", "carries_lpg": true}], "cases": [{"id": "a", "run": "pad", "case": "duty", "pressure_kpa": 1500}]},
		"want": set(),
	},
	"operating pressure unknown": {
		"line": _law,
		"given": [_it({"rated_kpa": 1000})],
		"more": {"parts": [{"id": "V1", "kind": "valve", "run": "liquid"}], "hoses": [{"id": "H1", "run": "liquid", "carries_lpg": true}], "cases": [{"id": "a", "run": "liquid", "case": "duty"}]},
		"want": set(),
	},
	"no LP-gas": {
		"line": _law,
		"given": [_it({"rated_kpa": 860})],
		"more": {"parts": [{"id": "V1", "kind": "valve", "run": "liquid"}], "hoses": [{"id": "H1", "run": "liquid", "carries_lpg": false}], "cases": [{"id": "a", "run": "liquid", "case": "duty", "pressure_kpa": 862}]},
		"want": set(),
	},
	"hose of another run": {
		"line": _law,
		"given": [_it({"rated_kpa": 860})],
		"more": {"parts": [{"id": "V1", "kind": "valve", "run": "liquid"}], "hoses": [{"id": "H1", "run": "pad", "carries_lpg": true}], "cases": [{"id": "a", "run": "liquid", "case": "duty", "pressure_kpa": 862}]},
		"want": set(),
	},
	"an end": {
		"line": _law,
		"given": [_it({"rated_kpa": 860, "what": "end"})],
		"more": {"parts": [{"id": "V1", "kind": "valve", "run": "liquid"}], "hoses": [{"id": "H1", "run": "liquid", "carries_lpg": true}], "cases": [{"id": "a", "run": "liquid", "case": "duty", "pressure_kpa": 862}]},
		"want": set(),
	},
	"another part": {
		"line": _law,
		"given": [_it({"rated_kpa": 860})],
		"more": {"parts": [{"id": "V9", "kind": "valve", "run": "liquid"}], "hoses": [{"id": "H1", "run": "liquid", "carries_lpg": true}], "cases": [{"id": "a", "run": "liquid", "case": "duty", "pressure_kpa": 862}]},
		"want": set(),
	},
	"another law": {
		"line": {"regimes": ["ADR"]},
		"given": [_it({"rated_kpa": 860})],
		"more": {"parts": [{"id": "V1", "kind": "valve", "run": "liquid"}], "hoses": [{"id": "H1", "run": "liquid", "carries_lpg": true}], "cases": [{"id": "a", "run": "liquid", "case": "duty", "pressure_kpa": 862}]},
		"want": set(),
	},
	"two, one short": {
		"line": _law,
		"given": [_it({"rated_kpa": 900}), _it({"id": "V2 body", "part": "V2", "rated_kpa": 500})],
		"more": {"parts": [{"id": "V1", "kind": "valve", "run": "liquid"}, {"id": "V2", "kind": "valve", "run": "liquid"}], "hoses": [{"id": "H1", "run": "liquid", "carries_lpg": true}], "cases": [{"id": "a", "run": "liquid", "case": "duty", "pressure_kpa": 862}]},
		"want": {_found({"subject": "V2 body", "part": "V2", "have_kpa": 500})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := lpg_fitting_below_law.report with input as object.union(tc.more, {"line": tc.line, "capacities": tc.given})
	got == tc.want
}
