package rules.pressure.vapour_hose_below_marine_law_test

import data.rules.pressure.vapour_hose_below_marine_law

# 33 CFR 154.2101(d), CFR 2015 annual edition (published): at least 5 psig = 34.5 kPa.
_it(more) := object.union({"id": "H1", "carries_gas": true}, more)

_found(more) := object.union({"subject": "H1", "part": "H1", "have_kpa": 33, "need_kpa": 34}, more)

_law := {"regimes": ["33 CFR 154.2101"]}

_cases := {
	"one below": {
		"line": _law,
		"given": [_it({"rated_kpa": 33})],
		"want": {_found({})},
	},
	"at the limit": {
		"line": _law,
		"given": [_it({"rated_kpa": 34})],
		"want": set(),
	},
	"above": {
		"line": _law,
		"given": [_it({"rated_kpa": 35})],
		"want": set(),
	},
	"unknown": {
		"line": _law,
		"given": [_it({})],
		"want": set(),
	},
	"another law": {
		"line": {"regimes": ["ADR"]},
		"given": [_it({"rated_kpa": 33})],
		"want": set(),
	},
	"no law": {
		"line": {"regimes": []},
		"given": [_it({"rated_kpa": 33})],
		"want": set(),
	},
	"two hoses, one short": {
		"line": _law,
		"given": [_it({"rated_kpa": 34}), _it({"rated_kpa": 32, "id": "H2"})],
		"want": {_found({"subject": "H2", "part": "H2", "have_kpa": 32})},
	},
	"one law of two": {
		"line": {"regimes": ["ADR", "33 CFR 154.2101"]},
		"given": [_it({"rated_kpa": 33})],
		"want": {_found({})},
	},
	"out of scope": {
		"line": _law,
		"given": [_it({"rated_kpa": 33, "carries_gas": false})],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := vapour_hose_below_marine_law.report with input as {"line": tc.line, "hoses": tc.given}
	got == tc.want
}
