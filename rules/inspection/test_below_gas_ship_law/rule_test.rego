package rules.inspection.test_below_gas_ship_law_test

import data.rules.inspection.test_below_gas_ship_law

# 46 CFR 38.15-5, undated public copy (published): at least twice, for a new hose.
_it(more) := object.union({"id": "H1", "rated_kpa": 1000}, more)

_found(more) := object.union({"subject": "H1", "part": "H1", "test_kpa": 1999, "rated_kpa": 1000}, more)

_law := {"regimes": ["46 CFR 38.15-5"]}

_cases := {
	"one below": {
		"line": _law,
		"given": [_it({"test_pressure_kpa": 1999})],
		"want": {_found({})},
	},
	"exactly that much": {
		"line": _law,
		"given": [_it({"test_pressure_kpa": 2000})],
		"want": set(),
	},
	"above": {
		"line": _law,
		"given": [_it({"test_pressure_kpa": 2001})],
		"want": set(),
	},
	"test pressure unknown": {
		"line": _law,
		"given": [_it({})],
		"want": set(),
	},
	"far below": {
		"line": _law,
		"given": [_it({"test_pressure_kpa": 500})],
		"want": {_found({"test_kpa": 500})},
	},
	"another law": {
		"line": {"regimes": ["ADR"]},
		"given": [_it({"test_pressure_kpa": 1999})],
		"want": set(),
	},
	"no law": {
		"line": {"regimes": []},
		"given": [_it({"test_pressure_kpa": 1999})],
		"want": set(),
	},
	"two hoses, one short": {
		"line": _law,
		"given": [_it({"test_pressure_kpa": 2000}), _it({"test_pressure_kpa": 1998, "id": "H2"})],
		"want": {_found({"subject": "H2", "part": "H2", "test_kpa": 1998})},
	},
	"one law of two": {
		"line": {"regimes": ["ADR", "46 CFR 38.15-5"]},
		"given": [_it({"test_pressure_kpa": 1999})],
		"want": {_found({})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := test_below_gas_ship_law.report with input as {"line": tc.line, "hoses": tc.given}
	got == tc.want
}
