package rules.isolation.ammonia_hose_without_end_valve_test

import data.rules.isolation.ammonia_hose_without_end_valve

# 29 CFR 1910.111(b)(8)(iv), CFR 2015 annual edition (published).
_it(more) := object.union({"id": "H1", "run": "liquid", "carries_ammonia": true}, more)

_found(more) := object.union({"subject": "H1", "part": "H1"}, more)

_law := {"regimes": ["29 CFR 1910.111"]}

_cases := {
	"valve before the hose only": {
		"line": _law,
		"given": [_it({})],
		"more": {"parts": [{"id": "V1", "run": "liquid", "kind": "valve"}, {"id": "H1", "run": "liquid", "kind": "hose"}]},
		"want": {_found({})},
	},
	"another run has one": {
		"line": _law,
		"given": [_it({})],
		"more": {"parts": [{"id": "H1", "run": "liquid", "kind": "hose"}, {"id": "V2", "run": "pad", "kind": "valve"}]},
		"want": {_found({})},
	},
	"a plain fitting behind": {
		"line": _law,
		"given": [_it({})],
		"more": {"parts": [{"id": "H1", "run": "liquid", "kind": "hose"}, {"id": "F", "run": "liquid", "kind": "fitting"}]},
		"want": {_found({})},
	},
	"behind it a breakaway": {
		"line": _law,
		"given": [_it({})],
		"more": {"parts": [{"id": "H1", "run": "liquid", "kind": "hose"}, {"id": "X", "run": "liquid", "kind": "breakaway"}]},
		"want": set(),
	},
	"behind it a check-valve": {
		"line": _law,
		"given": [_it({})],
		"more": {"parts": [{"id": "H1", "run": "liquid", "kind": "hose"}, {"id": "X", "run": "liquid", "kind": "check-valve"}]},
		"want": set(),
	},
	"behind it a coupling": {
		"line": _law,
		"given": [_it({})],
		"more": {"parts": [{"id": "H1", "run": "liquid", "kind": "hose"}, {"id": "X", "run": "liquid", "kind": "coupling"}]},
		"want": set(),
	},
	"behind it a excess-flow": {
		"line": _law,
		"given": [_it({})],
		"more": {"parts": [{"id": "H1", "run": "liquid", "kind": "hose"}, {"id": "X", "run": "liquid", "kind": "excess-flow"}]},
		"want": set(),
	},
	"behind it a nozzle": {
		"line": _law,
		"given": [_it({})],
		"more": {"parts": [{"id": "H1", "run": "liquid", "kind": "hose"}, {"id": "X", "run": "liquid", "kind": "nozzle"}]},
		"want": set(),
	},
	"behind it a valve": {
		"line": _law,
		"given": [_it({})],
		"more": {"parts": [{"id": "H1", "run": "liquid", "kind": "hose"}, {"id": "X", "run": "liquid", "kind": "valve"}]},
		"want": set(),
	},
	"no ammonia": {
		"line": _law,
		"given": [_it({"carries_ammonia": false})],
		"more": {"parts": [{"id": "V1", "run": "liquid", "kind": "valve"}, {"id": "H1", "run": "liquid", "kind": "hose"}]},
		"want": set(),
	},
	"another law": {
		"line": {"regimes": ["ADR"]},
		"given": [_it({})],
		"more": {"parts": [{"id": "V1", "run": "liquid", "kind": "valve"}, {"id": "H1", "run": "liquid", "kind": "hose"}]},
		"want": set(),
	},
	"two hoses, the valve behind both": {
		"line": _law,
		"given": [_it({}), _it({"id": "H2"})],
		"more": {"parts": [{"id": "H1", "run": "liquid", "kind": "hose"}, {"id": "H2", "run": "liquid", "kind": "hose"}, {"id": "X", "run": "liquid", "kind": "valve"}]},
		"want": set(),
	},
	"two hoses, the valve between": {
		"line": _law,
		"given": [_it({}), _it({"id": "H2"})],
		"more": {"parts": [{"id": "H1", "run": "liquid", "kind": "hose"}, {"id": "X", "run": "liquid", "kind": "valve"}, {"id": "H2", "run": "liquid", "kind": "hose"}]},
		"want": {_found({"subject": "H2", "part": "H2"})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := ammonia_hose_without_end_valve.report with input as object.union(tc.more, {"line": tc.line, "hoses": tc.given})
	got == tc.want
}
