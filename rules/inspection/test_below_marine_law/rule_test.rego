package rules.inspection.test_below_marine_law_test

import data.rules.inspection.test_below_marine_law

# 33 CFR 156.170(c) and 46 CFR 151.04-5(j), CFR 2015 annual edition (published): 1.5 times.
_it(more) := object.union({"id": "H1", "rated_kpa": 1000}, more)

_found(more) := object.union({"subject": "H1", "part": "H1", "law": "33 CFR 156.170", "test_kpa": 1499, "rated_kpa": 1000}, more)

_law := {"regimes": ["33 CFR 156.170"]}

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
	"under 33 CFR 154.500": {
		"line": {"regimes": ["ADR", "33 CFR 154.500"]},
		"given": [_it({"test_pressure_kpa": 1499})],
		"want": {_found({"law": "33 CFR 154.500"})},
	},
	"under 46 CFR 151.04-5": {
		"line": {"regimes": ["ADR", "46 CFR 151.04-5"]},
		"given": [_it({"test_pressure_kpa": 1499})],
		"want": {_found({"law": "46 CFR 151.04-5"})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := test_below_marine_law.report with input as {"line": tc.line, "hoses": tc.given}
	got == tc.want
}
