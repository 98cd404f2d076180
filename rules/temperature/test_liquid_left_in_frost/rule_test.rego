package rules.temperature.test_liquid_left_in_frost_test

import data.rules.temperature.test_liquid_left_in_frost

# Water freezes at 273.16 K, its triple point (equation of state, computed).
_it(edits) := object.union(
	{"id": "liquid", "fluid": "Water", "gas": false, "freezes_ck": 27316, "place_ck": 27315, "dried": false},
	edits,
)

_found(edits) := object.union(
	{"subject": "liquid", "fluid": "Water", "place_ck": 27315, "freezes_ck": 27316},
	edits,
)

_cases := {
	"frost": {
		"given": [_it({})],
		"want": {_found({})},
	},
	"at": {
		"given": [_it({"place_ck": 27316})],
		"want": {_found({"place_ck": 27316})},
	},
	"just above": {
		"given": [_it({"place_ck": 27317})],
		"want": set(),
	},
	"place unknown": {
		"given": [object.remove(_it({}), ["place_ck"])],
		"want": set(),
	},
	"freezing point unknown": {
		"given": [object.remove(_it({}), ["freezes_ck"])],
		"want": set(),
	},
	"gas": {
		"given": [_it({"gas": true})],
		"want": set(),
	},
	"twin, dried": {
		"given": [_it({"dried": true})],
		"want": set(),
	},
	"the second of two": {
		"given": [_it({"dried": true}), _it({"id": "pad"})],
		"want": {_found({"subject": "pad"})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := test_liquid_left_in_frost.report with input as {"tests": tc.given}
	got == tc.want
}
