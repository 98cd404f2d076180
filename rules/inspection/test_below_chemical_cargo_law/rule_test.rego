package rules.inspection.test_below_chemical_cargo_law_test

import data.rules.inspection.test_below_chemical_cargo_law

# 46 CFR 153.940, CFR 2015 annual edition (published): working pressure at most the last test pressure.
_it(more) := object.union({"id": "H1", "rated_kpa": 1000}, more)

_found(more) := object.union({"subject": "H1", "part": "H1", "test_kpa": 999, "rated_kpa": 1000}, more)

_law := {"regimes": ["46 CFR 153.940"]}

_cases := {
	"one below": {
		"line": _law,
		"given": [_it({"test_pressure_kpa": 999})],
		"want": {_found({})},
	},
	"exactly that much": {
		"line": _law,
		"given": [_it({"test_pressure_kpa": 1000})],
		"want": set(),
	},
	"above": {
		"line": _law,
		"given": [_it({"test_pressure_kpa": 1001})],
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
		"given": [_it({"test_pressure_kpa": 999})],
		"want": set(),
	},
	"no law": {
		"line": {"regimes": []},
		"given": [_it({"test_pressure_kpa": 999})],
		"want": set(),
	},
	"two hoses, one short": {
		"line": _law,
		"given": [_it({"test_pressure_kpa": 1000}), _it({"test_pressure_kpa": 998, "id": "H2"})],
		"want": {_found({"subject": "H2", "part": "H2", "test_kpa": 998})},
	},
	"one law of two": {
		"line": {"regimes": ["ADR", "46 CFR 153.940"]},
		"given": [_it({"test_pressure_kpa": 999})],
		"want": {_found({})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := test_below_chemical_cargo_law.report with input as {"line": tc.line, "hoses": tc.given}
	got == tc.want
}
