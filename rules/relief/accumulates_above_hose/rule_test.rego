package rules.relief.accumulates_above_hose_test

import data.rules.relief.accumulates_above_hose

# ASME Section VIII Div. 1 (1992) UG-125(c) (published): 10 % over set for a vessel with one device. A hose of
# 1100 kPa takes a set pressure of 1000 kPa, as 1000 x 1.1 = 1100.
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

_found := {"subject": "PSV1", "part": "PSV1", "weakest": "H1", "set_kpa": 1002, "rated_kpa": 1100}

_cases := {
	"one past the window": {
		"regimes": ["29 CFR 1910.110"],
		"given": [_relief({"set_kpa": 3449, "weakest_kpa": 3449, "on_lpg_liquid": true})],
		"want": {object.union(_found, {"set_kpa": 3449, "rated_kpa": 3449})},
	},
	"in the window, but the law does not apply": {
		"regimes": ["33 CFR 154.500"],
		"given": [_relief({"set_kpa": 3448, "weakest_kpa": 3449, "on_lpg_liquid": true})],
		"want": {object.union(_found, {"set_kpa": 3448, "rated_kpa": 3449})},
	},
	"in the window, but no LP-gas": {
		"regimes": ["29 CFR 1910.110"],
		"given": [_relief({"set_kpa": 3448, "weakest_kpa": 3449, "on_lpg_liquid": false})],
		"want": {object.union(_found, {"set_kpa": 3448, "rated_kpa": 3449})},
	},
	"inside the window the law asks for": {
		"regimes": ["29 CFR 1910.110"],
		"given": [_relief({"set_kpa": 3448, "weakest_kpa": 3449, "on_lpg_liquid": true})],
		"want": set(),
	},
	"one past the limit and its rounding": {
		"given": [_relief({"set_kpa": 1002, "weakest_kpa": 1100})],
		"want": {_found},
	},
	"twin, at the limit": {
		"given": [_relief({"set_kpa": 1000, "weakest_kpa": 1100})],
		"want": set(),
	},
	"at the limit in psi, 150 and 165": {
		"given": [_relief({"set_kpa": 1035, "weakest_kpa": 1137})],
		"want": set(),
	},
	"just at the limit and its rounding": {
		"given": [_relief({"set_kpa": 1001, "weakest_kpa": 1099})],
		"want": set(),
	},
	"within the rounding": {
		"given": [_relief({"set_kpa": 1001, "weakest_kpa": 1100})],
		"want": set(),
	},
	"below": {
		"given": [_relief({"set_kpa": 999, "weakest_kpa": 1100})],
		"want": set(),
	},
	"set at the rating": {
		"given": [_relief({"set_kpa": 1100, "weakest_kpa": 1100})],
		"want": {object.union(_found, {"set_kpa": 1100})},
	},
	"one above the rating": {
		"given": [_relief({"set_kpa": 1101, "weakest_kpa": 1100})],
		"want": {object.union(_found, {"set_kpa": 1101})},
	},
	"set above the rating": {
		"given": [_relief({"set_kpa": 1102, "weakest_kpa": 1100})],
		"want": set(),
	},
	"set pressure unknown": {
		"given": [_relief({"weakest_kpa": 1100})],
		"want": set(),
	},
	"rating unknown": {
		"given": [_relief({"set_kpa": 1002})],
		"want": set(),
	},
	"weakest is a vessel, which its code grants 10 %": {
		"given": [_relief({"set_kpa": 1100, "weakest_kpa": 1100, "weakest_is_hose": false})],
		"want": set(),
	},
	"the second of two": {
		"given": [
			_relief({"set_kpa": 1000, "weakest_kpa": 1100}),
			_relief({"set_kpa": 1002, "weakest_kpa": 1100, "id": "PSV2"}),
		],
		"want": {object.union(_found, {"subject": "PSV2", "part": "PSV2"})},
	},
	"both of two": {
		"given": [
			_relief({"set_kpa": 1002, "weakest_kpa": 1100}),
			_relief({"set_kpa": 1002, "weakest_kpa": 1100, "id": "PSV2"}),
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
	got := accumulates_above_hose.report with input as {"reliefs": tc.given, "line": {"regimes": object.get(tc, "regimes", [])}}
	got == tc.want
}
