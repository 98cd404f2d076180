package rules.inspection.test_below_gas_carrier_law_test

import data.rules.inspection.test_below_gas_carrier_law

# 46 CFR 154.562, CFR 2015 annual edition (published): 1.5 times.
_it(more) := object.union({"id": "H1", "rated_kpa": 1000}, more)

_found(more) := object.union({"subject": "H1", "part": "H1", "test_kpa": 1499, "rated_kpa": 1000}, more)

_law := {"regimes": ["46 CFR 154.562"]}

_cases := {
	"one below": {
		"line": _law,
		"given": [_it({"test_pressure_kpa": 1499})],
		"want": {_found({})},
	},
	"exactly that much": {
		"line": _law,
		"given": [_it({"test_pressure_kpa": 1500})],
		"want": set(),
	},
	"above": {
		"line": _law,
		"given": [_it({"test_pressure_kpa": 1501})],
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
		"given": [_it({"test_pressure_kpa": 1499})],
		"want": set(),
	},
	"no law": {
		"line": {"regimes": []},
		"given": [_it({"test_pressure_kpa": 1499})],
		"want": set(),
	},
	"two hoses, one short": {
		"line": _law,
		"given": [_it({"test_pressure_kpa": 1500}), _it({"test_pressure_kpa": 1498, "id": "H2"})],
		"want": {_found({"subject": "H2", "part": "H2", "test_kpa": 1498})},
	},
	"150 psig tested at 225 psig": {
		"line": _law,
		"given": [_it({"rated_kpa": 1034, "test_pressure_kpa": 1551})],
		"want": set(),
	},
	"half a kilopascal lost in rounding": {
		"line": _law,
		"given": [_it({"rated_kpa": 1001, "test_pressure_kpa": 1501})],
		"want": set(),
	},
	"one law of two": {
		"line": {"regimes": ["ADR", "46 CFR 154.562"]},
		"given": [_it({"test_pressure_kpa": 1499})],
		"want": {_found({})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := test_below_gas_carrier_law.report with input as {"line": tc.line, "hoses": tc.given}
	got == tc.want
}
