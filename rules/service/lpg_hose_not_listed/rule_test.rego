package rules.service.lpg_hose_not_listed_test

import data.rules.service.lpg_hose_not_listed

# 29 CFR 1910.110(b)(9)(iv), CFR 2015 annual edition (published).
_it(more) := object.union({"id": "H1", "carries_lpg": true, "low_side": false}, more)

_found(more) := object.union({"subject": "H1", "part": "H1"}, more)

_cases := {
	"not listed": {
		"line": {"regimes": ["29 CFR 1910.110"]},
		"given": [_it({"listed": false})],
		"want": {_found({})},
	},
	"twin, listed": {
		"line": {"regimes": ["29 CFR 1910.110"]},
		"given": [_it({"listed": true})],
		"want": set(),
	},
	"unknown": {
		"line": {"regimes": ["29 CFR 1910.110"]},
		"given": [_it({})],
		"want": set(),
	},
	"behind a regulator": {
		"line": {"regimes": ["29 CFR 1910.110"]},
		"given": [_it({"listed": false, "low_side": true})],
		"want": set(),
	},
	"another fluid": {
		"line": {"regimes": ["29 CFR 1910.110"]},
		"given": [_it({"listed": false, "carries_lpg": false})],
		"want": set(),
	},
	"another law": {
		"line": {"regimes": []},
		"given": [_it({"listed": false})],
		"want": set(),
	},
	"the second of two": {
		"line": {"regimes": ["29 CFR 1910.110"]},
		"given": [_it({"listed": true}), _it({"id": "H2", "listed": false})],
		"want": {_found({"subject": "H2", "part": "H2"})},
	},
	"nothing to judge": {
		"line": {"regimes": ["29 CFR 1910.110"]},
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := lpg_hose_not_listed.report with input as {"line": tc.line, "hoses": tc.given}
	got == tc.want
}
