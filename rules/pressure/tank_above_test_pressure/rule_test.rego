package rules.pressure.tank_above_test_pressure_test

import data.rules.pressure.tank_above_test_pressure

# 49 CFR 178.345-9(a), CFR 2015 annual edition (published).
_vessel(more) := object.union(
	{
		"id": "tanker",
		"is_source": true,
		"is_target": false,
		"closed": true,
		"padded": true,
		"holds_flammable": false,
		"holds_chlorine": false,
		"holds_liquid": true,
		"has_relief": false,
		"quantity_stated": false,
	},
	more,
)

_found := {"subject": "tanker", "part": "tanker", "have_kpa": 275, "need_kpa": 277}

_law := ["49 CFR 178.345-9"]

_cases := {
	"one past the limit and its rounding": {
		"law": _law,
		"given": [_vessel({"pad_kpa": 277, "test_pressure_kpa": 275})],
		"want": {_found},
	},
	"twin, at the test pressure": {
		"law": _law,
		"given": [_vessel({"pad_kpa": 275, "test_pressure_kpa": 275})],
		"want": set(),
	},
	"equal in psi, 40 and 40": {
		"law": _law,
		"given": [_vessel({"pad_kpa": 276, "test_pressure_kpa": 275})],
		"want": set(),
	},
	"below": {
		"law": _law,
		"given": [_vessel({"pad_kpa": 274, "test_pressure_kpa": 275})],
		"want": set(),
	},
	"pad unknown": {
		"law": _law,
		"given": [_vessel({"test_pressure_kpa": 275})],
		"want": set(),
	},
	"test pressure unknown": {
		"law": _law,
		"given": [_vessel({"pad_kpa": 277})],
		"want": set(),
	},
	"not padded": {
		"law": _law,
		"given": [_vessel({"pad_kpa": 277, "test_pressure_kpa": 275, "padded": false})],
		"want": set(),
	},
	"another regime": {
		"law": ["ADR"],
		"given": [_vessel({"pad_kpa": 277, "test_pressure_kpa": 275})],
		"want": set(),
	},
	"no regime": {
		"law": [],
		"given": [_vessel({"pad_kpa": 277, "test_pressure_kpa": 275})],
		"want": set(),
	},
	"the second of two": {
		"law": _law,
		"given": [
			_vessel({"pad_kpa": 275, "test_pressure_kpa": 275}),
			_vessel({"pad_kpa": 277, "test_pressure_kpa": 275, "id": "tote"}),
		],
		"want": {object.union(_found, {"subject": "tote", "part": "tote"})},
	},
	"both of two": {
		"law": _law,
		"given": [
			_vessel({"pad_kpa": 277, "test_pressure_kpa": 275}),
			_vessel({"pad_kpa": 277, "test_pressure_kpa": 275, "id": "tote"}),
		],
		"want": {_found, object.union(_found, {"subject": "tote", "part": "tote"})},
	},
	"nothing to judge": {
		"law": _law,
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := tank_above_test_pressure.report with input as {"line": {"regimes": tc.law}, "vessels": tc.given}
	got == tc.want
}
