package rules.isolation.no_valve_before_hose_test

import data.rules.isolation.no_valve_before_hose

# Practice, no source; for ammonia 29 CFR 1910.111(b)(12)(vii), CFR 2015 annual edition (published).
_it(more) := object.union({"id": "H1", "run": "liquid", "carries_liquefied_gas": true}, more)

_found(more) := object.union({"subject": "H1", "part": "H1"}, more)

_law := {"regimes": []}

_cases := {
	"valve behind the hose only": {
		"line": _law,
		"given": [_it({})],
		"more": {"parts": [{"id": "H1", "run": "liquid", "kind": "hose"}, {"id": "V1", "run": "liquid", "kind": "valve"}]},
		"want": {_found({})},
	},
	"another run has one": {
		"line": _law,
		"given": [_it({})],
		"more": {"parts": [{"id": "V2", "run": "pad", "kind": "valve"}, {"id": "H1", "run": "liquid", "kind": "hose"}]},
		"want": {_found({})},
	},
	"a plain fitting before": {
		"line": _law,
		"given": [_it({})],
		"more": {"parts": [{"id": "F", "run": "liquid", "kind": "fitting"}, {"id": "H1", "run": "liquid", "kind": "hose"}]},
		"want": {_found({})},
	},
	"before it a breakaway": {
		"line": _law,
		"given": [_it({})],
		"more": {"parts": [{"id": "X", "run": "liquid", "kind": "breakaway"}, {"id": "H1", "run": "liquid", "kind": "hose"}]},
		"want": set(),
	},
	"before it a excess-flow": {
		"line": _law,
		"given": [_it({})],
		"more": {"parts": [{"id": "X", "run": "liquid", "kind": "excess-flow"}, {"id": "H1", "run": "liquid", "kind": "hose"}]},
		"want": set(),
	},
	"before it a regulator": {
		"line": _law,
		"given": [_it({})],
		"more": {"parts": [{"id": "X", "run": "liquid", "kind": "regulator"}, {"id": "H1", "run": "liquid", "kind": "hose"}]},
		"want": set(),
	},
	"before it a valve": {
		"line": _law,
		"given": [_it({})],
		"more": {"parts": [{"id": "X", "run": "liquid", "kind": "valve"}, {"id": "H1", "run": "liquid", "kind": "hose"}]},
		"want": set(),
	},
	"no liquefied gas": {
		"line": _law,
		"given": [_it({"carries_liquefied_gas": false})],
		"more": {"parts": [{"id": "H1", "run": "liquid", "kind": "hose"}, {"id": "V1", "run": "liquid", "kind": "valve"}]},
		"want": set(),
	},
	"two hoses, the valve between": {
		"line": _law,
		"given": [_it({}), _it({"id": "H2"})],
		"more": {"parts": [{"id": "H1", "run": "liquid", "kind": "hose"}, {"id": "X", "run": "liquid", "kind": "valve"}, {"id": "H2", "run": "liquid", "kind": "hose"}]},
		"want": {_found({})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := no_valve_before_hose.report with input as object.union(tc.more, {"line": tc.line, "hoses": tc.given})
	got == tc.want
}
