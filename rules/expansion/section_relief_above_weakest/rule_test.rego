package rules.expansion.section_relief_above_weakest_test

import data.rules.expansion.section_relief_above_weakest

# 29 CFR 1926.302(b)(5), CFR 2015 annual edition (published): the maker's pressure for a hose is not exceeded.
_section(more) := object.union(
	{
		"id": "V1 to V2",
		"run": "liquid",
		"from": "V1",
		"to": "V2",
		"liquid": true,
		"relieved": true,
		"drained": false,
		"warmed": true,
		"carries_ammonia": false,
		"carries_lpg": false,
		"weakest": "H1",
	},
	more,
)

_found := {
	"subject": "V1 to V2",
	"part": "H1",
	"case": "shut-in-liquid",
	"from": "V1",
	"to": "V2",
	"have_kpa": 1600,
	"need_kpa": 1602,
}

_cases := {
	"one past the window": {
		"regimes": ["29 CFR 1910.110"],
		"given": [_section({"relief_set_kpa": 3449, "weakest_kpa": 2413, "carries_lpg": true})],
		"want": {object.union(_found, {"have_kpa": 2413, "need_kpa": 3449})},
	},
	"in the window, but the law does not apply": {
		"regimes": ["33 CFR 154.500"],
		"given": [_section({"relief_set_kpa": 3448, "weakest_kpa": 2413, "carries_lpg": true})],
		"want": {object.union(_found, {"have_kpa": 2413, "need_kpa": 3448})},
	},
	"in the window, but no LP-gas": {
		"regimes": ["29 CFR 1910.110"],
		"given": [_section({"relief_set_kpa": 3448, "weakest_kpa": 2413, "carries_lpg": false})],
		"want": {object.union(_found, {"have_kpa": 2413, "need_kpa": 3448})},
	},
	"inside the window the law asks for": {
		"regimes": ["29 CFR 1910.110"],
		"given": [_section({"relief_set_kpa": 3448, "weakest_kpa": 2413, "carries_lpg": true})],
		"want": set(),
	},
	"past the rating and its rounding": {
		"given": [_section({"relief_set_kpa": 1602, "weakest_kpa": 1600})],
		"want": {_found},
	},
	"twin, at the rating": {
		"given": [_section({"relief_set_kpa": 1600, "weakest_kpa": 1600})],
		"want": set(),
	},
	"equal in psi, 150 and 150": {
		"given": [_section({"relief_set_kpa": 1035, "weakest_kpa": 1034})],
		"want": set(),
	},
	"below the rating": {
		"given": [_section({"relief_set_kpa": 1599, "weakest_kpa": 1600})],
		"want": set(),
	},
	"set pressure unknown": {
		"given": [_section({"weakest_kpa": 1600})],
		"want": set(),
	},
	"rating unknown": {
		"given": [_section({"relief_set_kpa": 1602})],
		"want": set(),
	},
	"no device": {
		"given": [_section({"relief_set_kpa": 1602, "weakest_kpa": 1600, "relieved": false})],
		"want": set(),
	},
	"gas": {
		"given": [_section({"relief_set_kpa": 1602, "weakest_kpa": 1600, "liquid": false})],
		"want": set(),
	},
	"the second of two": {
		"given": [
			_section({"relief_set_kpa": 1600, "weakest_kpa": 1600}),
			_section({"relief_set_kpa": 1700, "weakest_kpa": 1600, "id": "V2 to V3"}),
		],
		"want": {object.union(_found, {"subject": "V2 to V3", "need_kpa": 1700})},
	},
	"both of two": {
		"given": [
			_section({"relief_set_kpa": 1602, "weakest_kpa": 1600}),
			_section({"relief_set_kpa": 1602, "weakest_kpa": 1600, "id": "V2 to V3"}),
		],
		"want": {_found, object.union(_found, {"subject": "V2 to V3"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := section_relief_above_weakest.report with input as {"sections": tc.given, "line": {"regimes": object.get(tc, "regimes", [])}}
	got == tc.want
}
