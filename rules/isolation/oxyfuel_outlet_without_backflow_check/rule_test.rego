package rules.isolation.oxyfuel_outlet_without_backflow_check_test

import data.rules.isolation.oxyfuel_outlet_without_backflow_check

# 29 CFR 1910.253(e)(4)(i), CFR 2015 annual edition (published).
_found(more) := object.union({"subject": "line"}, more)

_cases := {
	"nothing": {
		"line": {"regimes": ["29 CFR 1910.253"]},
		"more": {"parts": [{"id": "H1", "run": "gas", "kind": "hose"}]},
		"want": {_found({})},
	},
	"a check valve": {
		"line": {"regimes": ["29 CFR 1910.253"]},
		"more": {"parts": [{"id": "C", "run": "gas", "kind": "check-valve"}]},
		"want": set(),
	},
	"a regulator": {
		"line": {"regimes": ["29 CFR 1910.253"]},
		"more": {"parts": [{"id": "R", "run": "gas", "kind": "regulator"}]},
		"want": set(),
	},
	"another law": {
		"line": {"regimes": ["ADR"]},
		"more": {"parts": [{"id": "H1", "run": "gas", "kind": "hose"}]},
		"want": set(),
	},
	"no part known": {
		"line": {"regimes": ["29 CFR 1910.253"]},
		"more": {"parts": []},
		"want": {_found({})},
	},
	"one of two parts": {
		"line": {"regimes": ["ADR", "29 CFR 1910.253"]},
		"more": {"parts": [{"id": "H1", "run": "gas", "kind": "hose"}, {"id": "C", "run": "gas", "kind": "check-valve"}]},
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := oxyfuel_outlet_without_backflow_check.report with input as object.union(tc.more, {"line": tc.line})
	got == tc.want
}
