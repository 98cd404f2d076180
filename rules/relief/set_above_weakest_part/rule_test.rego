package rules.relief.set_above_weakest_part_test

import data.rules.relief.set_above_weakest_part

# 29 CFR 1926.302(b)(5), CFR 2015 annual edition (published): the maker's pressure for hoses and fittings is not
# exceeded.
_relief(more) := object.union(
	{
		"id": "PSV1",
		"run": "liquid",
		"on_vessel": false,
		"weakest": "H1",
		"weakest_is_hose": true,
		"on_lpg_liquid": false,
		"isolatable_stated": true,
		"zone_a_cylinder": false,
	},
	more,
)

_found := {"subject": "PSV1", "part": "PSV1", "weakest": "H1", "have_kpa": 1000, "need_kpa": 1002}

_cases := {
	"one past the window": {
		"regimes": ["29 CFR 1910.110"],
		"given": [_relief({"set_kpa": 3449, "weakest_kpa": 2413, "on_lpg_liquid": true})],
		"want": {object.union(_found, {"have_kpa": 2413, "need_kpa": 3449})},
	},
	"in the window, but the law does not apply": {
		"regimes": ["33 CFR 154.500"],
		"given": [_relief({"set_kpa": 3448, "weakest_kpa": 2413, "on_lpg_liquid": true})],
		"want": {object.union(_found, {"have_kpa": 2413, "need_kpa": 3448})},
	},
	"in the window, but no LP-gas": {
		"regimes": ["29 CFR 1910.110"],
		"given": [_relief({"set_kpa": 3448, "weakest_kpa": 2413, "on_lpg_liquid": false})],
		"want": {object.union(_found, {"have_kpa": 2413, "need_kpa": 3448})},
	},
	"inside the window the law asks for": {
		"regimes": ["29 CFR 1910.110"],
		"given": [_relief({"set_kpa": 3448, "weakest_kpa": 2413, "on_lpg_liquid": true})],
		"want": set(),
	},
	"past the rating and its rounding": {
		"given": [_relief({"set_kpa": 1002, "weakest_kpa": 1000})],
		"want": {_found},
	},
	"twin, at the rating": {
		"given": [_relief({"set_kpa": 1000, "weakest_kpa": 1000})],
		"want": set(),
	},
	"equal in psi, 150 and 150": {
		"given": [_relief({"set_kpa": 1035, "weakest_kpa": 1034})],
		"want": set(),
	},
	"below the rating": {
		"given": [_relief({"set_kpa": 999, "weakest_kpa": 1000})],
		"want": set(),
	},
	"weakest is no hose": {
		"given": [_relief({"set_kpa": 1002, "weakest_kpa": 1000, "weakest": "V1", "weakest_is_hose": false})],
		"want": {object.union(_found, {"weakest": "V1"})},
	},
	"set pressure unknown": {
		"given": [_relief({"weakest_kpa": 1000})],
		"want": set(),
	},
	"rating unknown": {
		"given": [_relief({"set_kpa": 1002})],
		"want": set(),
	},
	"the second of two": {
		"given": [
			_relief({"set_kpa": 1000, "weakest_kpa": 1000}),
			_relief({"set_kpa": 1002, "weakest_kpa": 1000, "id": "PSV2"}),
		],
		"want": {object.union(_found, {"subject": "PSV2", "part": "PSV2"})},
	},
	"both of two": {
		"given": [
			_relief({"set_kpa": 1002, "weakest_kpa": 1000}),
			_relief({"set_kpa": 1002, "weakest_kpa": 1000, "id": "PSV2"}),
		],
		"want": {_found, object.union(_found, {"subject": "PSV2", "part": "PSV2"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := set_above_weakest_part.report with input as {"reliefs": tc.given, "line": {"regimes": object.get(tc, "regimes", [])}}
	got == tc.want
}
