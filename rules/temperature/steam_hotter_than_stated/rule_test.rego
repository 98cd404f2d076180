package rules.temperature.steam_hotter_than_stated_test

import data.rules.temperature.steam_hotter_than_stated

# Saturated steam of 3 bar(g) is at 143.8 °C: IAPWS-IF97 (recalled). A degree is left for rounding (practice).
_it(edits) := object.union(
	{"id": "steam in main", "run": "main", "cleaning": true, "pressure_kpa": 300, "saturated_ck": 41690, "stated_ck": 41590},
	edits,
)

_found(edits) := object.union(
	{"subject": "steam in main", "run": "main", "case": "steam-out", "pressure_kpa": 300, "have_ck": 41589, "need_ck": 41690},
	edits,
)

_cases := {
	"below": {
		"given": [_it({"stated_ck": 42000})],
		"want": set(),
	},
	"at": {
		"given": [_it({})],
		"want": set(),
	},
	"past": {
		"given": [_it({"stated_ck": 41589})],
		"want": {_found({})},
	},
	"stated unknown": {
		"given": [object.remove(_it({}), ["stated_ck"])],
		"want": set(),
	},
	"supply unknown": {
		"given": [object.remove(_it({"stated_ck": 1}), ["saturated_ck"])],
		"want": set(),
	},
	"pressure unknown": {
		"given": [object.remove(_it({"stated_ck": 1}), ["pressure_kpa"])],
		"want": set(),
	},
	"the second of two": {
		"given": [_it({}), _it({"id": "steam in other", "run": "other", "stated_ck": 41589})],
		"want": {_found({"subject": "steam in other", "run": "other"})},
	},
	"twin, a lower supply": {
		"given": [_it({"stated_ck": 41589, "saturated_ck": 41589})],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := steam_hotter_than_stated.report with input as {"steams": tc.given}
	got == tc.want
}
