package rules.isolation.air_hose_without_flow_limit_test

import data.rules.isolation.air_hose_without_flow_limit

# 29 CFR 1926.302(b)(7), CFR 2015 annual edition (published): more than 1/2 in = 12.7 mm inside.
_it(more) := object.union({"id": "air"}, more)

_found(more) := object.union({"subject": "air", "run": "air", "have_mm": 14, "need_mm": 13}, more)

_law := {"regimes": ["29 CFR 1926.302"]}

_cases := {
	"one above": {
		"line": _law,
		"given": [_it({"bore_mm": 14})],
		"more": {"fluids": [{"id": "air", "air": true}], "parts": []},
		"want": {_found({})},
	},
	"half an inch": {
		"line": _law,
		"given": [_it({"bore_mm": 13})],
		"more": {"fluids": [{"id": "air", "air": true}], "parts": []},
		"want": set(),
	},
	"below": {
		"line": _law,
		"given": [_it({"bore_mm": 10})],
		"more": {"fluids": [{"id": "air", "air": true}], "parts": []},
		"want": set(),
	},
	"bore unknown": {
		"line": _law,
		"given": [_it({})],
		"more": {"fluids": [{"id": "air", "air": true}], "parts": []},
		"want": set(),
	},
	"with an excess-flow valve": {
		"line": _law,
		"given": [_it({"bore_mm": 14})],
		"more": {"fluids": [{"id": "air", "air": true}], "parts": [{"id": "X", "run": "air", "kind": "excess-flow"}]},
		"want": set(),
	},
	"one in another run": {
		"line": _law,
		"given": [_it({"bore_mm": 14})],
		"more": {"fluids": [{"id": "air", "air": true}], "parts": [{"id": "X", "run": "liquid", "kind": "excess-flow"}]},
		"want": {_found({})},
	},
	"a plain valve": {
		"line": _law,
		"given": [_it({"bore_mm": 14})],
		"more": {"fluids": [{"id": "air", "air": true}], "parts": [{"id": "X", "run": "air", "kind": "valve"}]},
		"want": {_found({})},
	},
	"nitrogen": {
		"line": _law,
		"given": [_it({"bore_mm": 14})],
		"more": {"fluids": [{"id": "n2", "air": false}], "parts": []},
		"want": set(),
	},
	"another law": {
		"line": {"regimes": ["ADR"]},
		"given": [_it({"bore_mm": 14})],
		"more": {"fluids": [{"id": "air", "air": true}], "parts": []},
		"want": set(),
	},
	"two runs, one wide": {
		"line": _law,
		"given": [_it({"bore_mm": 13}), _it({"id": "b", "bore_mm": 25})],
		"more": {"fluids": [{"id": "air", "air": true}], "parts": []},
		"want": {_found({"subject": "b", "run": "b", "have_mm": 25})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := air_hose_without_flow_limit.report with input as object.union(tc.more, {"line": tc.line, "releases": tc.given})
	got == tc.want
}
