package rules.service.chlorine_pad_above_75_percent_test

import data.rules.service.chlorine_pad_above_75_percent

# 46 CFR 151.50-31(n)(5), CFR 2015 annual edition (published): at most 75 % of the greatest allowable pressure
# of the tank.
_vessel(more) := object.union(
	{
		"id": "tanker",
		"is_source": true,
		"is_target": false,
		"closed": true,
		"padded": true,
		"holds_flammable": false,
		"holds_chlorine": true,
		"holds_liquid": true,
		"has_relief": false,
		"quantity_stated": false,
	},
	more,
)

_found := {"subject": "tanker", "part": "tanker", "supply_kpa": 1501, "rated_kpa": 2000}

_law := ["46 CFR 151.50-31"]

_cases := {
	"one past 75 %": {
		"law": _law,
		"given": [_vessel({"supply_kpa": 1501, "rated_kpa": 2000})],
		"want": {_found},
	},
	"twin, at 75 %": {
		"law": _law,
		"given": [_vessel({"supply_kpa": 1500, "rated_kpa": 2000})],
		"want": set(),
	},
	"below": {
		"law": _law,
		"given": [_vessel({"supply_kpa": 1499, "rated_kpa": 2000})],
		"want": set(),
	},
	"not a whole kPa, past": {
		"law": _law,
		"given": [_vessel({"supply_kpa": 1501, "rated_kpa": 2001})],
		"want": {object.union(_found, {"rated_kpa": 2001})},
	},
	"not a whole kPa, below": {
		"law": _law,
		"given": [_vessel({"supply_kpa": 1500, "rated_kpa": 2001})],
		"want": set(),
	},
	"supply unknown": {
		"law": _law,
		"given": [_vessel({"rated_kpa": 2000})],
		"want": set(),
	},
	"rating unknown": {
		"law": _law,
		"given": [_vessel({"supply_kpa": 1501})],
		"want": set(),
	},
	"another liquid": {
		"law": _law,
		"given": [_vessel({"supply_kpa": 1501, "rated_kpa": 2000, "holds_chlorine": false})],
		"want": set(),
	},
	"not padded": {
		"law": _law,
		"given": [_vessel({"supply_kpa": 1501, "rated_kpa": 2000, "padded": false})],
		"want": set(),
	},
	"another regime": {
		"law": ["ADR"],
		"given": [_vessel({"supply_kpa": 1501, "rated_kpa": 2000})],
		"want": set(),
	},
	"no regime": {
		"law": [],
		"given": [_vessel({"supply_kpa": 1501, "rated_kpa": 2000})],
		"want": set(),
	},
	"the second of two": {
		"law": _law,
		"given": [
			_vessel({"supply_kpa": 1500, "rated_kpa": 2000}),
			_vessel({"supply_kpa": 1501, "rated_kpa": 2000, "id": "barge"}),
		],
		"want": {object.union(_found, {"subject": "barge", "part": "barge"})},
	},
	"both of two": {
		"law": _law,
		"given": [
			_vessel({"supply_kpa": 1501, "rated_kpa": 2000}),
			_vessel({"supply_kpa": 1501, "rated_kpa": 2000, "id": "barge"}),
		],
		"want": {_found, object.union(_found, {"subject": "barge", "part": "barge"})},
	},
	"nothing to judge": {
		"law": _law,
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := chlorine_pad_above_75_percent.report with input as {"line": {"regimes": tc.law}, "vessels": tc.given}
	got == tc.want
}
