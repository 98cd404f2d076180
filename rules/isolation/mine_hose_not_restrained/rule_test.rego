package rules.isolation.mine_hose_not_restrained_test

import data.rules.isolation.mine_hose_not_restrained

# 30 CFR 56.13021, CFR 2015 annual edition (published): from 3/4 in = 19.05 mm inside.
_it(more) := object.union({"id": "air", "restrained": false}, more)

_found(more) := object.union({"subject": "air", "run": "air", "bore_mm": 19}, more)

_law := {"regimes": ["30 CFR 56.13021"]}

_cases := {
	"three quarters of an inch": {
		"line": _law,
		"given": [_it({"bore_mm": 19})],
		"more": {"parts": []},
		"want": {_found({})},
	},
	"above": {
		"line": _law,
		"given": [_it({"bore_mm": 20})],
		"more": {"parts": []},
		"want": {_found({"bore_mm": 20})},
	},
	"below": {
		"line": _law,
		"given": [_it({"bore_mm": 18})],
		"more": {"parts": []},
		"want": set(),
	},
	"bore unknown": {
		"line": _law,
		"given": [_it({})],
		"more": {"parts": []},
		"want": set(),
	},
	"restrained": {
		"line": _law,
		"given": [_it({"bore_mm": 19, "restrained": true})],
		"more": {"parts": []},
		"want": set(),
	},
	"shut off by itself": {
		"line": _law,
		"given": [_it({"bore_mm": 19})],
		"more": {"parts": [{"id": "X", "run": "air", "kind": "excess-flow"}]},
		"want": set(),
	},
	"only in another run": {
		"line": _law,
		"given": [_it({"bore_mm": 19})],
		"more": {"parts": [{"id": "X", "run": "b", "kind": "excess-flow"}]},
		"want": {_found({})},
	},
	"a plain valve": {
		"line": _law,
		"given": [_it({"bore_mm": 19})],
		"more": {"parts": [{"id": "X", "run": "air", "kind": "valve"}]},
		"want": {_found({})},
	},
	"another law": {
		"line": {"regimes": ["ADR"]},
		"given": [_it({"bore_mm": 19})],
		"more": {"parts": []},
		"want": set(),
	},
	"two runs, one held": {
		"line": _law,
		"given": [_it({"bore_mm": 19, "restrained": true}), _it({"id": "b", "bore_mm": 30})],
		"more": {"parts": []},
		"want": {_found({"subject": "b", "run": "b", "bore_mm": 30})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := mine_hose_not_restrained.report with input as object.union(tc.more, {"line": tc.line, "releases": tc.given})
	got == tc.want
}
