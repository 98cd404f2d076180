package rules.pressure.below_oil_cargo_law_test

import data.rules.pressure.below_oil_cargo_law

# 46 CFR 32.50-30, CFR 2015 annual edition (published): at least 150 psi = 1034.2 kPa.
_it(more) := object.union({"id": "H1"}, more)

_found(more) := object.union({"subject": "H1", "part": "H1", "have_kpa": 1033, "need_kpa": 1034}, more)

_law := {"regimes": ["46 CFR 32.50-30"]}

_cases := {
	"one below": {
		"line": _law,
		"given": [_it({"rated_kpa": 1033})],
		"want": {_found({})},
	},
	"at the limit": {
		"line": _law,
		"given": [_it({"rated_kpa": 1034})],
		"want": set(),
	},
	"above": {
		"line": _law,
		"given": [_it({"rated_kpa": 1035})],
		"want": set(),
	},
	"unknown": {
		"line": _law,
		"given": [_it({})],
		"want": set(),
	},
	"another law": {
		"line": {"regimes": ["ADR"]},
		"given": [_it({"rated_kpa": 1033})],
		"want": set(),
	},
	"no law": {
		"line": {"regimes": []},
		"given": [_it({"rated_kpa": 1033})],
		"want": set(),
	},
	"two hoses, one short": {
		"line": _law,
		"given": [_it({"rated_kpa": 1034}), _it({"rated_kpa": 1032, "id": "H2"})],
		"want": {_found({"subject": "H2", "part": "H2", "have_kpa": 1032})},
	},
	"one law of two": {
		"line": {"regimes": ["ADR", "46 CFR 32.50-30"]},
		"given": [_it({"rated_kpa": 1033})],
		"want": {_found({})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := below_oil_cargo_law.report with input as {"line": tc.line, "hoses": tc.given}
	got == tc.want
}
