package rules.expansion.trapped_liquid_above_rating_test

import data.rules.expansion.trapped_liquid_above_rating

# Acetone in pipe, 20 to 40 °C, rises by 214.6 bar with the equation of API Std 521 5.14.4 (published; the
# figure is computed).
_section(more) := object.union(
	{
		"id": "V1 to V2",
		"run": "liquid",
		"from": "V1",
		"to": "V2",
		"liquid": true,
		"relieved": false,
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
	"need_kpa": 21460,
}

_cases := {
	"acetone in the sun": {
		"given": [_section({"blocked_kpa": 21460, "weakest_kpa": 1600})],
		"want": {_found},
	},
	"one past the rating": {
		"given": [_section({"blocked_kpa": 1601, "weakest_kpa": 1600})],
		"want": {object.union(_found, {"need_kpa": 1601})},
	},
	"at the rating": {
		"given": [_section({"blocked_kpa": 1600, "weakest_kpa": 1600})],
		"want": set(),
	},
	"below the rating": {
		"given": [_section({"blocked_kpa": 1599, "weakest_kpa": 1600})],
		"want": set(),
	},
	"twin, relieved": {
		"given": [_section({"blocked_kpa": 21460, "weakest_kpa": 1600, "relieved": true})],
		"want": set(),
	},
	"twin, emptied after every transfer": {
		"given": [_section({"blocked_kpa": 21460, "weakest_kpa": 1600, "drained": true})],
		"want": set(),
	},
	"gas": {
		"given": [_section({"blocked_kpa": 21460, "weakest_kpa": 1600, "liquid": false})],
		"want": set(),
	},
	"never warmer than filled": {
		"given": [_section({"blocked_kpa": 21460, "weakest_kpa": 1600, "warmed": false})],
		"want": set(),
	},
	"expansion unknown": {
		"given": [_section({"weakest_kpa": 1600})],
		"want": set(),
	},
	"rating unknown": {
		"given": [_section({"blocked_kpa": 21460})],
		"want": set(),
	},
	"the second of two": {
		"given": [
			_section({"blocked_kpa": 1500, "weakest_kpa": 1600}),
			_section({"blocked_kpa": 21460, "weakest_kpa": 1600, "id": "V2 to V3"}),
		],
		"want": {object.union(_found, {"subject": "V2 to V3"})},
	},
	"both of two": {
		"given": [
			_section({"blocked_kpa": 21460, "weakest_kpa": 1600}),
			_section({"blocked_kpa": 21460, "weakest_kpa": 1600, "id": "V2 to V3"}),
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
	got := trapped_liquid_above_rating.report with input as {"sections": tc.given}
	got == tc.want
}
